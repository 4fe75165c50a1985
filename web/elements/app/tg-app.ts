import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  type Address,
  addressOf,
  chartOfAddress,
  comparedOfAddress,
  settingsOfChart,
  settingsOfCompared,
  paletteOfAddress,
  questionOf,
  readAddress,
  settingsOf,
  settingsOfPalette,
  type View,
} from '../../notebook/address.ts';
import type { Engine, NotebookSize } from '../../notebook/engine.ts';
import type { QuestionChangeEvent } from '../ask/question-change-event.ts';
import type { CompareChangeEvent } from '../compare/compare-change-event.ts';
import type { LabChangeEvent } from '../laboratory/lab-change-event.ts';
import type { NotebookBeside } from '../compare/lay-beside-event.ts';
import type { TableChangeEvent } from '../table/table-change-event.ts';
import { lookAddress, lookedIds } from '../../notebook/looking-address.ts';
import type { LookingChangeEvent } from '../looking/looking-change-event.ts';
import type { ReachChangeEvent } from '../reach-map/reach-change-event.ts';
import type { ChartChangeEvent } from '../who-had-what/chart-change-event.ts';
import type { TypedTable } from '../../notebook/views/table-view.ts';
import type { PaletteChangeEvent } from '../palette/palette-change-event.ts';
import type { BackupDue } from '../../notebook/backup.ts';
import type { SharingState } from '../../notebook/sharing/sharing-state.ts';
import { counted } from '../../notebook/words/counted.ts';
import { OnPaper } from '../shared/on-paper.ts';
import { changeGround, singleKeysWork } from '../shortcuts/page-choices.ts';
import { shortcutOf, takesLetters } from '../shortcuts/shortcuts.ts';
import { styles } from './tg-app.styles.ts';

/** The views that stand, in the order of the heading. */
const STANDING: readonly (readonly [View, string])[] = [
  ['ask', 'Ask'],
  ['dyestuffs', 'Dyestuffs'],
  ['palette', 'Palette'],
  ['who-had-what', 'Who had what'],
  ['recipes', 'Recipes'],
  ['pot', 'Pot'],
  ['on-show', 'On show'],
  ['notebook', 'Notebook'],
];

/** What the page asks when it is opened without an address. */
const FIRST_QUESTION = { colour: 'madder-alum-wool', region: 'hanse-towns', when: 'c. 1370', fibre: 'wool', wearer: 'merchant' } as const;

/** The palette a page opens on. */
const FIRST_PALETTE = { region: 'hanse-towns', when: '1370' } as const;

/** Views that are fetched when they are first opened. */
const LATER: Readonly<Record<View, () => Promise<unknown>>> = {
  ask: () => import('../ask/tg-ask.ts'),
  palette: () =>
    Promise.all([import('../palette/tg-palette.ts'), import('../palette/tg-kept-palette.ts'), import('../compare/tg-compare.ts')]),
  dyestuffs: () => import('../dyestuff/tg-dyestuffs.ts'),
  notebook: () =>
    Promise.all([
      import('../notebook/tg-notebook.ts'),
      import('../read-in/tg-read-in.ts'),
      import('../take-out/tg-take-out.ts'),
      import('../begin/tg-begin.ts'),
    ]),
  recipes: () => import('../recipe/tg-recipes.ts'),
  pot: () => import('../pot/tg-pot.ts'),
  'dye-day': () => import('../pot/tg-pot.ts'),
  samples: () => import('../pot/tg-pot.ts'),
  trials: () => import('../trial/tg-trials.ts'),
  'on-show': () => import('../on-show/tg-on-show.ts'),
  'who-had-what': () => import('../who-had-what/tg-who-had-what.ts'),
};

/**
 * @summary The whole page: the heading, the views, and the view the address names.
 * @csspart views - The list of views.
 */
@customElement('tg-app')
export class TgApp extends LitElement {
  static override styles = styles;

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** How the notebook stands with other people's and machines'. */
  @property({ attribute: false }) sharing: SharingState = { meetings: [] };
  /** What waits for an export; absent where nothing has waited long enough. */
  @property({ attribute: false }) backup?: BackupDue;
  /** True where somebody else's notebook is open, to be read and remarked on. */
  @property({ type: Boolean }) reviewing = false;

  /** Another notebook that lies beside this one while the page is open. */
  @property({ attribute: false }) beside?: NotebookBeside;

  @state() private address: Address = readAddress(globalThis.location.hash);
  @state() private size?: NotebookSize;
  @state() private isKept = false;
  @state() private fault = '';
  @state() private version = 0;
  /** The table of skeins stays while the page is open; it is nobody's note. */
  @state() private table: TypedTable = { list: '', region: 'hanse-towns', when: 'c. 1370' };
  readonly #paper = new OnPaper(this, () => this.performUpdate());
  /** The year is being drawn along its thread, and has its step of the way back already. */
  #dragging = false;
  /** The list of keys was asked for once; it stays for the next time. */
  #keysAsked = false;
  /** When the page was opened: the day for what is due. */
  readonly #opened = new Date().toISOString();

  override connectedCallback() {
    super.connectedCallback();
    globalThis.addEventListener('hashchange', this.#follow);
    globalThis.addEventListener('keydown', this.#key);
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    globalThis.removeEventListener('hashchange', this.#follow);
    globalThis.removeEventListener('keydown', this.#key);
  }

  /**
   * Says that the notebook is open, or has changed.
   *
   * @param isKept false while the demonstration is only shown.
   */
  opened(size: NotebookSize, isKept: boolean) {
    this.size = size;
    this.isKept = isKept;
    this.version += 1;
  }

  /** Says why the notebook could not be opened. */
  failed(fault: string) {
    this.fault = fault;
  }

  override render() {
    return html`
      <header class=${this.#ownPaper ? 'own-paper' : ''}>
        <p class="name">Tenterground</p>
        <nav aria-label="Views">
          <ul part="views">
            ${STANDING.map(
              ([view, title]) =>
                html`<li>
                  <a href=${`#/${view}`} aria-current=${headed(this.address.view) === view ? 'page' : 'false'}>${title}</a>
                </li>`,
            )}
          </ul>
        </nav>
      </header>
      <main class=${this.#ownPaper ? 'whole-paper' : ''}>${this.#view()}</main>
      <footer class=${this.#ownPaper ? 'own-paper' : ''}>
        ${this.size ? html`<p>${this.#whose(this.size)}</p>` : nothing} ${this.#waiting()}
        <p class="keys"><button type="button" @click=${this.#listKeys}>Keys</button></p>
        ${this.#keysAsked ? html`<tg-shortcuts></tg-shortcuts>` : nothing}
        ${this.#paper.value ? html`<p>Printed on ${today()}.</p>` : nothing}
      </footer>
    `;
  }

  /** A board and a sheet of labels fill their paper to the edge: nothing of the page is printed with them. */
  get #ownPaper(): boolean {
    const { view, id, settings } = this.address;
    return view === 'on-show' && id !== undefined && settings['sheet'] === undefined && settings['print'] !== 'dossier';
  }

  /** Whose notebook this is, and how much is in it. */
  #whose({ notes }: NotebookSize) {
    if (this.reviewing)
      return html`A notebook to be reviewed: ${counted(notes, 'note')}, to read and remark on. <a href="./">Your own notebook</a> lies apart
        from it.`;
    if (this.isKept) return html`Your notebook in this browser: ${counted(notes, 'note')}.`;
    return html`Wadholm Quay, the demonstration notebook: ${notes} notes. Its people, trials and measurements are invented.`;
  }

  /** The ways to begin, as long as the notebook is not begun. */
  #beginning() {
    if (this.reviewing || (this.isKept && this.size?.notes !== 0)) return nothing;
    return html`<tg-begin .state=${this.isKept ? 'empty' : 'shown'}></tg-begin>`;
  }

  /** Every view follows from notes: without any there is one thing to do. */
  #empty() {
    void import('../begin/tg-begin.ts');
    return html`<h1>Nothing can be asked of an empty notebook</h1>
      <tg-begin state="empty"></tg-begin>`;
  }

  #waiting() {
    if (!this.backup || this.reviewing) return nothing;
    void import('../take-out/tg-backup.ts');
    return html`<tg-backup .due=${this.backup}></tg-backup>`;
  }

  #view() {
    const { view, id, settings } = this.address;
    // Fetched while the notebook is still being opened.
    void LATER[view]();
    if (this.fault !== '') return html`<p role="alert">The notebook could not be opened: ${this.fault}. Reload the page to try again.</p>`;
    if (!this.size) return html`<p role="status">Opening the notebook.</p>`;
    const isBare = Object.keys(settings).length === 0;
    if (this.size.notes === 0 && view !== 'notebook' && !this.reviewing) return this.#empty();
    switch (view) {
      case 'palette':
        if (settings['look'] !== undefined) {
          void import('../looking/tg-looking.ts');
          return html`<tg-looking
            .engine=${this.engine}
            .ids=${lookedIds(settings['look'])}
            .version=${this.version}
            @tg-looking-change=${this.#looked}
          ></tg-looking>`;
        }
        if (id !== undefined)
          return html`<tg-kept-palette .engine=${this.engine} .paletteId=${id} .version=${this.version}></tg-kept-palette>`;
        return this.#palette(isBare);
      case 'who-had-what': {
        if (id === 'map') {
          void import('../reach-map/tg-reach-map.ts');
          return html`<tg-reach-map
            .engine=${this.engine}
            .reach=${{ dye: settings['dye'] ?? 'madder', when: settings['when'] ?? '1370' }}
            .version=${this.version}
            @tg-reach-change=${this.#reached}
          ></tg-reach-map>`;
        }
        const { chart, year } = chartOfAddress(this.address);
        return html`<tg-who-had-what
          .engine=${this.engine}
          .chart=${chart}
          .year=${year}
          .version=${this.version}
          @tg-chart-change=${this.#chartAsked}
        ></tg-who-had-what>`;
      }
      case 'notebook':
        if (settings['share'] !== undefined && !this.reviewing) {
          void import('../sharing/tg-sharing.ts');
          void import('../remarks/tg-remarks-in.ts');
          return html`<tg-sharing .sharing=${this.sharing}><tg-remarks-in slot="more"></tg-remarks-in></tg-sharing>`;
        }
        if (id === 'data' && settings['write'] === undefined && settings['versions'] === undefined && settings['note'] === undefined) {
          void import('../data/tg-data.ts');
          return html`<tg-data .engine=${this.engine} .version=${this.version} ?read-only=${this.reviewing}></tg-data>`;
        }
        return html`<tg-notebook
          .engine=${this.engine}
          .note=${id}
          .settings=${settings}
          .version=${this.version}
          ?read-only=${this.reviewing}
        >
          <div slot="ways-in" class="in-and-out">
            <ul class="more-ways">
              ${this.reviewing ? nothing : html`<li><a href="#/notebook?share=1">Link a folder, share the notebook</a></li>`}
              <li><a href="#/notebook/data">Data in and out: CSV, GeoJSON, JSON-LD</a></li>
            </ul>
            ${this.#beginning()}
            <tg-read-in></tg-read-in>
            ${
              this.reviewing
                ? html`<section>
                    <h2>Your remarks</h2>
                    <tg-take-out path="remarks.json"></tg-take-out>
                  </section>`
                : html`<section class="out">
                    <h2>Take a copy out</h2>
                    <p>
                      Every note, photo and spectrum in one zip, each as it stands. It can be read in again, here or in another browser.
                    </p>
                    <tg-take-out></tg-take-out>
                  </section>`
            }
          </div>
        </tg-notebook>`;
      case 'recipes':
        return html`<tg-recipes
          .engine=${this.engine}
          .recipe=${id}
          .region=${settings['region'] ?? FIRST_QUESTION.region}
          .when=${settings['when'] ?? FIRST_QUESTION.when}
          .version=${this.version}
        ></tg-recipes>`;
      case 'pot':
      case 'dye-day':
      case 'samples':
        return html`<tg-pot .engine=${this.engine} .view=${view} .about=${id} .settings=${settings} .version=${this.version}></tg-pot>`;
      case 'trials':
        return html`<tg-trials .engine=${this.engine} .trial=${id} .settings=${settings} .version=${this.version}></tg-trials>`;
      case 'on-show':
        return html`<tg-on-show
          .engine=${this.engine}
          .displayId=${id}
          .settings=${settings}
          .version=${this.version}
          .now=${this.#opened}
        ></tg-on-show>`;
      case 'dyestuffs':
        return html`<tg-dyestuffs .engine=${this.engine} .dyestuff=${id} .version=${this.version}></tg-dyestuffs>`;
      default:
        if (id === 'laboratory') {
          void import('../laboratory/tg-laboratory.ts');
          return html`<tg-laboratory
            .engine=${this.engine}
            .settings=${settings}
            .version=${this.version}
            @tg-lab-change=${this.#labAsked}
          ></tg-laboratory>`;
        }
        if (id === 'table') {
          void import('../table/tg-table.ts');
          return html`<tg-table
            .engine=${this.engine}
            .table=${this.table}
            .version=${this.version}
            @tg-table-change=${this.#tableAsked}
          ></tg-table>`;
        }
        return html`<tg-ask
          .engine=${this.engine}
          .question=${isBare ? FIRST_QUESTION : questionOf(this.address)}
          .version=${this.version}
          @tg-question-change=${this.#asked}
        ></tg-ask>`;
    }
  }

  #palette(isBare: boolean) {
    const comparison = comparedOfAddress(this.address);
    if (comparison)
      return html`<tg-compare
        .engine=${this.engine}
        .comparison=${comparison}
        .beside=${this.beside}
        .version=${this.version}
        @tg-compare-change=${this.#compared}
      ></tg-compare>`;
    return html`<tg-palette
      .engine=${this.engine}
      .palette=${isBare ? FIRST_PALETTE : paletteOfAddress(this.address)}
      .version=${this.version}
      @tg-palette-change=${this.#paletteAsked}
    ></tg-palette>`;
  }

  readonly #follow = () => {
    this.#dragging = false;
    this.#show();
  };

  #show() {
    this.address = readAddress(globalThis.location.hash);
  }

  readonly #key = (event: KeyboardEvent) => {
    const does = shortcutOf(event);
    if (!does || !singleKeysWork() || event.composedPath().some((one) => takesLetters(one) || one instanceof HTMLDialogElement)) return;
    event.preventDefault();
    if (does === 'print') globalThis.print();
    else if (does === 'view') changeGround(document.documentElement);
    else if (does === 'list') void this.#listKeys();
    // Where one is finding already, the view itself takes the key.
    else if (this.address.view !== 'notebook' || this.address.settings['find'] === undefined) globalThis.location.hash = '#/notebook?find=';
  };

  async #listKeys() {
    await import('../shortcuts/tg-shortcuts.ts');
    this.#keysAsked = true;
    this.requestUpdate();
    await this.updateComplete;
    const list = this.renderRoot.querySelector('tg-shortcuts');
    await list?.updateComplete;
    list?.show();
  }

  #asked({ detail: { question, settled } }: QuestionChangeEvent) {
    this.#goTo(addressOf({ view: 'ask', settings: settingsOf(question) }), settled);
  }

  #compared({ detail: { comparison } }: CompareChangeEvent) {
    this.#goTo(addressOf({ view: 'palette', settings: settingsOfCompared(comparison) }), true);
  }

  #looked({ detail: { ids } }: LookingChangeEvent) {
    this.#goTo(lookAddress(ids), true);
  }

  #reached({ detail: { reach } }: ReachChangeEvent) {
    this.#goTo(addressOf({ view: 'who-had-what', id: 'map', settings: { ...reach } }), true);
  }

  #chartAsked({ detail: { chart, year, settled } }: ChartChangeEvent) {
    this.#goTo(addressOf({ view: 'who-had-what', settings: settingsOfChart(chart, year) }), settled);
  }

  #labAsked({ detail: { settings } }: LabChangeEvent) {
    this.#goTo(addressOf({ view: 'ask', id: 'laboratory', settings }), true);
  }

  #tableAsked({ detail: { table } }: TableChangeEvent) {
    this.table = table;
  }

  #paletteAsked(event: PaletteChangeEvent) {
    this.#goTo(addressOf({ view: 'palette', settings: settingsOfPalette(event.detail.palette) }), event.detail.settled);
  }

  /** A drag of the year is one step of the way back, whatever years it touched. */
  #goTo(next: string, settled: boolean) {
    const isSame = next === globalThis.location.hash;
    if (!settled && this.#dragging) globalThis.history.replaceState(undefined, '', next);
    else if (!isSame) globalThis.history.pushState(undefined, '', next);
    this.#show();
    this.#dragging = !settled;
  }
}

/** The view whose heading stands for this one: what belongs to the pot has none of its own. */
const headed = (view: View): View => (view === 'dye-day' || view === 'samples' || view === 'trials' ? 'pot' : view);

/** "25 November 2026": a sheet of paper outlives the notebook it was printed from. */
const today = (): string => new Date().toLocaleDateString(undefined, { day: 'numeric', month: 'long', year: 'numeric' });

declare global {
  interface HTMLElementTagNameMap {
    'tg-app': TgApp;
  }
}
