import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { addressOf, settingsOfCompared, type TypedComparison } from '../../notebook/address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { TypedPalette } from '../../notebook/typed-palette.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import type { ComparedMaterial, CompareOrProblems, ComparedSide, CompareView } from '../../notebook/views/compare-view.ts';
import { counted } from '../../notebook/words/counted.ts';
import { paletteChangeWords } from '../../notebook/words/palette-words.ts';
import { problemSentence } from '../ask/question-view.ts';
import '../cloth-line/tg-cloth-line.ts';
import { clothItem } from '../palette/palette-element-view.ts';
import { styles as paletteStyles } from '../palette/tg-palette.styles.ts';
import { type LookedInto, waysIn } from '../read-in/ways-in.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { OnPaper } from '../shared/on-paper.ts';
import { listWord, typedWord } from '../shared/sentence-words.ts';
import { SheetChoice } from '../shared/sheet-choice.ts';
import { sheetChoiceStyles } from '../shared/sheet-choice.styles.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import { WidthOf } from '../shared/width-of.ts';
import { CompareChangeEvent } from './compare-change-event.ts';
import { LayBesideRequestEvent, type NotebookBeside } from './lay-beside-event.ts';
import { styles } from './tg-compare.styles.ts';

/** The lists of changes, in their order. */
const CHANGE_KINDS = ['came', 'went', 'origin', 'verdict'] as const;
/** Below this many pixels the details lie folded, else a comparison of centuries is twenty screens long. Our choice. */
const FOLDS_BELOW = 600;
/** What happened to a material, after its name. */
const MATERIAL_WORDS = { came: 'came to hand', went: 'went', origin: 'changed origin' } as const;

/**
 * @summary Two palettes above each other, and in words what came, what went, what changed and why: of two places, dates, wearers or notebooks.
 * @event {CompareChangeEvent} tg-compare-change - The reader compares two other palettes.
 * @event {LayBesideRequestEvent} tg-lay-beside-request - The reader wants another notebook read, to be compared with; the answer tells what it holds.
 * @csspart changes - What came, went and changed.
 */
@customElement('tg-compare')
export class TgCompare extends LitElement {
  static override styles = [sentenceStyles, paletteStyles, sheetChoiceStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The palettes compared. */
  @property({ attribute: false }) comparison: TypedComparison = {
    before: { region: '', when: '' },
    now: { region: '', when: '' },
    withOther: false,
  };
  /** The other notebook, where one lies beside this one. */
  @property({ attribute: false }) beside?: NotebookBeside;
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private result?: CompareOrProblems;
  @state() private outcome = '';

  readonly #paper = new OnPaper(this, () => this.performUpdate());
  readonly #width = new WidthOf(this, () => this);
  readonly #sheet = new SheetChoice(this);
  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #comparing = new LatestTask<CompareOrProblems | undefined>((result) => (this.result = result));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) this.#choosing.run(this.engine.choices());
    if (!anew && !changed.has('comparison') && !changed.has('beside')) return;
    const { before, now, withOther } = this.comparison;
    this.#comparing.run(withOther ? this.engine.compareNotebooks(now) : this.engine.compare(before, now));
  }

  override render() {
    const { result, comparison, beside } = this;
    const waits = comparison.withOther && !beside;
    return html`
      <h1>${this.#sentence()}</h1>
      ${comparison.withOther ? this.#other() : nothing}
      ${!waits && result === undefined ? html`<p role="status">Judging both palettes.</p>` : nothing}
      ${!waits && result && 'problems' in result ? this.#problems(result) : nothing}
      ${!waits && result && 'compare' in result ? this.#both(result.compare) : nothing}
      <p class="elsewhere">${this.#elsewhere()}</p>
    `;
  }

  #sentence() {
    const { before, now, withOther } = this.comparison;
    const bothFor = (palette: TypedPalette) => this.#change({ before: palette, now: palette, withOther: true });
    if (withOther)
      return html`<span class="sentence"
        >From the other notebook to this one, ${this.#words('Place', 'Date', 'Wearer', now, bothFor, 'in ')}</span
      >`;
    return html`<span class="sentence"
      >From ${this.#words('First place', 'First date', 'First wearer', before, (one) => this.#change({ before: one, now, withOther }))} to
      ${this.#words('Second place', 'Second date', 'Second wearer', now, (one) => this.#change({ before, now: one, withOther }))}</span
    >`;
  }

  #words(place: string, date: string, wearer: string, palette: TypedPalette, change: (palette: TypedPalette) => void, lead = '') {
    const { choices } = this;
    return html`${lead}${listWord(place, palette.region, choices?.regions, (region) => change({ ...palette, region: region ?? '' }))} about
    ${typedWord(date, palette.when, (when) => change({ ...palette, when }))} for
    ${listWord(wearer, palette.wearer, choices?.wearers, (who) => change({ ...palette, wearer: who }), 'anyone')}`;
  }

  #other() {
    const { beside } = this;
    return html`
      <p>
        ${
          beside
            ? html`The other notebook is “${beside.name}”: ${counted(beside.notes, 'note')}. It is only read, and kept nowhere.`
            : html`Choose the other notebook, a folder or a zip. It is only read: your own stays as it is, and nothing leaves your machine.`
        }
      </p>
      <div class="ways">${waysIn((look) => void this.#lay(look))}</div>
      <p role="status" class="quiet">${this.outcome}</p>
    `;
  }

  #problems(result: Extract<CompareOrProblems, { readonly problems: unknown }>) {
    return result.problems.map(
      (problem) => html`<p class="problem" role="alert">${result.inOther ? 'In the other notebook: ' : ''}${problemSentence(problem)}</p>`,
    );
  }

  /** Both lines, then what differs; a narrow screen, on which the lines are long, has what differs first. */
  #both(view: CompareView) {
    const [was, is] = this.comparison.withOther ? ['The other notebook: ', 'This notebook: '] : ['', ''];
    const lines = html`${this.#side(was + view.before.heading, view.before)} ${this.#side(is + view.now.heading, view.now)}`;
    const isNarrow = this.#isNarrow;
    return html`
      ${isNarrow ? nothing : lines} ${this.#differences(view)} ${isNarrow ? lines : nothing} ${this.#sheet.template('this comparison')}
    `;
  }

  #differences(view: CompareView) {
    const { colours, materials, sources, same } = view;
    return html`
      <div class="changes" part="changes">
        <section aria-live="polite">
          <h2>The colours: what came, what went, what changed</h2>
          ${colours.length === 0 ? html`<p>Nothing differs.</p>` : nothing} ${CHANGE_KINDS.map((kind) => this.#colours(kind, view))}
          <p class="quiet">${same} ${same === 1 ? 'colour is' : 'colours are'} the same on both.</p>
        </section>
        <section>
          <h2>Why: what came to hand, and what went</h2>
          ${
            materials.length === 0
              ? html`<p>Every dyestuff, helper and fibre stands as it did.</p>`
              : this.#folded(counted(materials.length, 'change'), html`<dl>${materials.map((material) => this.#material(material))}</dl>`)
          }
        </section>
      </div>
      ${
        sources.length === 0
          ? nothing
          : html`<section>
              <h2>Sources</h2>
              ${this.#folded(
                counted(sources.length, 'source'),
                html`<ul class="sources">
                  ${sources.map(({ key, text }) => html`<li><strong>${key}</strong>: ${text}</li>`)}
                </ul>`,
              )}
            </section>`
      }
    `;
  }

  #colours(kind: keyof typeof paletteChangeWords, { colours }: CompareView) {
    const own = colours.filter((one) => one.kind === kind);
    if (own.length === 0) return nothing;
    return html`<h3>${paletteChangeWords[kind]}, ${counted(own.length, 'colour')}</h3>
      ${this.#folded(
        'Which, and why',
        html`<ul>
          ${own.map(({ says }) => html`<li>${says}</li>`)}
        </ul>`,
      )}`;
  }

  get #isNarrow(): boolean {
    return !this.#paper.value && this.#width.value > 0 && this.#width.value < FOLDS_BELOW;
  }

  /** Details that lie folded on a narrow screen; paper and a wide one have them open. */
  #folded(summary: string, details: TemplateResult) {
    return this.#isNarrow
      ? html`<details>
          <summary>${summary}</summary>
          ${details}
        </details>`
      : details;
  }

  #material({ kind, title, before, now }: ComparedMaterial) {
    return html`<div>
      <dt>${title} ${MATERIAL_WORDS[kind]}</dt>
      <dd class="was">${before}</dd>
      <dd>${now}</dd>
    </div>`;
  }

  #side(heading: string, { cloths }: ComparedSide) {
    return html`<section class="line">
      <h2>${heading}</h2>
      <tg-cloth-line label=${heading} .items=${cloths.map(clothItem)}>
        <p slot="empty">The notes stand behind no colour here.</p>
      </tg-cloth-line>
    </section>`;
  }

  #elsewhere() {
    const { now, withOther } = this.comparison;
    const to = (comparison: TypedComparison) => addressOf({ view: 'palette', settings: settingsOfCompared(comparison) });
    return withOther
      ? html`<a href=${to({ before: now, now, withOther: false })}>Compare two places, dates or wearers instead</a>`
      : html`<a href=${to({ before: now, now, withOther: true })}>Compare with another notebook instead</a>`;
  }

  async #lay(look: () => Promise<LookedInto>) {
    this.outcome = 'Reading the other notebook.';
    const looked = await look();
    if ('trouble' in looked) {
      this.outcome = looked.trouble;
      return;
    }
    const request = new LayBesideRequestEvent(looked.found);
    this.dispatchEvent(request);
    const laid = await request.answer;
    this.outcome = laid && laid.unread > 0 ? `${counted(laid.unread, 'file')} of it could not be read.` : '';
  }

  #change(comparison: TypedComparison) {
    this.dispatchEvent(new CompareChangeEvent(comparison));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-compare': TgCompare;
  }
}
