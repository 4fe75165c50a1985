/**
 * A wish that somebody further out fulfils and answers, as a page asks its service worker: whoever takes it calls
 * `respondWith`, and the element that dispatched it awaits `answer`.
 */
export class RequestEvent<Detail, Answer> extends CustomEvent<Detail> {
  #answer: Promise<Answer> | undefined;

  constructor(type: string, detail: Detail) {
    super(type, { detail, bubbles: true, composed: true, cancelable: true });
  }

  /** Takes the wish on; it goes to nobody else. */
  respondWith(answer: Promise<Answer>): void {
    this.#answer = answer;
    this.preventDefault();
    this.stopPropagation();
  }

  /** The answer to come; undefined where nobody took the wish on. */
  get answer(): Promise<Answer> | undefined {
    return this.#answer;
  }
}
