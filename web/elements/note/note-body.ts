import { html, nothing, type TemplateResult } from 'lit';
import type { BodyBlock, BodyInline } from '../../notebook/views/body-view.ts';
import type { Line, Piece } from '../../notebook/views/line.ts';
import { typeset } from '../shared/typeset.ts';

/** The address of a picture that is being shown; undefined while it is fetched or when it cannot be. */
export type PictureAddress = (path: string) => string | undefined;

/** Words on one line, names of notes leading to them. */
export const lineTemplate = (line: Line): readonly TemplateResult[] => line.map(pieceTemplate);

function pieceTemplate({ text: written, note, latin, quiet, lang }: Piece): TemplateResult {
  const text = typeset(written);
  const words = latin === true ? html`<i lang="la">${text}</i>` : quiet === true ? html`<span class="quiet">${text}</span>` : html`${text}`;
  if (note !== undefined) return html`<a href=${noteAddress(note)}>${words}</a>`;
  return lang === undefined ? words : html`<span lang=${lang}>${words}</span>`;
}

/** Where a note is read. */
export const noteAddress = (id: string): string => `#/notebook/${encodeURIComponent(id)}`;

/** The body of a note. */
export const bodyTemplate = (blocks: readonly BodyBlock[], picture: PictureAddress): readonly TemplateResult[] =>
  blocks.map((block) => blockTemplate(block, picture));

function blockTemplate(block: BodyBlock, picture: PictureAddress): TemplateResult {
  const words = (inlines: readonly BodyInline[]) => inlines.map((one) => inlineTemplate(one, picture));
  switch (block.is) {
    case 'paragraph':
      return html`<p>${words(block.words)}</p>`;
    case 'heading':
      // The note's title is the page's heading, so the body's own begin below it.
      return block.level <= 1
        ? html`<h2>${words(block.words)}</h2>`
        : block.level === 2
          ? html`<h3>${words(block.words)}</h3>`
          : html`<h4>${words(block.words)}</h4>`;
    case 'list': {
      const items = block.items.map((item) => html`<li>${bodyTemplate(item, picture)}</li>`);
      return block.ordered
        ? html`<ol start=${block.start}>
            ${items}
          </ol>`
        : html`<ul>
            ${items}
          </ul>`;
    }
    case 'quote':
      return html`<blockquote>${bodyTemplate(block.blocks, picture)}</blockquote>`;
    case 'code':
      return html`<pre tabindex="0"><code>${block.text}</code></pre>`;
    case 'table':
      return html`<div class="wide" tabindex="0" role="group" aria-label="Table">
        <table>
          <thead>
            <tr>
              ${block.head.map((cell) => html`<th scope="col">${words(cell)}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${block.rows.map(
              (row) =>
                html`<tr>
                  ${row.map((cell) => html`<td>${words(cell)}</td>`)}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>`;
    case 'rule':
      return html`<hr />`;
  }
}

function inlineTemplate(one: BodyInline, picture: PictureAddress): TemplateResult | string {
  const words = (inlines: readonly BodyInline[]) => inlines.map((each) => inlineTemplate(each, picture));
  switch (one.is) {
    case 'text':
      return typeset(one.text);
    case 'code':
      return html`<code>${one.text}</code>`;
    case 'emphasis':
      return html`<em>${words(one.words)}</em>`;
    case 'strong':
      return html`<strong>${words(one.words)}</strong>`;
    case 'break':
      return html`<br />`;
    case 'note':
      return html`<a href=${noteAddress(one.id)}>${words(one.words)}</a>`;
    case 'web':
      return html`<a href=${one.address} rel="noreferrer external" target="_blank"
        >${words(one.words)}<span class="visually-hidden"> (opens the web)</span></a
      >`;
    case 'file':
      return html`<span>${words(one.words)} <span class="quiet">(${one.path})</span></span>`;
    case 'lost':
      return html`<span>${words(one.words)} <span class="quiet">(leads nowhere: ${one.address})</span></span>`;
    case 'picture': {
      const address = picture(one.path);
      return address === undefined
        ? html`<span class="quiet">Picture: ${one.words === '' ? one.path : one.words}</span>`
        : html`<img src=${address} alt=${one.words} />`;
    }
    case 'picture-lost':
      return html`<span class="quiet"
        >Picture not in the notebook:
        ${one.words === '' ? one.address : one.words}${one.address === '' || one.words === '' ? nothing : html` (${one.address})`}</span
      >`;
  }
}
