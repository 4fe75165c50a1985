import { spliceValue } from '../domain/note/splice.ts';
import { stemFrom } from './starters.ts';

/** What was caught in passing. */
export interface Capture {
  readonly words: string;
  /** A citation key with a page, or words: "the label in room 4". */
  readonly source: string;
  /** The ending of the photo's file, with its dot; absent without a photo. */
  readonly photoEnding?: string;
}

/** A note of what was caught, and where its photo goes. */
export interface CapturedNote {
  readonly path: string;
  readonly text: string;
  readonly photoPath?: string;
}

/**
 * A reading note out of words, a source and a photo.
 *
 * @param day the reader's own date, `2026-05-14`; the file is named after it.
 * @param nth tells apart those of one day and beginning, from 1.
 */
export function capturedNote({ words, source, photoEnding }: Capture, day: string, nth = 1): CapturedNote {
  const said = words.replace(/\r\n?/g, '\n').trim();
  const first = said.split('\n')[0]?.trim() ?? '';
  const title = first === '' ? `Seen on ${day}` : shortened(first);
  const stem = `${day}-${stemFrom(title, 'seen')}${nth === 1 ? '' : `-${nth}`}`;
  const photoPath = photoEnding === undefined ? undefined : `photos/${stem}${photoEnding.toLowerCase()}`;
  const [key = '', ...rest] = source.split(',');
  const isKey = /^[\p{L}\d][\p{L}\d_:.-]*$/u.test(key.trim());
  const parts = [
    said,
    photoPath === undefined ? '' : `![${alt(title)}](../${photoPath})`,
    source.trim() === '' || isKey ? '' : `Source, as noted on the spot: ${source.trim()}`,
  ].filter((part) => part !== '');
  const bare = `---\nkind: plain\ntags: [to sort]\n---\n\n${parts.join('\n\n')}\n`;
  const titled = set(bare, 'title', title);
  const cited = isKey ? set(titled, 'source', [key.trim(), ...rest.map((part) => part.trim())].join(', ')) : titled;
  return { path: `reading/${stem}.md`, text: cited, ...(photoPath === undefined ? {} : { photoPath }) };
}

const set = (text: string, key: string, value: string): string => {
  const spliced = spliceValue(text, [key], value);
  return spliced.ok ? spliced.value : text;
};

/** A title is a line, not a page (our choice: seventy characters). */
const shortened = (text: string): string => (text.length > 70 ? `${text.slice(0, 69).trimEnd()}…` : text);

const alt = (text: string): string => text.replace(/[[\]\\*_`<>]/g, '');
