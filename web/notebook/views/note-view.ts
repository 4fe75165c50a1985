import { evidenceClassOf } from '../../domain/claim/evidence-class.ts';
import type { Claim } from '../../domain/claim/claim.ts';
import type { Citation, Note, NoteKind } from '../../domain/note/note.ts';
import { type BibliographyEntry, shortEntry } from '../bibliography.ts';
import { noteFindings } from '../check-notebook.ts';
import { withoutDoses } from '../../domain/pot/without-doses.ts';
import type { Notebook } from '../notebook.ts';
import { sourceText, titleOf } from '../words/claim-line.ts';
import { checkedWords, kindWords } from '../words/kind-words.ts';
import { classWords, knownByWords, statusWords } from '../words/verdict-words.ts';
import { type BodyBlock, bodyView } from './body-view.ts';
import { type LabLink, labLinks } from './lab-links.ts';
import type { Line } from './line.ts';
import { linkedFrom, linkedTo } from './linked-notes.ts';
import { NoteWords } from './note-words.ts';
import { type ProblemView, problemViews } from './problem-view.ts';
import { type NoteRow, type NoteSection, recordView } from './record-view.ts';

/** A source as a reader meets it. */
export interface SourceView {
  readonly key: string;
  readonly locator: string;
  /** "Cardon 2007, Natural Dyes"; '' when no bibliography has the key. */
  readonly entry: string;
  readonly within: string;
  readonly address?: string;
}

/** A claim as one note makes it: nothing is judged. */
export interface NoteClaimView {
  /** `note#nth`. */
  readonly key: string;
  readonly about: Line;
  readonly says: string;
  readonly region: Line;
  readonly when: Line;
  readonly evidence: string;
  /** "doubtful", "for painting", "on wool": whatever narrows the claim. */
  readonly narrowed: readonly string[];
  readonly source: string;
  readonly checked: string;
  readonly remark: string;
}

/** A note named beside another. */
export interface LinkedNote {
  readonly id: string;
  readonly title: string;
  readonly kindWord: string;
}

/** A note as plain values for reading. */
export interface NoteView {
  readonly id: string;
  readonly file: string;
  readonly kind: NoteKind;
  readonly kindWord: string;
  readonly title: string;
  readonly latin: readonly string[];
  readonly names: readonly { readonly name: string; readonly lang?: string }[];
  readonly tags: readonly string[];
  readonly rows: readonly NoteRow[];
  readonly sections: readonly NoteSection[];
  readonly cautions: readonly string[];
  readonly body: readonly BodyBlock[];
  readonly claims: readonly NoteClaimView[];
  readonly sources: readonly SourceView[];
  readonly checked: string;
  readonly reviewBy: Line;
  readonly invented: boolean;
  /** True where the file may not be written back until it is converted. */
  readonly readOnly: boolean;
  readonly problems: readonly ProblemView[];
  readonly linksTo: readonly LinkedNote[];
  readonly linksFrom: readonly LinkedNote[];
  /** Ways to the laboratory's page; of a textile only. */
  readonly laboratory: readonly LabLink[];
}

/** A note for reading; undefined when the notebook has none of that id. */
export function noteView(notebook: Notebook, id: string): NoteView | undefined {
  const { base } = notebook;
  const note = base.note(id);
  if (!note) return undefined;
  const say = new NoteWords(base);
  const bibliography = notebook.bibliography();
  return {
    id: note.id,
    file: note.file,
    kind: note.record.kind,
    kindWord: kindWords[note.record.kind].one,
    title: titleOf(base, note.id),
    latin: 'latin' in note.record ? note.record.latin : [],
    names: note.names,
    tags: note.tags,
    ...recordView(notebook, note),
    body: bodyView(undosed(base, note), {
      noteAt: (path) => base.noteIn(path)?.id,
      hasFile: (path) => notebook.hasFile(path),
    }),
    claims: base.claimsIn(note.file).map((claim) => claimView(notebook, claim)),
    sources: note.sources.map((citation) => sourceView(citation, bibliography)),
    checked: note.checked ? checkedWords[note.checked] : '',
    reviewBy: say.date(note.reviewBy),
    invented: note.invented,
    readOnly: notebook.isReadOnly(note.file),
    problems: problemViews(note.source, noteFindings(notebook, note.file)),
    linksTo: linkedFrom(base, note)
      .map((linked) => base.note(linked))
      .filter((linked) => linked !== undefined)
      .map((linked) => linkedNote(base, linked)),
    linksFrom: linkedTo(base, note).map((linked) => linkedNote(base, linked)),
    laboratory: note.record.kind === 'textile' ? labLinks(note.record) : [],
  };
}

/** The note with a body that doses nothing of what is never dosed: paragraph by paragraph, tables row by row. */
function undosed(base: Notebook['base'], note: Note): Note {
  const body = note.source.slice(note.bodyStart);
  const parts = body.split(/(\r?\n[ \t]*\r?\n|\r?\n(?=[ \t]*\|))/).map((part) => withoutDoses(base, part));
  const plain = parts.join('');
  return plain === body ? note : { ...note, source: note.source.slice(0, note.bodyStart) + plain };
}

const linkedNote = (base: Notebook['base'], { id, record }: Note): LinkedNote => ({
  id,
  title: titleOf(base, id),
  kindWord: kindWords[record.kind].one,
});

function sourceView({ key, locator }: Citation, bibliography: ReadonlyMap<string, BibliographyEntry>): SourceView {
  const entry = bibliography.get(key);
  return {
    key,
    locator: locator ?? '',
    entry: entry ? shortEntry(entry) : '',
    within: entry?.within ?? '',
    ...(entry?.address === undefined ? {} : { address: entry.address }),
  };
}

function claimView(notebook: Notebook, claim: Claim): NoteClaimView {
  const { base } = notebook;
  const say = new NoteWords(base);
  const isOnCloth = claim.status === 'on-cloth';
  return {
    key: `${claim.note}#${claim.nth}`,
    about: isOnCloth
      ? say.ref({ text: claim.about, range: claim.range }, ['dyestuff'])
      : claim.undyed === undefined
        ? []
        : [{ text: claim.undyed }],
    says: statusWords[claim.status],
    region: say.region(claim.region),
    when: say.date(claim.when),
    evidence: claim.knownBy ? `${classWords[evidenceClassOf(claim.knownBy)]}: ${knownByWords[claim.knownBy]}` : 'evidence not stated',
    narrowed: narrowings(notebook, claim),
    source: sourceText(claim.sources) || 'no source given',
    checked: claim.checked ? checkedWords[claim.checked] : '',
    remark: claim.remark ?? '',
  };
}

function narrowings({ base }: Notebook, claim: Claim): readonly string[] {
  const titles = (refs: Claim['on'], kind: NoteKind) =>
    refs.map(({ text }) => titleOf(base, base.resolve(text, [kind])).toLowerCase()).join(', ');
  return [
    claim.sure === 'yes' ? '' : claim.sure,
    claim.use === 'dyeing' ? '' : claim.use === 'not-said' ? 'use not said' : `for ${claim.use}`,
    claim.extent === undefined ? '' : claim.extent === 'whole' ? 'all over it' : 'somewhere in it',
    claim.on.length === 0 || claim.status === 'on-cloth' ? '' : `on ${titles(claim.on, 'fibre')}`,
    claim.wearers.length === 0 ? '' : `for ${titles(claim.wearers, 'wearer')}`,
    claim.usual === undefined ? '' : claim.usual.replaceAll('-', ' '),
    claim.startKnown ? 'its beginning is known' : '',
    claim.endKnown ? 'its end is known' : '',
    claim.reason === undefined ? '' : claim.reason.replaceAll('-', ' '),
    claim.price === undefined ? '' : `price: ${claim.price}`,
    claim.restsOn === undefined ? '' : `rests on ${claim.restsOn.key}`,
  ].filter((part) => part !== '');
}
