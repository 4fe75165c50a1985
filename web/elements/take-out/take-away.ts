import { css, type ReactiveControllerHost } from 'lit';
import { saveFile } from './save-file.ts';

/** A row of ways to take something away, and the word that it went. */
export const takeAwayStyles = css`
  :host {
    display: block;
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  div {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-5);
    align-items: center;
  }
  button {
    min-block-size: var(--tg-touch);
  }
  p {
    margin: 0;
  }
`;

/** Gives files to the browser's downloads and says so in its host. */
export class TakeAway {
  /** What happened last, for a `role="status"`. */
  said = '';

  constructor(private readonly host: Pick<ReactiveControllerHost, 'requestUpdate'>) {}

  /** @param sort media type without its character set, as `text/csv`. */
  text(name: string, sort: string, text: string): void {
    this.file(name, new Blob([text], { type: `${sort};charset=utf-8` }));
  }

  file(name: string, file: Blob): void {
    saveFile(name, file);
    this.say(`${name} went to your downloads.`);
  }

  say(words: string): void {
    this.said = words;
    this.host.requestUpdate();
  }
}
