import type { Notice, TgNotices } from '../elements/notices/tg-notices.ts';

/** A notice, and what happens when its offer is taken up or when it is put away. */
export interface PostedNotice extends Notice {
  readonly taken?: () => void;
  readonly putAway?: () => void;
}

/** Posts notices above the page, each id once, and does what their readers choose. */
export class NoticeBoard {
  readonly #shown: TgNotices;
  #posted: readonly PostedNotice[] = [];

  constructor(shown: TgNotices) {
    this.#shown = shown;
    shown.addEventListener('tg-notice-close', ({ detail: { id, taken } }) => {
      const notice = this.#posted.find((one) => one.id === id);
      this.#show(this.#posted.filter((one) => one.id !== id));
      if (taken) notice?.taken?.();
      else notice?.putAway?.();
    });
  }

  post(notice: PostedNotice): void {
    this.#show([...this.#posted.filter(({ id }) => id !== notice.id), notice]);
  }

  /** Takes a notice down whose reason is gone. */
  withdraw(id: string): void {
    this.#show(this.#posted.filter((one) => one.id !== id));
  }

  #show(posted: readonly PostedNotice[]): void {
    this.#posted = posted;
    this.#shown.notices = posted.map(({ id, text, offer }) => ({ id, text, ...(offer !== undefined && { offer }) }));
  }
}
