import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { LinkedNote, NoteClaimView, NoteView, SourceView } from '../../notebook/views/note-view.ts';
import type { ProblemView } from '../../notebook/views/problem-view.ts';
import type { NoteCloth, NoteSection } from '../../notebook/views/record-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { typeset } from '../shared/typeset.ts';
import '../swatch/tg-swatch.ts';
import '../take-out/tg-take-out.ts';
import { AttachmentAddresses } from './attachment-addresses.ts';
import { bodyTemplate, lineTemplate, noteAddress } from './note-body.ts';
import { styles } from './tg-note.styles.ts';

/**
 * @summary A note of the notebook, for reading and for paper.
 * @csspart heading - Kind, title, names and what can be done with the note.
 * @csspart body - The note's own words.
 * @csspart claims - What it claims.
 * @csspart sources - Where it is from.
 * @csspart problems - What is wrong in it, and what to write instead.
 * @csspart links - The notes it names and those that name it.
 */
@customElement('tg-note')
export class TgNote extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The note's id. */
  @property() note = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** True where nothing can be changed: the ways to writing are left out. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  @state() private view?: NoteView | 'none';

  readonly #opening = new LatestTask<NoteView | undefined>((view) => (this.view = view ?? 'none'));
  readonly #pictures = new AttachmentAddresses(this, (path) => this.engine?.attachment(path) ?? Promise.resolve(undefined));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine || !(changed.has('engine') || changed.has('note') || changed.has('version'))) return;
    if (changed.has('note') || changed.has('engine')) this.view = undefined;
    this.#pictures.forget();
    this.#opening.run(this.engine.note(this.note));
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Opening the note.</p>`;
    if (view === 'none')
      return html`<p role="alert">No note of this notebook has the id “${this.note}”. <a href="#/notebook">All notes</a></p>`;
    return html`<article>
      ${this.#heading(view)} ${this.#cautions(view.cautions)}
      ${
        view.rows.length === 0
          ? nothing
          : html`<dl>
              ${view.rows.map(
                ({ label, line }) =>
                  html`<dt>${label}</dt>
                    <dd>${lineTemplate(line)}</dd>`,
              )}
            </dl>`
      }
      ${view.sections.filter((section) => !isOfOthers(section)).map((section) => this.#section(section))}
      ${view.body.length === 0 ? nothing : html`<section class="body" part="body" aria-label="In words">${bodyTemplate(view.body, (path) => this.#pictures.of(path))}</section>`}
      ${view.sections.filter(isOfOthers).map((section) => this.#section(section))} ${this.#claims(view)} ${this.#sources(view)}
      ${this.#problems(view)} ${this.#links(view)}
    </article>`;
  }

  #heading(view: NoteView) {
    return html`<header part="heading">
      <p class="small kind">${view.kindWord} · ${view.file}${view.invented ? ' · invented for the demonstration' : ''}</p>
      <h1>${view.title}</h1>
      ${view.latin.map((name) => html`<p class="latin" lang="la">${name}</p>`)}
      ${
        view.names.length === 0
          ? nothing
          : html`<p class="names">
              Also
              ${view.names.map(
                ({ name, lang }, at) =>
                  html`${at === 0 ? '' : ', '}<span lang=${lang ?? ''}>${name}</span
                    >${lang === undefined ? nothing : html` <span class="small">${lang}</span>`}`,
              )}
            </p>`
      }
      ${view.tags.length === 0 ? nothing : html`<p class="small names">Filed under ${view.tags.join(', ')}</p>`} ${this.#ways(view)}
    </header>`;
  }

  #ways({ id, kind, file, readOnly, laboratory }: NoteView) {
    const here = noteAddress(id);
    return html`<ul class="steps">
      ${
        this.readOnly || readOnly
          ? nothing
          : html`<li><a href=${`${here}?write=form`}>Change this note</a></li>
              <li><a href=${`${here}?write=text`}>Change its text</a></li>
              <li><a href=${`${here}?versions=all`}>Earlier versions</a></li>`
      }
      ${kind === 'trial' && !this.readOnly && !readOnly ? html`<li><a href=${`#/pot/${encodeURIComponent(id)}`}>At the pot</a></li>` : nothing}
      ${kind === 'dyestuff' ? html`<li><a href=${`#/dyestuffs/${encodeURIComponent(id)}`}>Everything on this dyestuff</a></li>` : nothing}
      ${laboratory.map(({ words, address }) => html`<li><a href=${address}>${words}</a></li>`)}
      ${kind === 'trial' ? html`<li><a href=${`#/trials/${encodeURIComponent(id)}`}>This pot beside others, its lots and tests</a></li>` : nothing}
      <li><tg-take-out plain .path=${file}></tg-take-out></li>
      ${readOnly ? html`<li class="small">This file is not UTF-8 and cannot be changed here.</li>` : nothing}
    </ul>`;
  }

  #cautions(cautions: readonly string[]) {
    if (cautions.length === 0) return nothing;
    return html`<section class="caution" aria-labelledby="care">
      <h2 id="care">Care</h2>
      ${cautions.map((text) => html`<p>${typeset(text)}</p>`)}
    </section>`;
  }

  #section(section: NoteSection) {
    return html`<section>
      <h2>${section.title}</h2>
      ${this.#inside(section)}
    </section>`;
  }

  #inside(section: NoteSection) {
    switch (section.is) {
      case 'list': {
        const items = section.lines.map((line) => html`<li>${lineTemplate(line)}</li>`);
        return section.ordered
          ? html`<ol>
              ${items}
            </ol>`
          : html`<ul class="lines">
              ${items}
            </ul>`;
      }
      case 'quote':
        return html`<blockquote>${typeset(section.text)}</blockquote>`;
      case 'cloths':
        return html`<ul class="cloths">
          ${section.cloths.map((cloth) => this.#cloth(cloth))}
        </ul>`;
      case 'table': {
        // A column nobody filled in says nothing and takes room on a phone.
        const filled = section.head.map((_, column) => section.rows.some((row) => (row[column]?.length ?? 0) > 0));
        return html`<div class="wide" tabindex="0" role="group" aria-label=${section.title}>
          <table>
            <thead>
              <tr>
                ${section.head.map((title, column) => (filled[column] ? html`<th scope="col">${title}</th>` : nothing))}
              </tr>
            </thead>
            <tbody>
              ${section.rows.map(
                (row) =>
                  html`<tr>
                    ${row.map((line, column) => (filled[column] ? html`<td>${lineTemplate(line)}</td>` : nothing))}
                  </tr>`,
              )}
            </tbody>
          </table>
        </div>`;
      }
    }
  }

  #cloth({ title, hex, wide, inScreenGamut, weave, seed, note, lines, photo, asFound }: NoteCloth) {
    const picture = photo === undefined ? undefined : this.#pictures.of(photo);
    return html`<li>
      <tg-swatch .hex=${hex} .wide=${wide ?? ''} .fibre=${weave} .seed=${seed} .outOfGamut=${!inScreenGamut} .label=${title}></tg-swatch>
      <div class="beside">
        <strong>${note === undefined ? title : html`<a href=${noteAddress(note)}>${title}</a>`}</strong
        >${lines.map((line) => html`<span>${lineTemplate(line)}</span>`)}
        ${asFound === undefined ? nothing : html`<a href=${asFound}>What it may have been, before it faded</a>`}
        ${picture === undefined ? nothing : html`<a class="photo" href=${picture} target="_blank"><img src=${picture} alt=${`Photo of ${title}`} /></a>`}
      </div>
    </li>`;
  }

  #claims({ claims }: NoteView) {
    if (claims.length === 0) return nothing;
    return html`<section part="claims">
      <h2>What it claims</h2>
      <ul class="lines">
        ${claims.map((claim) => this.#claim(claim))}
      </ul>
    </section>`;
  }

  #claim({ about, says, region, when, evidence, narrowed, source, checked, remark }: NoteClaimView) {
    const place = region.length === 0 ? 'place not stated' : lineTemplate(region);
    const date = when.length === 0 ? 'date not stated' : lineTemplate(when);
    return html`<li>
      <span class="says">${place}, ${date}: ${lineTemplate(about)}${about.length === 0 ? '' : ' '}${says}</span>
      ${narrowed.length === 0 ? nothing : html`<strong>(${narrowed.join('; ')})</strong>`}
      <br /><span class="small">${evidence} · ${source}${checked === '' ? '' : ` · ${checked}`}</span>
      ${remark === '' ? nothing : html`<br />${remark}`}
    </li>`;
  }

  #sources({ sources, checked, reviewBy }: NoteView) {
    if (sources.length === 0 && checked === '' && reviewBy.length === 0) return nothing;
    return html`<section part="sources">
      <h2>${sources.length === 1 ? 'Source' : 'Sources'}</h2>
      ${
        sources.length === 0
          ? html`<p>No source given.</p>`
          : html`<ul class="lines">
              ${sources.map((source) => html`<li>${this.#source(source)}</li>`)}
            </ul>`
      }
      ${checked === '' ? nothing : html`<p class="small">${checked.charAt(0).toUpperCase()}${checked.slice(1)}.</p>`}
      ${reviewBy.length === 0 ? nothing : html`<p class="small">To be looked at again by ${lineTemplate(reviewBy)}.</p>`}
    </section>`;
  }

  #source({ key, locator, entry, within, address }: SourceView) {
    const title = entry === '' ? key : entry;
    return html`${
      address === undefined
        ? title
        : html`<a href=${address} rel="noreferrer external" target="_blank"
            >${title}<span class="visually-hidden"> (opens the web)</span></a
          >`
    }${within === '' ? '' : `. ${within}`}${locator === '' ? '' : `, ${locator}`}
    ${entry === '' ? html`<span class="small">not in the bibliography</span>` : html`<span class="small">${key}</span>`}`;
  }

  #problems({ problems, id }: NoteView) {
    if (problems.length === 0) return nothing;
    return html`<section class="problems" part="problems">
      <h2>To look at</h2>
      ${problems.map((problem) => this.#problem(problem, id))}
    </section>`;
  }

  #problem({ severity, line, column, says, instead }: ProblemView, id: string) {
    return html`<p class="problem" data-severity=${severity}>
      <strong>${severity === 'error' ? 'Error' : 'Look at'}</strong>,
      <a href=${`${noteAddress(id)}?write=text&line=${line}&column=${column}`}>line ${line}</a>: ${says} ${instead}
    </p>`;
  }

  #links({ linksTo, linksFrom }: NoteView) {
    if (linksTo.length + linksFrom.length === 0) return nothing;
    return html`<section part="links">
      ${
        linksFrom.length === 0
          ? nothing
          : html`<h2>Named in</h2>
              ${this.#linked(linksFrom)}`
      }
      ${
        linksTo.length === 0
          ? nothing
          : html`<h2>Names</h2>
              ${this.#linked(linksTo)}`
      }
    </section>`;
  }

  #linked(notes: readonly LinkedNote[]) {
    return html`<ul class="lines">
      ${notes.map(({ id, title, kindWord }) => html`<li><a href=${noteAddress(id)}>${title}</a> <span class="small">${kindWord.toLowerCase()}</span></li>`)}
    </ul>`;
  }
}

/** True for what other notes say of this one: it stands behind the note's own words. */
const isOfOthers = (section: NoteSection): boolean => section.is === 'cloths' && section.cloths.some(({ note }) => note !== undefined);

declare global {
  interface HTMLElementTagNameMap {
    'tg-note': TgNote;
  }
}
