/** The reader took a cloth down from the line. */
export class ClothPickEvent extends CustomEvent<{ readonly id: string }> {
  static readonly type = 'tg-cloth-pick';
  constructor(id: string) {
    super(ClothPickEvent.type, { detail: { id }, bubbles: true, composed: true });
  }
}

/** The reader asks about another year: astronomical, 1 BCE is 0. Sent while the thread is dragged. */
export class YearChangeEvent extends CustomEvent<{ readonly year: number }> {
  static readonly type = 'tg-year-change';
  constructor(year: number) {
    super(YearChangeEvent.type, { detail: { year }, bubbles: true, composed: true });
  }
}

/** The reader wants the claim behind a band of the chart. */
export class BandPickEvent extends CustomEvent<{ readonly claimKey: string }> {
  static readonly type = 'tg-band-pick';
  constructor(claimKey: string) {
    super(BandPickEvent.type, { detail: { claimKey }, bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-cloth-pick': ClothPickEvent;
    'tg-year-change': YearChangeEvent;
    'tg-band-pick': BandPickEvent;
  }
}
