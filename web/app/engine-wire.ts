import { type Engine, ENGINE_METHODS } from '../notebook/engine.ts';

/** One call to the engine, and its answer; `id` pairs them. */
interface Call {
  readonly id: number;
  readonly method: keyof Engine;
  readonly args: readonly unknown[];
}
type Reply = { readonly id: number; readonly value: unknown } | { readonly id: number; readonly fault: string };

/** Either end of a worker: both can post and listen. */
type Wire = Pick<Worker, 'postMessage' | 'addEventListener'>;

/** Lets an engine answer calls that come over a wire. */
export function serveEngine(wire: Wire, engine: Engine): void {
  wire.addEventListener('message', (event: MessageEvent<Call>) => {
    const { id, method, args } = event.data;
    const run = engine[method] as (...given: readonly unknown[]) => Promise<unknown>;
    run.apply(engine, [...args]).then(
      (value) => wire.postMessage({ id, value } satisfies Reply),
      (fault: unknown) => wire.postMessage({ id, fault: fault instanceof Error ? fault.message : String(fault) } satisfies Reply),
    );
  });
}

/** An engine at the other end of a wire: every method call becomes a message. */
export function engineOver(wire: Wire): Engine {
  const waiting = new Map<number, { resolve: (value: unknown) => void; reject: (fault: Error) => void }>();
  let calls = 0;
  wire.addEventListener('message', (event: MessageEvent<Reply>) => {
    const caller = waiting.get(event.data.id);
    waiting.delete(event.data.id);
    if ('fault' in event.data) caller?.reject(new Error(event.data.fault));
    else caller?.resolve(event.data.value);
  });
  const call =
    (method: keyof Engine) =>
    (...args: readonly unknown[]) =>
      new Promise<unknown>((resolve, reject) => {
        calls += 1;
        waiting.set(calls, { resolve, reject });
        wire.postMessage({ id: calls, method, args } satisfies Call);
      });
  return Object.fromEntries(ENGINE_METHODS.map((method) => [method, call(method)])) as unknown as Engine;
}
