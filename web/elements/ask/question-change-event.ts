import type { TypedQuestion } from '../../notebook/pose-question.ts';

/** The reader changed a word of the question. */
export class QuestionChangeEvent extends CustomEvent<{ readonly question: TypedQuestion }> {
  static readonly type = 'tg-question-change';
  constructor(question: TypedQuestion) {
    super(QuestionChangeEvent.type, { detail: { question }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-question-change': QuestionChangeEvent;
  }
}
