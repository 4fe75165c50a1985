import { html, nothing, type TemplateResult } from 'lit';
import type { CaptionView } from '../../notebook/views/caption-view.ts';

/** A run of a caption's text and how it is marked. */
export interface CaptionRun {
  readonly text: string;
  readonly bound: boolean;
  readonly faulty: boolean;
  readonly latin: boolean;
}

/** Where names stand in a text. */
const placesOf = (text: string, names: readonly string[]): readonly (readonly [number, number])[] =>
  names.flatMap((name) => {
    const places: (readonly [number, number])[] = [];
    for (let at = text.indexOf(name); at >= 0 && name !== ''; at = text.indexOf(name, at + name.length))
      places.push([at, at + name.length]);
    return places;
  });

/** A caption's plain words with Latin names in italics. */
export const captionWords = (text: string, latin: readonly string[]): readonly unknown[] =>
  captionRuns({ text, bound: [], notices: [] }, latin).map((run) => (run.latin ? html`<em lang="la">${run.text}</em>` : run.text));

/** A caption's text cut where marks begin and end: what rests on a claim, what something is to be said about, Latin names. */
export function captionRuns(
  { text, bound, notices }: Pick<CaptionView, 'text' | 'bound' | 'notices'>,
  latin: readonly string[] = [],
): readonly CaptionRun[] {
  const ranges = (all: readonly { readonly range?: readonly [number, number] }[]) => all.flatMap(({ range }) => (range ? [range] : []));
  const [resting, faults, names] = [ranges(bound), ranges(notices), placesOf(text, latin)];
  const cuts = [...new Set([0, text.length, ...[...resting, ...faults, ...names].flat()])]
    .filter((at) => at >= 0 && at <= text.length)
    .sort((a, b) => a - b);
  const covered = (all: readonly (readonly [number, number])[], from: number, to: number) =>
    all.some(([start, end]) => start <= from && to <= end);
  return cuts.slice(0, -1).flatMap((from, at) => {
    const to = cuts[at + 1] ?? from;
    return to > from
      ? [
          {
            text: text.slice(from, to),
            bound: covered(resting, from, to),
            faulty: covered(faults, from, to),
            latin: covered(names, from, to),
          },
        ]
      : [];
  });
}

/** A caption with its marks, what is to be said about it, and what changed behind it. */
export const captionBlock = (caption: CaptionView, latin: readonly string[]): TemplateResult => html`
  <h3 lang=${caption.lang}>${caption.headline}</h3>
  <blockquote lang=${caption.lang}>${captionRuns(caption, latin).map(runTemplate)}</blockquote>
  <p class="quiet">
    ${[
      `${caption.words} words`,
      caption.grade,
      `version ${caption.version}`,
      caption.lang,
      caption.onlyPartlyChecked ? 'some checks know only English' : '',
    ]
      .filter((part) => part !== '')
      .join(' · ')}
  </p>
  ${
    caption.stale.length === 0
      ? nothing
      : html`<div class="notice">
          <p><strong>Stale.</strong> What it rests on has changed:</p>
          <ul>
            ${caption.stale.map((says) => html`<li>${says}</li>`)}
          </ul>
        </div>`
  }
  ${
    caption.notices.length === 0
      ? nothing
      : html`<ul class="notice">
          ${caption.notices.map(({ says }) => html`<li>${says}</li>`)}
        </ul>`
  }
`;

const runTemplate = ({ text, bound, faulty, latin }: CaptionRun) => {
  const words = latin ? html`<em lang="la">${text}</em>` : text;
  return bound || faulty ? html`<mark class=${faulty ? 'faulty' : ''}>${words}</mark>` : words;
};
