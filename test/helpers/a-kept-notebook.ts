import { answerWriting } from '../../web/app/writing.ts';
import type { Engine } from '../../web/notebook/engine.ts';
import { Keeper } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';

/** A notebook that is kept in memory and answers what is written in the page; `tab` opens it once more. */
export interface KeptNotebook {
  readonly keeper: Keeper;
  readonly engine: Engine;
  readonly disk: MemoryDisk;
  /** The text of a file as it is kept now; undefined where there is none. */
  readonly textOf: (path: string) => Promise<string | undefined>;
  readonly stop: () => void;
}

let ids = 0;
const encoder = new TextEncoder();
const surroundings = { now: () => Date.now(), newId: () => `id-${(ids += 1)}` };

/**
 * @param files texts by path.
 * @param target where elements' wishes arrive; nothing answers them when absent.
 */
export async function aKeptNotebook(
  files: Readonly<Record<string, string>>,
  target?: EventTarget,
  disk = new MemoryDisk(),
): Promise<KeptNotebook> {
  const engine = new LocalEngine();
  const keeper = new Keeper(new MemoryStore(disk, surroundings), engine);
  await keeper.openKept();
  await keeper.write(Object.entries(files).map(([path, text]) => ({ path, bytes: encoder.encode(text) })));
  const stop = target ? answerWriting(target, keeper) : () => undefined;
  const textOf = async (path: string) => {
    const file = await keeper.read(path);
    return file && new TextDecoder('utf-8', { ignoreBOM: true }).decode(file.bytes);
  };
  return { keeper, engine, disk, textOf, stop };
}
