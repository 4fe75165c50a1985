import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ValuePath } from '../../domain/note/locate-value.ts';
import { NOTE_KINDS } from '../../domain/note/note.ts';
import type { Engine } from '../../notebook/engine.ts';
import { fieldValue } from '../../notebook/field-value.ts';
import { completionsOf } from '../../notebook/completions-of.ts';
import { itemSummary } from '../../notebook/item-summary.ts';
import { itemValue } from '../../notebook/item-value.ts';
import { changeBetween, withChanges, withPlainEndings } from '../../notebook/line-endings.ts';
import type { NotebookFile } from '../../notebook/notebook.ts';
import { attachedPath } from '../../notebook/attached-path.ts';
import { clothColour, withPickedColour } from '../../notebook/picked-colour.ts';
import type { ChoicesView, ClothChoice } from '../../notebook/views/choices-view.ts';
import { type FieldView, type FormView, formView, type ItemView } from '../../notebook/views/form-view.ts';
import { type PlacedProblems, placedProblems } from '../../notebook/views/placed-problems.ts';
import type { ProblemView } from '../../notebook/views/problem-view.ts';
import type { Completion, WritingChoices } from '../../notebook/views/writing-choices.ts';
import { kindWords } from '../../notebook/words/kind-words.ts';
import { pickedColourWords } from '../../notebook/words/save-words.ts';
import type { ColourPickEvent, PickedColour } from '../colour-input/colour-pick-event.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { baseStyles } from '../shared/base.styles.ts';
import '../swatch/tg-swatch.ts';
import { colourPreview } from './colour-preview.ts';
import { DateReadings } from './date-readings.ts';
import { fieldStyles } from './field.styles.ts';
import { styles } from './tg-note-form.styles.ts';
import { DraftEditEvent } from './write-events.ts';

/** Values that run over several lines. */
const LONG = new Set([
  'says',
  'as-written',
  'note',
  'steps',
  'cautions',
  'log',
  'deviations',
  'doubt',
  'context',
  'enforced',
  'question',
  'lots',
]);
/** Colours that are shown as cloth. */
const CLOTHS = new Set(['colour', 'colours', 'colour-now']);

const idOf = (path: ValuePath): string => `f-${path.join('-')}`;

/**
 * Long because every form of field is one template here, and each calls the others: groups hold lists, lists hold groups.
 *
 * @summary A note as a form made from the keys of its kind. Each field changes one value of the text and nothing beside it.
 * @event {DraftEditEvent} tg-draft-edit - The writer set or emptied a value, or changed the note's own words.
 * @csspart own - What the note records.
 * @csspart common - Where it is from, and how it is filed.
 * @csspart kept - Keys no form has; they stay as they are.
 */
@customElement('tg-note-form')
export class TgNoteForm extends LitElement {
  static override styles = [baseStyles, fieldStyles, styles];

  /** Where the notebook is: it reads dates. */
  @property({ attribute: false }) engine?: Engine;
  /** The whole text of the note. */
  @property({ attribute: false }) text = '';
  /** Where the note lies, or will. */
  @property() path = '';
  /** What fields complete from. */
  @property({ attribute: false }) choices?: WritingChoices;
  /** What is wrong in the text. */
  @property({ attribute: false }) problems: readonly ProblemView[] = [];

  /** Rows that are open, and lists to which one more is being added. */
  @state() private open: ReadonlySet<string> = new Set();
  @state() private adding: ReadonlySet<string> = new Set();
  /** What stands in date fields that are being typed in. */
  @state() private typed: ReadonlyMap<string, string> = new Map();

  /** Cloths whose colour can be taken; read when they are first wanted. */
  @state() private cloths: readonly ClothChoice[] = [];
  /** Why a colour that was picked could not be written, by the field's id. */
  @state() private colourFault?: { readonly at: string; readonly says: string };

  readonly #choosing = new LatestTask<ChoicesView>(({ cloths }) => (this.cloths = cloths));
  readonly #readings = new DateReadings(this, (text) => this.engine?.readDate(text));
  /** The completion lists that the fields drawn ask for. */
  readonly #lists = new Map<string, readonly Completion[]>();

  override render() {
    const view = formView(this.text);
    if (view.broken)
      return html`<p class="fault" role="alert">
        The front matter cannot be read as it stands, so no form can be made of it. Mend it in the text: nothing is lost.
      </p>`;
    const problems = placedProblems(view, this.problems);
    this.#lists.clear();
    return html`<form class="form" @submit=${(event: Event) => event.preventDefault()} autocomplete="off">
      ${this.#kind(view)} ${problems.others.map((problem) => this.#fault(problem))}
      <div class="form" part="own">${view.own.map((field) => this.#field(field, problems))}</div>
      ${this.#body(view)}
      <h2>Where it is from, and how it is filed</h2>
      <div class="form" part="common">${view.common.map((field) => this.#field(field, problems))}</div>
      ${this.#kept(view)} ${[...this.#lists].map(([id, completions]) => datalist(id, completions))}
    </form>`;
  }

  #kind({ kind, unknownKind }: FormView) {
    return html`<div class="field">
      <label for="f-kind">Kind of note</label>
      <select id="f-kind" @change=${(event: Event) => this.#set(['kind'], valueOf(event))}>
        ${unknownKind === '' ? nothing : html`<option value=${unknownKind} selected>${unknownKind}, which is no kind</option>`}
        ${['plain' as const, ...NOTE_KINDS].map(
          (one) => html`<option value=${one} ?selected=${unknownKind === '' && one === kind}>${kindWords[one].one}</option>`,
        )}
      </select>
      <p class="hint">${kindWords[kind].records}</p>
    </div>`;
  }

  #field(field: FieldView, problems: PlacedProblems): TemplateResult {
    const faults = problems.of(field.path).map((problem) => this.#fault(problem));
    if (field.is === 'elsewhere') return this.#elsewhere(field, faults);
    if (field.is === 'group') return this.#groups(field, problems, faults);
    return field.list ? this.#list(field, problems, faults) : this.#single(field, faults);
  }

  #elsewhere({ label, filled }: FieldView, faults: readonly TemplateResult[]) {
    if (!filled) return html``;
    return html`<div class="field">
      <span class="label">${label}</span>
      <p class="hint">It stands in a shape of its own; change it in the text.</p>
      ${faults}
    </div>`;
  }

  #single(field: FieldView, faults: readonly TemplateResult[]) {
    const id = idOf(field.path);
    if (field.is === 'yes-no' || (field.is === 'word' && field.words.length === 1)) return this.#check(field, faults);
    return html`<div class="field">
      <label for=${id}>${field.label}${field.needed && !field.filled ? html` <span class="needed">wanted</span>` : nothing}</label>
      ${this.#input(field, field.path, field.value, id)} ${this.#below(field, field.path, field.value, id)} ${faults}
    </div>`;
  }

  #check(field: FieldView, faults: readonly TemplateResult[]) {
    const id = idOf(field.path);
    const word = field.is === 'word' ? (field.words[0]?.[0] ?? '') : true;
    const isOn = field.is === 'word' ? field.value === word : field.value === 'true' || field.value === 'yes';
    return html`<div class="field">
      <div class="check">
        <input
          type="checkbox"
          id=${id}
          .checked=${isOn}
          aria-describedby=${field.hint === '' ? nothing : `${id}-hint`}
          @change=${(event: Event) => ((event.target as HTMLInputElement).checked ? this.#set(field.path, word) : this.#drop(field.path))}
        />
        <label for=${id}>${field.label}</label>
      </div>
      ${field.hint === '' ? nothing : html`<p class="hint" id=${`${id}-hint`}>${field.hint}</p>`} ${faults}
    </div>`;
  }

  /** The control of one value. */
  #input(field: FieldView, path: ValuePath, value: string, id: string, label?: string, alone?: string) {
    const isRow = field.is === 'number' && !field.list && value.includes(',');
    const change = (event: Event) =>
      this.#typed(field, path, valueOf(event), isRow || (field.is === 'number' && field.key === 'months'), alone);
    const described = `${id}-hint`;
    if (field.is === 'word') {
      const isUnknown = value !== '' && !field.words.some(([word]) => word === value.toLowerCase());
      return html`<select id=${id} aria-label=${label ?? nothing} aria-describedby=${described} @change=${change}>
        <option value="" ?selected=${value === ''}>not said</option>
        ${isUnknown ? html`<option value=${value} selected>${value}, which is none of these</option>` : nothing}
        ${field.words.map(([word, text]) => html`<option value=${word} ?selected=${word === value.toLowerCase()}>${text}</option>`)}
      </select>`;
    }
    if (LONG.has(field.key) || value.includes('\n'))
      return html`<textarea
        id=${id}
        rows="2"
        spellcheck="true"
        aria-label=${label ?? nothing}
        aria-describedby=${described}
        .value=${value}
        @change=${change}
      ></textarea>`;
    const list = this.#listFor(field);
    return html`<input
      id=${id}
      type="text"
      list=${list ?? ''}
      inputmode=${field.is === 'number' ? 'decimal' : nothing}
      spellcheck=${field.is === 'text' ? 'true' : 'false'}
      aria-label=${label ?? nothing}
      aria-describedby=${described}
      .value=${value}
      @change=${change}
      @input=${field.is === 'date' ? (event: Event) => this.#typing(path, valueOf(event)) : nothing}
    />`;
  }

  /** What stands under a control: a hint, a date's reading, the title of what is named. */
  #below(field: FieldView, path: ValuePath, value: string, id: string) {
    const described = `${id}-hint`;
    if (field.is === 'date') {
      const typed = this.typed.get(idOf(path)) ?? value;
      const reading = this.#readings.of(typed);
      return html`<p class=${reading === '' ? 'hint' : 'reading'} id=${described} aria-live="polite">
        ${reading === '' ? field.hint : reading}
      </p>`;
    }
    const named = this.#namedBy(field, value);
    const text = named === '' ? field.hint : named;
    return html`<p class="hint" id=${described} ?hidden=${text === ''}>${text}</p>`;
  }

  #namedBy(field: FieldView, value: string): string {
    if (value === '' || (field.is !== 'reference' && field.is !== 'citation')) return '';
    const key = field.is === 'citation' ? (value.split(',')[0]?.trim() ?? '') : value;
    const label = this.#completions(field).find((one) => one.value === key)?.label ?? '';
    return label.toLowerCase() === value.toLowerCase() ? '' : label;
  }

  #list(field: FieldView, problems: PlacedProblems, faults: readonly TemplateResult[]) {
    const key = idOf(field.path);
    const isAdding = this.adding.has(key);
    const items = isAdding || field.items.length === 0 ? [...field.items, field.blank()] : field.items;
    return html`<fieldset>
      <legend>${field.label}${field.needed && !field.filled ? html` <span class="needed">wanted</span>` : nothing}</legend>
      ${field.hint === '' ? nothing : html`<p class="hint">${field.hint}</p>`}
      <ol class="rows">
        ${items.map((item, at) => this.#listed(field, item, at, problems))}
      </ol>
      ${faults}
      ${
        isAdding || field.items.length === 0
          ? nothing
          : html`<button type="button" class="add" @click=${() => this.#add(field)}>One more ${field.oneMore}</button>`
      }
    </fieldset>`;
  }

  #listed(field: FieldView, item: ItemView, at: number, problems: PlacedProblems) {
    const id = idOf(item.path);
    const isThere = at < field.items.length;
    const alone = isThere || field.alone === '' ? undefined : field.alone;
    return html`<li class="field">
      <div class="row">
        ${this.#input(field, item.path, item.value, id, `${field.label}, ${at + 1}`, alone)}
        ${isThere ? html`<button type="button" aria-label=${`Remove ${field.label.toLowerCase()}, ${at + 1}: ${item.value}`} @click=${() => this.#drop(item.path)}>Remove</button>` : nothing}
      </div>
      ${this.#below({ ...field, hint: '' }, item.path, item.value, id)}
      ${isThere ? problems.of(item.path).map((problem) => this.#fault(problem)) : nothing}
    </li>`;
  }

  #groups(field: FieldView, problems: PlacedProblems, faults: readonly TemplateResult[]) {
    const key = idOf(field.path);
    const isAdding = this.adding.has(key);
    const items = isAdding && (field.list || field.items.length === 0) ? [...field.items, field.blank()] : field.items;
    const canAdd = !isAdding && (field.list || field.items.length === 0);
    return html`<fieldset>
      <legend>${field.label}${field.needed && !field.filled ? html` <span class="needed">wanted</span>` : nothing}</legend>
      ${field.hint === '' ? nothing : html`<p class="hint">${field.hint}</p>`} ${faults}
      ${items.map((item, at) => this.#group(field, item, at, problems))}
      ${
        canAdd
          ? html`<button type="button" class="add" id=${`${key}-add`} @click=${() => this.#add(field)}>
              ${field.list ? `One more ${field.oneMore}` : `Write down ${field.label.toLowerCase()}`}
            </button>`
          : nothing
      }
    </fieldset>`;
  }

  #group(field: FieldView, item: ItemView, at: number, problems: PlacedProblems) {
    const key = idOf(item.path);
    const isThere = at < field.items.length;
    const isOpen = !isThere || this.open.has(key);
    const count = problems.within(item.path);
    const summary = itemSummary(item, this.choices);
    const title = summary === '' ? `New ${field.oneMore}` : summary;
    return html`<details class="group" .open=${isOpen} @toggle=${(event: Event) => this.#toggled(event, key)}>
      <summary>
        ${title}${count === 0 ? nothing : html` <span class="needed">${count === 1 ? '1 thing' : `${count} things`} to look at</span>`}
      </summary>
      ${isOpen ? this.#inside(field, item, isThere, problems) : nothing}
    </details>`;
  }

  #inside(field: FieldView, item: ItemView, isThere: boolean, problems: PlacedProblems) {
    const faults = isThere ? problems.of(item.path).map((problem) => this.#fault(problem)) : [];
    if (item.isBare)
      return html`<div class="inside">
        ${faults} ${this.#input({ ...field, is: 'text', list: false }, item.path, item.value, idOf(item.path), field.label)}
        <div class="tools">
          ${
            field.short === undefined
              ? nothing
              : html`<button type="button" @click=${() => this.#set(item.path, { [field.short ?? '']: item.value })}>
                  Write more about it
                </button>`
          }
          ${this.#rowTools(field, item)}
        </div>
      </div>`;
    const cloth = CLOTHS.has(field.key) ? colourPreview(item.fields) : undefined;
    const isMain = (one: FieldView) => one.filled || one.needed || USUAL.has(`${field.key} ${one.key}`);
    const main = item.fields.filter(isMain);
    const more = item.fields.filter((one) => !isMain(one));
    // A small group shows all it has; a large one keeps what is seldom said behind a word.
    const [shown, behind] = item.fields.length <= SMALL_GROUP ? [item.fields, []] : [main, more];
    const inner = html`<div class="inside">
      ${faults}
      <div class="pair">${shown.map((one) => this.#placed(one, problems))}</div>
      ${
        behind.length === 0
          ? nothing
          : html`<details>
              <summary class="more">More that can be said</summary>
              <div class="pair">${behind.map((one) => this.#placed(one, problems))}</div>
            </details>`
      }
      ${CLOTHS.has(field.key) ? this.#otherWays(item.path) : nothing}
      ${isThere ? html`<div class="tools">${this.#rowTools(field, item)}</div>` : nothing}
    </div>`;
    if (!CLOTHS.has(field.key)) return inner;
    return html`<div class="swatch-row">
      <tg-swatch
        .hex=${cloth?.hex ?? ''}
        .seed=${idOf(item.path)}
        .outOfGamut=${cloth?.inScreenGamut === false}
        .label=${cloth ? `The colour as stated, on the screen ${cloth.hex}` : 'No colour stated yet'}
      ></tg-swatch>
      ${inner}
    </div>`;
  }

  /** A colour can be taken from a photo, a file of measurements, a cloth or by eye: what is picked is written into the fields above. */
  #otherWays(path: ValuePath) {
    const at = idOf(path);
    return html`<details class="ways" @toggle=${this.#waysOpened}>
        <summary class="more">From a photo, a spectrum, a cloth of the notebook, or by eye</summary>
        <tg-colour-input
          label="The colour"
          .cloths=${this.cloths}
          @tg-colour-pick=${({ detail }: ColourPickEvent) => void this.#picked(path, detail)}
        ></tg-colour-input>
      </details>
      ${this.colourFault?.at === at ? html`<p class="fault" role="alert">${this.colourFault.says}</p>` : nothing}`;
  }

  #placed(field: FieldView, problems: PlacedProblems) {
    const isWide = field.is === 'group' || field.list || LONG.has(field.key);
    return html`<div class=${isWide ? 'wide' : ''}>${this.#field(field, problems)}</div>`;
  }

  #rowTools(field: FieldView, item: ItemView) {
    const name = itemSummary(item, this.choices) || field.oneMore;
    return html`${
        field.list
          ? html`<button type="button" aria-label=${`Duplicate ${name}`} @click=${() => this.#duplicate(field, item)}>Duplicate</button>`
          : nothing
      } <button type="button" aria-label=${`Remove ${name}`} @click=${() => this.#drop(item.path)}>Remove</button>`;
  }

  #body({ body, kind }: FormView) {
    return html`<div class="field body">
      <label for="f-body">${kind === 'plain' ? 'Words' : 'In words'}</label>
      <textarea
        id="f-body"
        spellcheck="true"
        rows="8"
        aria-describedby="f-body-hint"
        .value=${shownBody(body)}
        @change=${this.#bodyChanged}
      ></textarea>
      <p class="hint" id="f-body-hint">Markdown: *emphasis*, [words](../recipes/a-note.md) for a link.</p>
    </div>`;
  }

  #kept({ kept }: FormView) {
    if (kept.length === 0) return nothing;
    return html`<section part="kept">
      <h2>Kept as they are</h2>
      <p class="hint">No form knows these keys. They stay in the note, untouched.</p>
      <dl>
        ${kept.map(
          ({ key, text }) =>
            html`<dt>${key}</dt>
              <dd>${text}</dd>`,
        )}
      </dl>
    </section>`;
  }

  #fault({ severity, says, instead }: ProblemView) {
    return html`<p class="fault" data-severity=${severity}>
      <strong>${severity === 'error' ? 'Error' : 'Look at'}</strong>: ${says} ${instead}
    </p>`;
  }

  #completions(field: FieldView): readonly Completion[] {
    return this.choices ? completionsOf(field, this.choices) : [];
  }

  #listFor(field: FieldView): string | undefined {
    const id = `list-${field.is}-${field.is === 'text' ? field.key : field.kinds.join('-')}`;
    if (!this.#lists.has(id)) {
      const completions = this.#completions(field);
      if (completions.length === 0) return undefined;
      this.#lists.set(id, completions);
    }
    return id;
  }

  #typing(path: ValuePath, text: string) {
    this.typed = new Map(this.typed).set(idOf(path), text);
  }

  #typed(field: FieldView, path: ValuePath, text: string, isRow: boolean, alone: string | undefined) {
    const value = fieldValue(field.is, text, isRow);
    const typed = new Map(this.typed);
    typed.delete(idOf(path));
    this.typed = typed;
    const listKey = idOf(path.slice(0, -1));
    if (this.adding.has(listKey)) this.adding = without(this.adding, listKey);
    if (value === undefined) {
      if (alone === undefined && path.length > 0) this.#drop(path);
      return;
    }
    if (alone !== undefined && typeof value === 'string') this.#set(path.slice(0, -1), [alone, value]);
    else this.#set(path, value);
    this.#keepOpen(path);
  }

  /** A group that was being added is there once one of its values is: it stays open under its own path. */
  #keepOpen(path: ValuePath) {
    for (let length = 1; length < path.length; length += 1) {
      const key = idOf(path.slice(0, length));
      const holder = idOf(path.slice(0, length - 1));
      this.open = new Set([...this.open, key]);
      if (typeof path[length - 1] === 'number') this.adding = without(this.adding, holder);
      else this.adding = without(this.adding, key);
    }
  }

  #add(field: FieldView) {
    const key = idOf(field.path);
    this.adding = new Set([...this.adding, key]);
    void this.updateComplete.then(() => {
      const first = field.blank();
      const target = first.fields[0]?.path ?? first.path;
      this.renderRoot.querySelector<HTMLElement>(`#${CSS.escape(idOf(target))}`)?.focus();
    });
  }

  #duplicate(field: FieldView, item: ItemView) {
    const at = field.items.length;
    const value = itemValue(item);
    if (value === undefined) return;
    this.#set([...field.path, at], value);
    this.open = new Set([...this.open, idOf([...field.path, at])]);
  }

  #toggled(event: Event, key: string) {
    // Opening a group inside another bubbles no further than the group itself.
    if (event.target !== event.currentTarget) return;
    const { open } = event.currentTarget as HTMLDetailsElement;
    if (open === this.open.has(key)) return;
    this.open = open ? new Set([...this.open, key]) : without(this.open, key);
    if (!open) this.adding = without(this.adding, key.replace(/-\d+$/, ''));
  }

  readonly #waysOpened = (event: Event) => {
    event.stopPropagation();
    if (!(event.currentTarget as HTMLDetailsElement).open) return;
    void import('../colour-input/tg-colour-input.ts');
    if (this.engine && this.cloths.length === 0) this.#choosing.run(this.engine.choices());
  };

  /** The file a colour came from goes with the note, and then the colour is written with what is named of it. */
  async #picked(path: ValuePath, { text, by, photo, spectrum }: PickedColour) {
    const cloth = this.cloths.find(({ id }) => id === text);
    const [photoFile, spectrumFile] = await Promise.all([attached('photos', photo), attached('spectra', spectrum?.file)]);
    for (const file of [photoFile, spectrumFile]) if (file) this.dispatchEvent(new DraftEditEvent({ is: 'file', file }));
    const colour = cloth
      ? clothColour(cloth.lab)
      : {
          text,
          ...(by && { by }),
          ...(photoFile && { photo: photoFile.path }),
          ...(spectrumFile && spectrum && { spectrum: { file: spectrumFile.path, sample: spectrum.sample } }),
        };
    const written = withPickedColour(this.text, path, colour, this.path);
    const at = idOf(path);
    this.colourFault = written.ok ? undefined : { at, says: pickedColourWords(written.error, text) };
    if (!written.ok) return;
    this.dispatchEvent(new DraftEditEvent({ is: 'text', text: written.value, label: `colour ${at} ${written.value.length}` }));
    this.#keepOpen([...path, 'lab']);
  }

  readonly #bodyChanged = (event: Event) => {
    const { bodyStart, body } = formView(this.text);
    const blank = /^[\r\n]*/.exec(body)?.[0] ?? '';
    const start = bodyStart + blank.length;
    const change = changeBetween(shownBody(body), valueOf(event));
    if (!change) return;
    const text = this.text.slice(0, start) + withChanges(this.text.slice(start), [change]);
    this.dispatchEvent(new DraftEditEvent({ is: 'text', text, label: `body ${text.length}` }));
  };

  #set(path: ValuePath, value: Parameters<typeof setEdit>[1]) {
    this.dispatchEvent(new DraftEditEvent(setEdit(path, value)));
  }

  #drop(path: ValuePath) {
    this.dispatchEvent(new DraftEditEvent({ is: 'remove', path }));
  }
}

/** A picked file as the notebook keeps it. */
async function attached(folder: 'photos' | 'spectra', file: File | undefined): Promise<NotebookFile | undefined> {
  if (!file) return undefined;
  const bytes = new Uint8Array(await file.arrayBuffer());
  return { path: attachedPath(folder, file, bytes), bytes };
}

/** Fields that a large group always shows. */
const USUAL = new Set(['availability known-by', 'availability sure', 'availability source', 'availability note']);
/** A group with no more fields than this shows them all (our choice: what fits without scrolling). */
const SMALL_GROUP = 10;

const valueOf = (event: Event): string => (event.target as HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement).value;

/** The body as its field shows it: the blank lines under the front matter stay out of it. */
const shownBody = (body: string): string => withPlainEndings(body).replace(/^\n+/, '');

const without = (set: ReadonlySet<string>, one: string): ReadonlySet<string> => new Set([...set].filter((each) => each !== one));

type Settable = Extract<DraftEditEvent['detail'], { is: 'set' }>['value'];
const setEdit = (path: ValuePath, value: Settable) => ({ is: 'set', path, value }) as const;

const datalist = (id: string, completions: readonly Completion[]) =>
  html`<datalist id=${id}>${completions.map(({ value, label }) => html`<option value=${value}>${label}</option>`)}</datalist>`;

declare global {
  interface HTMLElementTagNameMap {
    'tg-note-form': TgNoteForm;
  }
}
