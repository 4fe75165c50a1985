import { html, nothing } from 'lit';
import type { Choice } from '../../notebook/views/choices-view.ts';

/** A word of a sentence that is chosen from a list of notes; indented as their tree is. */
export function listWord(
  label: string,
  chosen: string | undefined,
  list: readonly Choice[] | undefined,
  change: (id: string | undefined) => void,
  none?: string,
) {
  return html`<select
    aria-label=${label}
    @change=${(event: Event) => {
      const { value } = event.target as HTMLSelectElement;
      change(value === '' ? undefined : value);
    }}
  >
    ${none === undefined ? nothing : html`<option value="" ?selected=${chosen === undefined}>${none}</option>`}
    ${list?.map(({ id, title, depth }) => html`<option value=${id} ?selected=${id === chosen}>${'\u2003'.repeat(depth)}${title}</option>`)}
  </select>`;
}

/** A word of a sentence that is one of a few. */
export function fewWords<W extends string>(label: string, chosen: W, words: Readonly<Record<W, string>>, change: (word: W) => void) {
  return html`<select aria-label=${label} @change=${(event: Event) => change((event.target as HTMLSelectElement).value as W)}>
    ${(Object.entries(words) as [string, string][]).map(([word, text]) => html`<option value=${word} ?selected=${word === chosen}>${text}</option>`)}
  </select>`;
}

/** A word of a sentence that is typed: a date. */
export const typedWord = (label: string, value: string, change: (text: string) => void) =>
  html`<input
    type="text"
    aria-label=${label}
    .value=${value}
    @change=${(event: Event) => change((event.target as HTMLInputElement).value)}
  />`;
