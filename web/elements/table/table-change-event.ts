import type { TypedTable } from '../../notebook/views/table-view.ts';

/** The reader asks about another table, place or date. */
export class TableChangeEvent extends CustomEvent<{ readonly table: TypedTable }> {
  static readonly type = 'tg-table-change';
  constructor(table: TypedTable) {
    super(TableChangeEvent.type, { detail: { table }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-table-change': TableChangeEvent;
  }
}
