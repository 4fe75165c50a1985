import { isScalar } from 'yaml';
import type { Node } from 'yaml';
import type { Diagnostic, Reading, Report, TextRange } from '../diagnostic.ts';
import { nearestNames } from '../text/nearest-names.ts';
import { entriesOf, readKeys, tellUnknownKeys } from './group-shape.ts';
import type { Entries } from './group-shape.ts';
import { COMMON_KEYS, keysOf } from './note-keys.ts';
import { NOTE_KINDS, noteId } from './note.ts';
import type { AvailabilityEntry, Note, NoteKind, NoteRecord } from './note.ts';
import { readYaml } from './read-yaml.ts';
import { stemOf } from './stem-of.ts';
import { recordOf } from './record-of.ts';
import { wordsOf } from './shape.ts';
import type { ReadContext } from './shape.ts';
import { splitFrontMatter } from './split-front-matter.ts';

/**
 * Reads one note. Always gives a note; what could not be read is told beside it.
 *
 * @param file path inside the notebook's folder, `/` between parts.
 * @param text the whole file, byte order mark included.
 * @returns the note with `source` equal to `text`; findings in the order of the text, ranges in UTF-16 code units of `text`.
 * @error every code under "the file", "front matter", "keys and values" and "dates" that one note alone can show.
 */
export function parseNote(file: string, text: string): Reading<Note> {
  const diagnostics: Diagnostic[] = [];
  let broken = false;
  // Where the YAML is broken, keys seem to be missing or strange that are not.
  const report: Report = (found) => {
    if (!(broken && (found.code === 'key-missing' || found.code === 'key-unknown' || found.code === 'source-missing')))
      diagnostics.push(found);
  };
  if (text.replace('\uFEFF', '').trim() === '') report({ code: 'file-empty', severity: 'warning', range: [0, text.length], about: [] });
  tellTurned(text, report);
  const { yaml, bodyStart } = splitFrontMatter(text, report);
  const body = text.slice(bodyStart, bodyStart + FIRST_PART);
  const stem = stemOf(file);
  const tree = yaml && readYaml(text, yaml, report);
  if (!tree?.map) {
    if (tree && !tree.broken) report({ code: 'kind-missing', severity: 'warning', range: yaml ?? [0, 0], about: [] });
    return { value: plainNote(file, text, bodyStart, headingOf(body) ?? stem), diagnostics: inOrder(diagnostics) };
  }
  broken = tree.broken;
  const context: ReadContext = { range: tree.range, resolve: tree.resolve, report };
  const entries = entriesOf(tree.map, context);
  const whole = tree.range(tree.map);
  const { kind, at } = kindOf(entries, whole, context);
  const values = readKeys(COMMON_KEYS, entries, kind ?? 'plain', at, context);
  const record = recordOf(kind ?? 'plain', entries, whole, context);
  if (kind !== undefined) tellUnknownKeys(entries, keysOf(kind), kind, context);
  const sources = [...values.source, ...values.sources];
  const note: Note = {
    id: noteId(values.id ?? stem),
    file,
    title: values.title ?? headingOf(body) ?? stem,
    names: values.names,
    tags: values.tags,
    sources,
    checked: values.checked,
    reviewBy: values['review-by'],
    invented: values.invented,
    private: values.private,
    record,
    source: text,
    bodyStart,
  };
  tellMixed(note.id, context.range(entries.get('id')?.value ?? tree.map), report);
  if (sources.length === 0) tellSourceless(record, at, values.invented, report);
  return { value: note, diagnostics: inOrder(diagnostics) };
}

/** Code units of the body looked through for a heading. */
const FIRST_PART = 4000;

/**
 * The first sign that turns the order of letters without being seen.
 *
 * @source Unicode 15.0, UAX 9: embeddings, overrides and isolates.
 */
function tellTurned(text: string, report: Report): void {
  const at = text.search(/[\u202A-\u202E\u2066-\u2069]/);
  const sign = `U+${text.charCodeAt(at).toString(16).toUpperCase()}`;
  if (at >= 0) report({ code: 'sign-turns-text', severity: 'warning', range: [at, at + 1], about: [sign] });
}

/** An id of Latin letters with a Cyrillic or Greek one among them looks like another id than it is. */
function tellMixed(id: string, range: TextRange, report: Report): void {
  const [other] = /\p{Script=Latin}/u.test(id) ? (/[\p{Script=Cyrillic}\p{Script=Greek}]/u.exec(id) ?? []) : [];
  if (other !== undefined) report({ code: 'id-mixes-letters', severity: 'warning', range, about: [id, other] });
}

const plainNote = (file: string, source: string, bodyStart: number, title: string): Note => ({
  id: noteId(stemOf(file)),
  file,
  title,
  names: [],
  tags: [],
  sources: [],
  invented: false,
  private: false,
  record: { kind: 'plain' },
  source,
  bodyStart,
});

/** The closing signs are taken off in a second step: one pattern for all would go back for every run of spaces. */
function headingOf(body: string): string | undefined {
  const words = /^#[ \t]+(\S[^\r\n]*)$/m.exec(body)?.[1]?.trimEnd() ?? '';
  let end = words.length;
  while (words[end - 1] === '#') end -= 1;
  return words.slice(0, end).trimEnd() || undefined;
}

const inOrder = (found: readonly Diagnostic[]): readonly Diagnostic[] => [...found].sort((a, b) => a.range[0] - b.range[0]);

/** The kind, undefined where it is missing or unknown, and where findings about the whole note stand. */
function kindOf(entries: Entries, whole: TextRange, context: ReadContext): { readonly kind?: NoteKind; readonly at: TextRange } {
  const node: Node | undefined = entries.get('kind')?.value;
  if (node === undefined) {
    context.report({ code: 'kind-missing', severity: 'warning', range: whole, about: [] });
    return { at: whole };
  }
  const at = context.range(node);
  const words = isScalar(node) ? wordsOf(node) : '';
  const kind = [...NOTE_KINDS, 'plain' as const].find((each) => each === words.toLowerCase());
  if (kind !== undefined) return { kind, at };
  context.report({ code: 'kind-unknown', severity: 'error', range: at, about: [words, 'kind', ...nearestNames(words, NOTE_KINDS, 2)] });
  return { at };
}

const EVIDENCE: readonly NoteKind[] = ['textile', 'text', 'colour-word', 'rule'];

/** A claim rests on its own source or else on its note's; evidence rests on its note's. */
function tellSourceless(record: NoteRecord, at: TextRange, invented: boolean, report: Report): void {
  if (EVIDENCE.includes(record.kind) && !invented) report({ code: 'source-missing', severity: 'warning', range: at, about: [record.kind] });
  for (const { sources, range } of claimsIn(record))
    if (sources.length === 0) report({ code: 'key-missing', severity: 'warning', range, about: ['source', 'availability'] });
}

function claimsIn(record: NoteRecord): readonly AvailabilityEntry[] {
  const own = 'availability' in record ? record.availability : [];
  return record.kind === 'fibre' ? [...own, ...record.undyed.flatMap(({ availability }) => availability)] : own;
}
