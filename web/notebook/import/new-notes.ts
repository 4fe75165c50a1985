import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { NoteKind } from '../../domain/note/note.ts';
import { blockYaml, type PlainValue } from '../../domain/note/yaml-text.ts';
import { freeId } from '../lab-note.ts';
import { stemFrom } from '../starters.ts';
import type { DraftNote } from '../lab-note.ts';
import type { GatherCode, PreviewRow, RowMessage } from './gathered.ts';

/** Gathers notes row by row; never gives two the same id, nor one an id or path that the notebook has. */
export class NewNotes {
  readonly rows: PreviewRow[] = [];
  readonly messages: RowMessage[] = [];
  readonly notes: DraftNote[] = [];
  readonly #base: EvidenceBase;
  readonly #folder: string;
  readonly #taken = new Set<string>();
  readonly #paths: Set<string>;

  constructor(base: EvidenceBase, folder: string) {
    this.#base = base;
    this.#folder = folder;
    this.#paths = new Set([...base.notes()].map(({ file }) => file.toLowerCase()));
  }

  tell(row: number, code: GatherCode, about: string, instead: readonly string[] = []): void {
    this.messages.push({ row, code, about, instead });
  }

  /** A row that gives no note. */
  pass(row: number, title: string, cells: PreviewRow['cells'] = []): void {
    this.rows.push({ row, title, cells });
  }

  /** A row that gives a note; an id that is taken gets a number, and the row says so. */
  add(
    row: number,
    title: string,
    front: Readonly<Record<string, PlainValue>>,
    body: string,
    cells: PreviewRow['cells'],
    wanted = '',
  ): void {
    const stem = stemFrom(wanted === '' ? title : wanted, this.#folder.replace(/s$/, ''));
    let id = freeId(this.#base, stem, this.#taken);
    while (this.#paths.has(`${this.#folder}/${id}.md`.toLowerCase())) {
      this.#taken.add(id);
      id = freeId(this.#base, stem, this.#taken);
    }
    const text = `---\n${blockYaml(front, 0, '\n')}\n---\n${body === '' ? '' : `\n${body}\n`}`;
    // The very note is there already: taking the file in twice changes nothing.
    if (id !== stem) {
      const held = this.#base.note(stem);
      if (held?.source === text) {
        this.tell(row, 'same-already', title, [stem]);
        this.pass(row, title, cells);
        return;
      }
      this.tell(row, 'id-taken', stem, [id]);
    }
    this.#taken.add(id);
    const path = `${this.#folder}/${id}.md`;
    this.#paths.add(path.toLowerCase());
    this.notes.push({ id, path, text });
    this.rows.push({ row, title, cells, path });
  }

  /** True for what reads as a date, or is a period of the notebook. */
  isDate(text: string): boolean {
    return this.#base.spanOfText(text) !== undefined;
  }

  /** The id words mean; words nobody knows are kept as they are, and told. */
  known(row: number, text: string, kinds: readonly NoteKind[]): string {
    const found = this.#base.find(text, kinds);
    if (found.is === 'one') return found.id;
    this.tell(row, 'word-unknown', text, found.is === 'several' ? found.ids : found.nearest);
    return text;
  }

  /** The region that words mean; what is unknown or means several is told. */
  region(row: number, text: string): string | undefined {
    const found = this.#base.findRegion(text);
    if (found.is === 'one') return found.id;
    if (found.is === 'several') this.tell(row, 'place-ambiguous', text, found.ids);
    else this.tell(row, 'place-unknown', text, found.nearest);
    return undefined;
  }
}

/** Markdown of somebody else's words: taken as text, never as markup. */
export const asText = (text: string): string => text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&').replace(/^([-+=]|\d+[.)])/gm, '\\$1');
