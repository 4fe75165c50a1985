import type { TypedChart } from '../../notebook/typed-chart.ts';

/** The reader asks for another chart or year. `settled` is false while the thread is dragged. */
export class ChartChangeEvent extends CustomEvent<{ readonly chart: TypedChart; readonly year: number; readonly settled: boolean }> {
  static readonly type = 'tg-chart-change';
  constructor(chart: TypedChart, year: number, settled: boolean) {
    super(ChartChangeEvent.type, { detail: { chart, year, settled }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-chart-change': ChartChangeEvent;
  }
}
