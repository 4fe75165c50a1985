import { html, nothing, type TemplateResult } from 'lit';
import type { CaptionView } from '../../notebook/views/caption-view.ts';
import { counted } from '../../notebook/words/counted.ts';
import { type CaptionRun, captionRuns } from './caption-runs.ts';

/** A caption's plain words with Latin names in italics. */
export const captionWords = (text: string, latin: readonly string[]): readonly unknown[] =>
  captionRuns({ text, bound: [], notices: [] }, latin).map((run) => (run.latin ? html`<em lang="la">${run.text}</em>` : run.text));

/** A caption with its marks, what is to be said about it, and what changed behind it. */
export const captionBlock = (caption: Omit<CaptionView, 'written'>, latin: readonly string[]): TemplateResult => html`
  <h3 lang=${caption.lang}>${caption.headline}</h3>
  <blockquote lang=${caption.lang}>${captionRuns(caption, latin).map(runTemplate)}</blockquote>
  <p class="quiet">
    ${[
      counted(caption.words, 'word'),
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
