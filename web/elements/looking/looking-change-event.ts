/** The reader lays other cloths side by side. */
export class LookingChangeEvent extends CustomEvent<{ readonly ids: readonly string[] }> {
  static readonly type = 'tg-looking-change';
  constructor(ids: readonly string[]) {
    super(LookingChangeEvent.type, { detail: { ids }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-looking-change': LookingChangeEvent;
  }
}
