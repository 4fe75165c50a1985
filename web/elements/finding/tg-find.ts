import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { FindingProgress, TypedFinding } from '../../notebook/ports-finding.ts';
import type { Choice, ChoicesView } from '../../notebook/views/choices-view.ts';
import type { FoundGroupView, FoundNoteView, FoundView } from '../../notebook/views/found-view.ts';
import type { WritingChoices } from '../../notebook/views/writing-choices.ts';
import { noteAddress } from '../note/note-body.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { singleKeysWork } from '../shortcuts/page-choices.ts';
import { shortcutOf, takesLetters } from '../shortcuts/shortcuts.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import { FindRequestEvent } from './find-request-event.ts';
import { addressOfFinding, findingOfSettings, findingProblemSentence, KIND_CHOICES, STANDING_WORDS } from './finding-words.ts';

/**
 * @summary Finds notes as one types: a sentence narrows the list, and the words that answer are marked.
 * @event {FindRequestEvent} tg-find-request - The reader looks for notes.
 * @csspart sentence - What is looked for.
 * @csspart found - The notes, by why they are there.
 */
@customElement('tg-find')
export class TgFind extends LitElement {
  static override styles = [
    baseStyles,
    sentenceStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      .sentence input[type='search'] {
        min-inline-size: 9em;
        appearance: none;
      }
      /* The browser's own mark for emptying it is blue, and Escape does the same. */
      input::-webkit-search-cancel-button {
        appearance: none;
      }
      h2 {
        margin: var(--tg-space-6) 0 var(--tg-space-3);
        padding-block-end: var(--tg-space-2);
        border-block-end: var(--tg-line-1) solid var(--tg-ink);
        font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
      }
      ul {
        max-inline-size: var(--tg-measure);
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        padding-block: var(--tg-space-2);
        border-block-end: var(--tg-line-1) solid var(--tg-hairline);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      .small {
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      li .small {
        overflow-wrap: anywhere;
      }
      .block {
        display: block;
      }
      mark {
        background: none;
        color: var(--tg-ink);
        font-weight: 700;
        text-decoration: underline;
        text-decoration-thickness: 2px;
        text-underline-offset: 0.2em;
      }
      .problem {
        padding-inline-start: var(--tg-space-3);
        border-inline-start: var(--tg-line-3) solid var(--tg-ink);
      }
      p {
        margin: var(--tg-space-3) 0 0;
      }
    `,
  ];

  /** Where the notebook is: it says what the words of the sentence can be. */
  @property({ attribute: false }) engine?: Engine;
  /** The settings of the address. */
  @property({ attribute: false }) settings: Readonly<Record<string, string>> = {};
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private typed: TypedFinding = { words: '' };
  @state() private choices?: ChoicesView;
  @state() private mordants: WritingChoices['sources'] = [];
  @state() private found?: FoundView;
  @state() private progress?: FindingProgress;
  @state() private nobody = false;

  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #naming = new LatestTask<WritingChoices>(({ names }) => (this.mordants = names.mordant ?? []));
  readonly #finding = new LatestTask<FoundView | undefined>((found) => {
    // Overtaken: the later wish brings its own list.
    if (found) this.found = found;
    this.progress = undefined;
  });

  override willUpdate(changed: PropertyValues<this>) {
    if (changed.has('settings')) this.typed = findingOfSettings(this.settings);
    if (this.engine && (changed.has('engine') || changed.has('version'))) {
      this.#choosing.run(this.engine.choices());
      this.#naming.run(this.engine.writingChoices());
    }
    if (changed.has('settings') || changed.has('version')) this.#find();
  }

  override connectedCallback() {
    super.connectedCallback();
    globalThis.addEventListener('keydown', this.#key);
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    globalThis.removeEventListener('keydown', this.#key);
  }

  /** Who comes with nothing to find yet comes to type it. */
  override firstUpdated() {
    if (Object.values(this.typed).every((part) => part === '' || part === undefined)) this.focus();
  }

  override focus() {
    this.renderRoot.querySelector<HTMLElement>('input[type=search]')?.focus();
  }

  override render() {
    const { typed, choices } = this;
    return html`<form role="search" class="sentence" part="sentence" @submit=${(event: Event) => event.preventDefault()}>
        Find
        <input
          type="search"
          aria-label="Words to find"
          placeholder="words"
          spellcheck="false"
          autocomplete="off"
          .value=${typed.words}
          @input=${(event: Event) => this.#change({ words: valueOf(event) })}
        />
        in ${this.#words('Kind of note', typed.kind, KIND_CHOICES, 'every kind of note', (kind) => ({ kind }))} of
        ${this.#list('Place', typed.region, choices?.regions, 'any place', (region) => ({ region }))} and
        <input
          type="text"
          aria-label="Date"
          placeholder="any date"
          .value=${typed.when ?? ''}
          @change=${(event: Event) => this.#change({ when: valueOf(event) })}
        />, on ${this.#list('Fibre', typed.fibre, choices?.fibres, 'any fibre', (fibre) => ({ fibre }))}, with
        ${this.#words(
          'Mordant',
          typed.mordant,
          this.mordants.map(({ value, label }) => [value, label.toLowerCase()] as const),
          'any mordant or none',
          (mordant) => ({ mordant }),
        )},
        that
        ${this.#words('Standing there and then', typed.standing, Object.entries(STANDING_WORDS), 'stood in any way', (standing) => ({ standing }))}
        there and then.
      </form>
      ${this.#result()}`;
  }

  #result() {
    const { found, progress } = this;
    if (this.nobody) return html`<p role="alert">Nothing here finds notes.</p>`;
    if (progress)
      return html`<p role="status">Taking the notes in: ${progress.done.toLocaleString()} of ${progress.of.toLocaleString()}.</p>`;
    if (!found) return nothing;
    const isAsked = Object.values(this.typed).some((part) => part !== '' && part !== undefined);
    return html`${found.problems.map((problem) => html`<p class="problem" role="alert">${findingProblemSentence(problem)}</p>`)}
      <p class="small" role="status">${isAsked ? this.#counted(found) : ''}</p>
      ${found.named.map(
        ({ id, title, isDyestuff }) =>
          html`<p>
            ${title} is a name known here:
            <a href=${isDyestuff ? `#/dyestuffs/${encodeURIComponent(id)}` : noteAddress(id)}>everything on ${title.toLowerCase()}</a>
          </p>`,
      )}
      <div part="found">${found.groups.map((group) => this.#group(group))}</div>`;
  }

  #counted({ count }: FoundView): string {
    if (count === 0) return 'No note answers. Fewer words, or a wider sentence, find more.';
    return count === 1 ? '1 note' : `${count.toLocaleString()} notes`;
  }

  #group({ title, notes, more }: FoundGroupView) {
    return html`<section>
      <h2>${title}</h2>
      <ul>
        ${notes.map((note) => this.#note(note))}
      </ul>
      ${more === 0 ? nothing : html`<p class="small">${more.toLocaleString()} more: one word more, or a narrower sentence, brings them nearer.</p>`}
    </section>`;
  }

  #note({ id, marked, kindWord, why, places }: FoundNoteView) {
    return html`<li>
      <a href=${noteAddress(id)}>${marked.map(({ text, isMarked }) => (isMarked ? html`<mark>${text}</mark>` : text))}</a>
      <span class="small">${kindWord.toLowerCase()}</span>
      ${why === '' ? nothing : html`<span class="small block">${why}</span>`}
      ${places.map(({ line, before, found, after }) => html`<span class="small block">line ${line}: ${before}<mark>${found}</mark>${after}</span>`)}
    </li>`;
  }

  #list(
    label: string,
    chosen: string | undefined,
    list: readonly Choice[] | undefined,
    none: string,
    change: (id: string | undefined) => Partial<TypedFinding>,
  ) {
    return html`<select aria-label=${label} @change=${(event: Event) => this.#change(change(valueOf(event)))}>
      <option value="" ?selected=${chosen === undefined || chosen === ''}>${none}</option>
      ${list?.map(({ id, title, depth }) => html`<option value=${id} ?selected=${id === chosen}>${'\u2003'.repeat(depth)}${title}</option>`)}
    </select>`;
  }

  #words(
    label: string,
    chosen: string | undefined,
    words: readonly (readonly [string, string])[],
    none: string,
    change: (word: string | undefined) => Partial<TypedFinding>,
  ) {
    return html`<select aria-label=${label} @change=${(event: Event) => this.#change(change(valueOf(event)))}>
      <option value="" ?selected=${chosen === undefined || chosen === ''}>${none}</option>
      ${words.map(([word, text]) => html`<option value=${word} ?selected=${word === chosen}>${text}</option>`)}
    </select>`;
  }

  readonly #key = (event: KeyboardEvent) => {
    if (shortcutOf(event) !== 'find' || !singleKeysWork() || event.composedPath().some(takesLetters)) return;
    event.preventDefault();
    this.focus();
  };

  #change(change: Partial<TypedFinding>) {
    this.typed = { ...this.typed, ...change };
    // Letters typed replace the address, so that going back leads to where the reader was before.
    globalThis.history.replaceState(undefined, '', addressOfFinding(this.typed));
    this.#find();
  }

  #find() {
    const onProgress = (progress: FindingProgress) => (this.progress = progress);
    const request = new FindRequestEvent({ typed: this.typed, onProgress });
    this.dispatchEvent(request);
    this.nobody = request.answer === undefined;
    if (request.answer) this.#finding.run(request.answer);
  }
}

const valueOf = (event: Event): string => (event.target as HTMLInputElement | HTMLSelectElement).value;

declare global {
  interface HTMLElementTagNameMap {
    'tg-find': TgFind;
  }
}
