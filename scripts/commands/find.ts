import { type EvidenceBase, MATERIAL_KINDS } from '../../web/domain/claim/evidence-base.ts';
import { whereNamed } from '../../web/domain/naming/where-named.ts';
import type { Note } from '../../web/domain/note/note.ts';
import { type FoundGroup, findNotes, materialsMeant } from '../../web/notebook/find-notes.ts';
import type { Notebook } from '../../web/notebook/notebook.ts';
import { titleOf } from '../../web/notebook/words/claim-line.ts';
import { readingWords, whyCompound, whyFound, whyNamed } from '../../web/notebook/words/naming-words.ts';
import { noteDocument } from '../../web/search/note-documents.ts';
import { NoteSearch } from '../../web/search/note-search.ts';
import { type Command, openFolder, readArgs, tellProblems, wrap } from './command.ts';

/** Which list a note belongs to. */
type Group = FoundGroup | 'certain';

/** One line of the answer; `id`, `kind`, `title`, `why` are stable API. */
interface FoundRow {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly why: string;
  readonly group: Group;
  readonly file: string;
}

/** `tenterground find FOLDER WORDS… | --dye ID [--json]`: notes, and why each is there. */
export const find: Command = async (args) => {
  const read = readArgs(args, { dye: { type: 'string' }, json: { type: 'boolean' } });
  if (!read) return 2;
  const [folder, ...rest] = read.words;
  const words = rest.join(' ').trim();
  const dye = typeof read.values['dye'] === 'string' ? read.values['dye'] : undefined;
  const opened = await openFolder(folder);
  if (!opened) return 2;
  if ((dye === undefined) === (words === '')) {
    console.error('Give the words to find, or --dye with a dyestuff: tenterground find FOLDER WORDS… | --dye ID');
    return 2;
  }
  const { notebook } = opened;
  const rows = dye === undefined ? findWords(notebook, words) : findDye(notebook.base, dye);
  if (!rows) return 2;
  if (read.values['json'] === true) console.log(JSON.stringify(rows, undefined, 2));
  else console.log(asText(notebook.base, rows, words));
  return 0;
};

/** Every note that names a dyestuff or other material; undefined after saying that it is not known. */
function findDye(base: EvidenceBase, typed: string): readonly FoundRow[] | undefined {
  const found = base.find(typed, ['dyestuff']);
  const any = found.is === 'none' ? base.find(typed, MATERIAL_KINDS) : found;
  if (any.is === 'one') return whereNamed(base, any.id).map((named) => rowOf(base, named.note, named.reading, whyNamed(base, named)));
  const nearest = any.is === 'several' ? any.ids : any.nearest;
  tellProblems([{ part: 'dye', problem: any.is === 'several' ? 'ambiguous' : 'unknown', typed, nearest }]);
  return undefined;
}

/** Full text; and where the words are a dyestuff's name, the notes that have it under another name. */
function findWords({ base }: Notebook, words: string): readonly FoundRow[] {
  const search = NoteSearch.of(Array.from(base.notes(), (note) => noteDocument(note)));
  return findNotes(base, words, search.query(words))
    .map(({ note, group, hit, named, compound }) =>
      rowOf(base, note, group, compound !== undefined ? whyCompound(compound) : named ? whyNamed(base, named) : whyFound(hit?.why ?? [])),
    )
    .sort((a, b) => GROUPS.indexOf(a.group) - GROUPS.indexOf(b.group));
}

const rowOf = (base: EvidenceBase, note: Note, group: Group, why: string): FoundRow => ({
  id: note.id,
  kind: note.record.kind,
  title: titleOf(base, note.id),
  why,
  group,
  file: note.file,
});

const GROUPS: readonly Group[] = ['words', 'certain', 'other-name', 'ambiguous', 'doubtful', 'ruled-out', 'near'];

const GROUP_WORDS = {
  ...readingWords,
  words: 'With these words, or words that begin so',
  'other-name': 'The same under another name',
  near: 'Near spelling',
} as const satisfies Record<Group, string>;

function asText(base: EvidenceBase, rows: readonly FoundRow[], words: string): string {
  if (rows.length === 0) {
    const near = base.nearestNames(words, ['dyestuff', 'mordant', 'colour-word']).map((id) => titleOf(base, id));
    return `Nothing found.${near.length > 0 ? ` The nearest names: ${near.join(', ')}.` : ''}`;
  }
  const subjects = materialsMeant(base, words).map(({ id }) => titleOf(base, id));
  const shared = subjects.length > 1 ? [`“${words}” may mean ${subjects.join(' or ')}.`, ''] : [];
  const lists = GROUPS.flatMap((group) => {
    const own = rows.filter((row) => row.group === group);
    return own.length === 0 ? [] : [`${GROUP_WORDS[group]} (${own.length})`, ...own.map(rowText), ''];
  });
  return [...shared, ...lists].join('\n').trimEnd();
}

const rowText = ({ id, kind, title, why }: FoundRow): string => `  ${title}  [${kind} ${id}]\n${wrap(why, '      ')}`;
