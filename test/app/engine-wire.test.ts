import { describe, expect, test } from 'vitest';
import { engineOver, serveEngine } from '../../web/app/engine-wire.ts';
import { type Engine, ENGINE_METHODS } from '../../web/notebook/engine.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { aDyestuff, aWorld } from '../helpers/a-notebook.ts';

type Wire = Parameters<typeof serveEngine>[0];

/** The two ends of a channel, as a page and its worker hold them. */
function channel(): { readonly page: Wire; readonly worker: Wire; readonly close: () => void } {
  const { port1, port2 } = new MessageChannel();
  port1.start();
  port2.start();
  return {
    page: port1 as unknown as Wire,
    worker: port2 as unknown as Wire,
    close: () => {
      port1.close();
      port2.close();
    },
  };
}

/** An engine that answers as told, whatever is asked. */
const engineOf = (methods: Partial<Record<keyof Engine, (...args: readonly never[]) => Promise<unknown>>>): Engine =>
  methods as unknown as Engine;

describe('an engine over a wire', () => {
  test('answers as the engine itself does', async () => {
    const { page, worker, close } = channel();
    serveEngine(worker, new LocalEngine());
    const engine = engineOver(page);
    const encoder = new TextEncoder();
    const files = Object.entries({
      ...aWorld,
      'dyestuffs/madder.md': aDyestuff('Madder', 'region: england, when: 1300–1400, status: grown, known-by: text, source: book'),
    }).map(([path, text]) => ({ path, bytes: encoder.encode(text) }));
    await engine.open(files);
    const local = new LocalEngine();
    await local.open(files);
    const question = { dye: 'madder', region: 'england', when: '1350' };
    const answer = await engine.answer(question);
    expect(answer).toEqual(await local.answer(question));
    expect(answer).toMatchObject({ answer: { verdict: 'feasible' } });
    expect(await engine.choices()).toEqual(await local.choices());
    close();
  });

  test('has every method of an engine', () => {
    const { page, close } = channel();
    const engine = engineOver(page);
    for (const method of ENGINE_METHODS) expect(typeof engine[method]).toBe('function');
    close();
  });

  test('gives each caller its own answer, whatever the order they come in', async () => {
    const { page, worker, close } = channel();
    const waiting: (() => void)[] = [];
    serveEngine(worker, engineOf({ readDate: (text: string) => new Promise((resolve) => waiting.push(() => resolve(`read ${text}`))) }));
    const engine = engineOver(page);
    const answers = Promise.all(['one', 'two', 'three'].map((text) => engine.readDate(text)));
    await expect.poll(() => waiting.length).toBe(3);
    waiting.reverse().forEach((answer) => answer());
    expect(await answers).toEqual(['read one', 'read two', 'read three']);
    close();
  });

  test('a fault comes back as a fault of the caller it belongs to, and the next call is answered', async () => {
    const { page, worker, close } = channel();
    serveEngine(
      worker,
      engineOf({
        readDate: (text: string) => (text === 'bad' ? Promise.reject(new Error('no such day')) : Promise.resolve(text)),
      }),
    );
    const engine = engineOver(page);
    await expect(engine.readDate('bad')).rejects.toThrow('no such day');
    expect(await engine.readDate('1350')).toBe('1350');
    close();
  });
});
