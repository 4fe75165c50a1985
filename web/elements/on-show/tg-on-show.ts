import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { DisplayView } from '../../notebook/views/display-view.ts';
import type { DueItem } from '../../notebook/views/due-list-view.ts';
import { dayWords } from '../../notebook/words/day-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { onShowStyles } from './on-show.styles.ts';
import './tg-display.ts';
import './tg-display-begin.ts';
import './tg-evidence-sheet.ts';
import './tg-label-sheet.ts';
import './tg-publish.ts';

/**
 * @summary "On show": the displays of a notebook and what is due; one display, its labels, its sheets.
 * @csspart due - What is due.
 */
@customElement('tg-on-show')
export class TgOnShow extends LitElement {
  static override styles = [baseStyles, onShowStyles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the display note; the list of displays without one. */
  @property({ attribute: 'display-id' }) displayId?: string;
  /** `sheet`: a colour whose evidence is wanted. `print`: `labels` or `dossier`. */
  @property({ attribute: false }) settings: Readonly<Record<string, string>> = {};
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** UTC, ISO 8601: the day it is. */
  @property() now = '';

  @state() private displays: readonly { readonly id: string; readonly title: string }[] = [];
  @state() private due?: readonly DueItem[];
  @state() private labels?: DisplayView;

  readonly #listing = new LatestTask<[TgOnShow['displays'], readonly DueItem[]]>(([displays, due]) => {
    this.displays = displays;
    this.due = due;
  });
  readonly #labelling = new LatestTask<DisplayView | undefined>((view) => (this.labels = view));

  override willUpdate(changed: PropertyValues<this>) {
    const { engine, displayId } = this;
    if (!engine || !(['engine', 'displayId', 'settings', 'version', 'now'] as const).some((name) => changed.has(name))) return;
    if (displayId === undefined) this.#listing.run(Promise.all([engine.displays(), engine.dueList(this.now)]));
    else if (this.settings['print'] === 'labels') this.#labelling.run(engine.display(displayId));
  }

  override render() {
    const { engine, displayId, version, now, settings } = this;
    if (displayId === undefined) return this.#list();
    const sheet = settings['sheet'];
    if (sheet !== undefined || settings['print'] === 'dossier')
      return html`<tg-evidence-sheet
        .engine=${engine}
        .displayId=${displayId}
        .colour=${sheet ?? ''}
        .version=${version}
      ></tg-evidence-sheet>`;
    if (settings['publish'] !== undefined)
      return html`<tg-publish .engine=${engine} .displayId=${displayId} .version=${version} .now=${now}></tg-publish>`;
    if (settings['print'] === 'labels')
      return html`<p class="quiet screen"><a href=${`#/on-show/${encodeURIComponent(displayId)}`}>The board</a></p>
        <tg-label-sheet .display=${this.labels}></tg-label-sheet>`;
    return html`<tg-display .engine=${engine} .displayId=${displayId} .version=${version} .now=${now}></tg-display>`;
  }

  #list() {
    return html`
      <h1>On show</h1>
      <ul>
        ${this.displays.map(({ id, title }) => html`<li><a href=${`#/on-show/${encodeURIComponent(id)}`}>${title}</a></li>`)}
      </ul>
      ${this.due !== undefined && this.displays.length === 0 ? html`<p>No display yet: a board hangs here once a palette is put on it.</p>` : nothing}
      <tg-display-begin .engine=${this.engine} .palette=${this.settings['palette'] ?? ''} .version=${this.version}></tg-display-begin>
      <h2>What is due</h2>
      ${this.due?.length === 0 ? html`<p>Nothing within the next three months.</p>` : nothing}
      <ul part="due">
        ${this.due?.map(
          ({ day, overdue, says, note, kind }) =>
            html`<li>
              <p>
                <strong>${day === undefined ? 'Now' : dayWords(day)}${overdue && day !== undefined ? ', overdue' : ''}.</strong>
                <a href=${`#/${kind === 'review' ? 'notebook' : 'on-show'}/${encodeURIComponent(note)}`}>${says}</a>
              </p>
            </li>`,
        )}
      </ul>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-on-show': TgOnShow;
  }
}
