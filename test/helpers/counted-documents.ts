import type { FindingEngine } from '../../web/app/finding.ts';
import type { LocalEngine } from '../../web/notebook/local-engine.ts';

/** What finding needs of an engine, and the files whose documents it was asked for. */
export function countedDocuments(engine: LocalEngine): { readonly counting: FindingEngine; readonly asked: string[] } {
  const asked: string[] = [];
  const counting: FindingEngine = {
    documents: (paths = []) => {
      asked.push(...paths);
      return engine.documents(paths);
    },
    noteStamps: () => engine.noteStamps(),
    found: engine.found.bind(engine),
  };
  return { counting, asked };
}
