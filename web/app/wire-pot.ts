import type { Engine } from '../notebook/engine.ts';
import type { Keeper } from '../notebook/keeper.ts';
import type {} from '../elements/pot/pot-events.ts';

/** What answers is fetched with the first wish: packing and merging are no part of the first view. */
const answers = () => import('./pot.ts');

/**
 * Answers what is wished at the pot: a log as one file, another machine's log, the address on tags.
 *
 * @param today the reader's own day, `2026-11-28`.
 */
export function wirePot(target: EventTarget, keeper: Keeper, engine: Engine, today: () => string): void {
  const on = <Name extends keyof GlobalEventHandlersEventMap>(name: Name, answer: (event: GlobalEventHandlersEventMap[Name]) => void) =>
    target.addEventListener(name, (event) => answer(event as GlobalEventHandlersEventMap[Name]));
  on('tg-pot-file-request', (event) => event.respondWith(answers().then(({ potFile }) => potFile(keeper, engine, event.detail.id))));
  on('tg-log-in-request', (event) => event.respondWith(answers().then(({ bringIn }) => bringIn(keeper, engine, event.detail, today()))));
  on('tg-tag-address-request', (event) => event.respondWith(answers().then(({ tagAddress }) => tagAddress(keeper, event.detail.set))));
}
