import type { TypedQuestion } from '../../notebook/pose-question.ts';

/** The reader changed a word of the question. `settled` is false while the year is drawn along its thread. */
export class QuestionChangeEvent extends CustomEvent<{ readonly question: TypedQuestion; readonly settled: boolean }> {
  static readonly type = 'tg-question-change';
  constructor(question: TypedQuestion, settled: boolean) {
    super(QuestionChangeEvent.type, { detail: { question, settled }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-question-change': QuestionChangeEvent;
  }
}
