import type { Diagnostic, DiagnosticCode } from '../../domain/diagnostic.ts';

/** What a finding says to its reader: what is wrong, and what to write instead. */
export interface DiagnosticWords {
  readonly says: string;
  readonly instead: string;
}

type Words = (about: readonly string[]) => DiagnosticWords;

/** A word as the note has it. */
const quoted = (text: string | undefined): string => `“${text === undefined || text === '' ? 'nothing' : shortened(text)}”`;

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 57).trimEnd()}…` : text);

/** `“a”, “b” or “c”`. */
const oneOf = (words: readonly string[]): string =>
  words.length < 2 ? words.map(quoted).join('') : `${words.slice(0, -1).map(quoted).join(', ')} or ${quoted(words.at(-1))}`;

const suggest = (words: readonly string[], otherwise: string): string => (words.length > 0 ? `Write ${oneOf(words)}.` : otherwise);

/** Forms by the words people use for them. */
const FORMS: Readonly<Record<string, string>> = {
  'yes-no': 'true or false',
  word: 'a single word',
  reference: 'the id, title or name of a note',
  citation: 'a citation such as “key, p. 3”',
  date: 'a date such as “c. 1350”',
  amount: 'an amount such as “15 %”',
  mass: 'a mass such as “50 g”',
  hex: 'a code such as "#8A2B2B", in quotes',
  observer: '2 or 10',
  map: 'keys with values, such as “{ key: value }”',
  list: 'a list',
  text: 'text, in quotes if it holds a colon',
  number: 'a number',
  key: 'a plain word as the key',
};

const form = (name: string | undefined): string => inTable(FORMS, name) ?? name ?? 'another value';

/** What a table itself holds; names such as “constructor” come from notes. */
const inTable = <T>(table: Readonly<Record<string, T>>, key: string | undefined): T | undefined =>
  key !== undefined && Object.hasOwn(table, key) ? table[key] : undefined;

/** Found forms, with their article. */
const FOUND: Readonly<Record<string, string>> = {
  map: 'keys and values',
  list: 'a list',
  text: 'text',
  number: 'a number',
  'yes-no': 'true or false',
  nothing: 'nothing',
};

/** The YAML reader's own names for what it stumbled over. */
const YAML_FAULTS: Readonly<Record<string, DiagnosticWords>> = {
  BAD_ALIAS: {
    says: 'A name after * stands here that no & introduces before it.',
    instead: 'Write the value out, or put text that begins with * in quotes.',
  },
  BAD_INDENT: {
    says: 'This line is not indented as the lines around it need.',
    instead: 'Begin keys of one group in the same column, and close every bracket.',
  },
  BAD_SCALAR_START: { says: 'A value cannot begin with this character.', instead: 'Put the value in quotes.' },
  BLOCK_AS_IMPLICIT_KEY: {
    says: 'A second colon makes this line read as a key within a key.',
    instead: 'Put a value that holds a colon in quotes.',
  },
  BLOCK_IN_FLOW: {
    says: 'A list or a group on lines of its own cannot stand between brackets.',
    instead: 'Write it with commas inside the brackets.',
  },
  MISSING_CHAR: { says: 'A closing quote, bracket, comma or colon is missing.', instead: 'Add the missing character.' },
  MULTIPLE_DOCS: { says: 'The front matter ends before its fence.', instead: 'Take out the line that ends it, such as “...”.' },
  TAG_RESOLVE_FAILED: {
    says: 'A tag with an exclamation mark stands here that means nothing to this notebook.',
    instead: 'Put the value in quotes if the mark belongs to it; otherwise take the tag out.',
  },
};

/** One plain sentence on what is wrong and one on what to write instead, for every code. */
export const diagnosticWords = {
  'file-empty': () => ({ says: 'The file is empty.', instead: 'Write a note in it, or delete it.' }),
  'file-not-utf8': ([offset, byte]) => ({
    says: `The file is not UTF-8: byte ${offset ?? '?'} is ${byte ?? '?'}. It is shown as Latin-1 and cannot be changed here.`,
    instead: 'Ask for its conversion, or save it as UTF-8 in your editor.',
  }),
  'file-too-large': ([length, most, unit]) => ({
    says: `This is too long to be read: ${length ?? '?'} ${unit ?? 'characters'}, where ${most ?? '?'} are the most.`,
    instead: 'Move long text into the body, or part the note in two.',
  }),
  'file-unreadable': ([file]) => ({
    says: `The file ${quoted(file)} could not be opened.`,
    instead: 'Look whether it is still there and whether you may read it.',
  }),
  'file-name-not-utf8': ([file]) => ({
    says: `The name of the file ${quoted(file)} is not UTF-8, so it was not opened.`,
    instead: 'Give it another name.',
  }),
  'file-outside': ([file]) => ({
    says: `${quoted(file)} is a link that leads out of the notebook’s folder, and was not followed.`,
    instead: 'Put a copy in its place.',
  }),
  'file-link-broken': ([file]) => ({
    says: `${quoted(file)} is a link that leads to nothing.`,
    instead: 'Correct the link, or take it out.',
  }),
  'folder-loop': ([folder]) => ({
    says: `The folder ${quoted(folder)} leads back into itself and was not followed.`,
    instead: 'Replace the link by the folder itself.',
  }),
  'yaml-broken': ([fault]) =>
    inTable(YAML_FAULTS, fault) ?? {
      says: 'The front matter cannot be read as YAML from here on.',
      instead: 'Look for a missing quote, bracket, colon or space here or on the line before.',
    },
  'sign-turns-text': ([sign]) => ({
    says: `A sign that cannot be seen (${sign ?? '?'}) turns the order of the letters here, so that the text reads otherwise than it stands.`,
    instead: 'Take the sign out, unless a language written from the right needs it.',
  }),
  'yaml-tab': ([line]) => ({ says: `Line ${line ?? '?'} is indented with a tab.`, instead: 'Indent with spaces.' }),
  'yaml-key-twice': ([key]) => ({
    says: `The key ${quoted(key)} stands here for the second time; the first one counts.`,
    instead: 'Keep one of the two, or make the values a list.',
  }),
  'yaml-too-deep': () => ({
    says: 'The front matter is nested too deeply to be read.',
    instead: 'Use fewer lists and groups within one another.',
  }),
  'yaml-alias-bomb': ([anchor]) => ({
    says: `Repeating ${quoted(anchor)} with * would make the note grow beyond measure; no such repeat was followed.`,
    instead: 'Write the values out.',
  }),
  'front-matter-open': () => ({
    says: 'The front matter begins here and never ends, so all of the file was read as body.',
    instead: 'Put a line with three hyphens after the last key.',
  }),
  'front-matter-not-map': () => ({ says: 'The front matter holds no keys.', instead: 'Write lines such as “kind: dyestuff”.' }),
  'kind-missing': () => ({
    says: 'The note does not say its kind, so only its text can be searched.',
    instead: 'Add a line such as “kind: dyestuff”.',
  }),
  'kind-unknown': ([kind, , ...near]) => ({
    says: `There is no kind of note called ${quoted(kind)}.`,
    instead: suggest(near, 'Write a kind such as “dyestuff”, “recipe”, “trial” or “textile”.'),
  }),
  'key-unknown': ([key, owner, ...near]) => ({
    says: `The key ${quoted(key)} is not known in ${quoted(owner)}; it is kept and not read.`,
    instead: suggest(near, 'Move it into the body, or leave it as it is.'),
  }),
  'key-missing': ([key, owner]) => ({
    says: `${quoted(owner)} has no ${quoted(key)}.`,
    instead: `Add a line that begins with “${key ?? ''}:”.`,
  }),
  'type-wrong': ([found, key, wanted]) => ({
    says: `${quoted(key)} holds ${inTable(FOUND, found) ?? found ?? 'something else'}, which cannot be read there.`,
    instead: `Write ${form(wanted)}.`,
  }),
  'word-unknown': ([word, key, ...near]) => ({
    says: `${quoted(word)} is not one of the words for ${quoted(key)}.`,
    instead: suggest(near, 'Use one of the words listed for this key.'),
  }),
  'number-out-of-range': ([value, key, least, most]) => ({
    says: `${quoted(value)} is out of range for ${quoted(key)}.`,
    instead: `Write a value from ${least ?? '?'} to ${most ?? '?'}.`,
  }),
  'amount-unreadable': ([amount, , ...near]) => ({
    says: `The amount ${quoted(amount)} could not be read; only its words are kept.`,
    instead: suggest(near, 'Write a number and a unit, such as “15 %”, “3–5 g/L” or “50 g”.'),
  }),
  'colour-unreadable': ([found, , ...near]) =>
    near[0] === 'lab'
      ? {
          says: found === '' ? 'The colour states no value.' : `The colour states more than one value: ${found ?? ''}.`,
          instead: 'Give exactly one of “lab”, “xyz” or “hex”.',
        }
      : {
          says: `The colour ${quoted(found)} could not be read.`,
          instead: near[0] === undefined ? 'Write three or six hexadecimal digits after #, in quotes.' : `Write ${near[0]}, in quotes.`,
        },
  'colour-conditions-missing': (missing) => ({
    says: `The colour does not say its ${missing.join(' and ')}.`,
    instead: 'Add what the instrument used, such as “illuminant: D65, observer: 10”.',
  }),
  'source-missing': ([kind]) => ({
    says: `This ${kind ?? 'note'} names no source.`,
    instead: 'Add “source: key, page”, or “invented: true” for a demonstration.',
  }),
  'thread-untested': (dyes) => ({
    says: `The thread was not tested, yet dyes are named: ${dyes.join(', ')}.`,
    instead: 'Write “tested: found”, or move the guess into the body.',
  }),
  'date-unreadable': ([date, ...near]) => ({
    says: `${quoted(date)} is no date that can be read, nor a period of this notebook.`,
    instead: suggest(near, 'Write a date such as “c. 1350” or “late 9th century”.'),
  }),
  'date-ambiguous': ([date, ...near]) => ({
    says: `${quoted(date)} can be read in two ways.`,
    instead: suggest(near, 'Write out which one is meant.'),
  }),
  'date-reversed': ([date, ...near]) => ({
    says: `${quoted(date)} ends before it begins.`,
    instead: suggest(near, 'Write the earlier year first.'),
  }),
  'date-impossible': ([date, ...near]) => ({
    says: `${quoted(date)} is no day or year of the calendar.`,
    instead: suggest(near, 'Write the year alone.'),
  }),
  'id-clash': ([id, file = '', own = '']) => {
    const isSpelling = file !== own && file.normalize('NFC') === own.normalize('NFC');
    const otherwise = isSpelling ? ', a file whose name is the same to the eye: its accents are stored in another way' : '';
    return {
      says: `The id ${quoted(id)} also belongs to ${quoted(file)}${otherwise}.`,
      instead: 'Rename one of the files, or give one of them another “id”.',
    };
  },
  'reference-unknown': ([name, kind, ...near]) => ({
    says: `No ${kind === undefined || kind === '' ? 'note' : kind} is called ${quoted(name)}.`,
    instead: suggest(near, 'Write a note for it, or correct the name.'),
  }),
  'reference-wrong-kind': ([name, found, wanted]) => ({
    says: `${quoted(name)} is a ${found ?? 'note of another kind'}.`,
    instead: `Name a note of the kind ${wanted ?? 'asked for'}.`,
  }),
  'reference-loop': ([id]) => ({ says: `${quoted(id)} leads back to itself.`, instead: 'Take out the reference that closes the circle.' }),
  'name-ambiguous': ([name, ...ids]) => ({
    says: `${quoted(name)} is the name of more than one note.`,
    instead: suggest(ids, 'Write the id.'),
  }),
  'region-unknown': ([name, ...near]) => ({
    says: `There is no region called ${quoted(name)}.`,
    instead: suggest(near, 'Write a note for the region, or correct the name.'),
  }),
  'region-loop': ([id]) => ({
    says: `The region ${quoted(id)} lies within itself; it is taken to lie directly under the world.`,
    instead: 'Correct “within”.',
  }),
  'source-unknown': ([key]) => ({ says: `The bibliography has no entry ${quoted(key)}.`, instead: 'Add the entry, or correct the key.' }),
  'claim-takes-no-part': (lacks) => ({
    says: `This claim takes no part in any answer: its ${lacks.join(' and ') || 'place or date'} cannot be read.`,
    instead: 'Give a region and a date that can be read.',
  }),
  'material-unrecorded': ([material]) => ({
    says: `Nothing in the notes says where and when ${quoted(material)} was to hand, so every answer with this recipe hangs on it.`,
    instead: 'Give it a note with an “availability”, or “everyday: true” if it needs no evidence.',
  }),
  'absence-not-evidence': ([knownBy]) => ({
    says:
      knownBy === 'law'
        ? 'A ban does not show that something was absent; often it shows the opposite.'
        : 'An analysis that finds nothing does not show that something was absent.',
    instead: knownBy === 'law' ? 'Write the ban as a note of the kind “rule”.' : 'Write “tested: none-detected” on the thread instead.',
  }),
  'link-broken': ([path]) => ({
    says: `The link leads to ${quoted(path)}, which is not in the notebook.`,
    instead: 'Correct the path, or add the file.',
  }),
  'spectrum-missing': ([file]) => ({
    says: `The spectral file ${quoted(file)} is not in the notebook.`,
    instead: 'Correct the path, or add the file.',
  }),
  'dosing-refused': ([material]) => ({
    says: `Amounts of ${quoted(material)} are not given here: it is named as history only.`,
    instead: 'Take the amount out, or choose a stand-in.',
  }),
  'id-mixes-letters': ([id, letter]) => ({
    says: `The id ${quoted(id)} mixes alphabets: ${quoted(letter)} is not the Latin letter that it looks like.`,
    instead: 'Write it with letters of one alphabet, or it will not be found.',
  }),
  'review-overdue': ([date]) => ({
    says: `This note was to be looked at again by ${quoted(date)}.`,
    instead: 'Check it, then give a new “review-by”.',
  }),
} satisfies Record<DiagnosticCode, Words>;

/** The words for one finding; what a note has in abundance is shortened. */
export const wordsFor = ({ code, about }: Pick<Diagnostic, 'code' | 'about'>): DiagnosticWords =>
  (diagnosticWords[code] satisfies Words as Words)(about.map(shortened));
