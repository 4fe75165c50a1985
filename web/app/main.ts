import { TgApp } from '../elements/app/tg-app.ts';
import type { NotebookFile } from '../notebook/notebook.ts';
import { engineOver } from './engine-wire.ts';
import engineAddress from './engine-worker.ts?worker&url';
import { startWorker } from './scripts-policy.ts';

const engine = engineOver(startWorker(engineAddress));

/** The demonstration notebook, as the site carries it. */
async function demonstration(): Promise<readonly NotebookFile[]> {
  const reply = await fetch('/demo.json');
  const { files } = (await reply.json()) as { readonly files: readonly { readonly path: string; readonly text: string }[] };
  const encoder = new TextEncoder();
  return files.map(({ path, text }) => ({ path, bytes: encoder.encode(text) }));
}

const app = document.querySelector('tg-app');
if (app instanceof TgApp) {
  app.engine = engine;
  demonstration()
    .then((files) => engine.open(files))
    .then((size) => app.opened(size))
    .catch((fault: unknown) => app.failed(fault instanceof Error ? fault.message : String(fault)));
}
