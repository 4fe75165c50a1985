import { withoutDoses } from '../../domain/pot/without-doses.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { noteId } from '../../domain/note/note.ts';
import { type PaletteColour, paletteOf } from '../../domain/palette/palette.ts';
import { type Verdict, VERDICTS } from '../../domain/verdict/standing-words.ts';
import type { Notebook } from '../notebook.ts';
import { poseCircumstances } from '../pose-question.ts';
import type { TypedPalette } from '../typed-palette.ts';
import { titleOf } from '../words/claim-line.ts';
import { verdictWords } from '../words/verdict-words.ts';
import { clothOf, type PaletteCloth } from './palette-view.ts';

/** One kept colour, judged again. */
export interface KeptColour {
  readonly what: string;
  readonly title: string;
  readonly keptVerdict: string;
  readonly nowVerdict: string;
  readonly changed: boolean;
  /** What changed, or why it cannot be judged any more; empty when it stands as it was kept. */
  readonly says: string;
  readonly note: string;
  readonly cloth?: PaletteCloth;
}

/** A palette note, judged as the notes stand now. */
export interface KeptPaletteView {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly asked: TypedPalette;
  readonly colours: readonly KeptColour[];
  readonly changed: number;
}

/** The palette notes of a notebook. */
export const keptPalettes = ({ base }: Notebook): readonly { readonly id: string; readonly title: string }[] =>
  base.ofKind('palette').map(({ id, title }) => ({ id: String(id), title }));

/** Judges a kept palette again; undefined when there is no palette note of that id. */
export function keptPaletteView(notebook: Notebook, id: string): KeptPaletteView | undefined {
  const { base, colours } = notebook;
  const note = base.note(noteId(id));
  if (note?.record.kind !== 'palette') return undefined;
  const { record } = note;
  const asked: TypedPalette = {
    region: (record.region && base.regionId(record.region.text)) ?? '',
    when: record.when?.text ?? '',
    ...(record.fibre && { fibre: base.resolve(record.fibre.text, ['fibre']) }),
    ...(record.wearer && { wearer: base.resolve(record.wearer.text, ['wearer']) }),
  };
  const { question } = poseCircumstances(base, asked);
  const all = question ? paletteOf(base, colours, question.route) : [];
  const kept = record.keeps.map(({ what, verdict, trial, note: remark }) => {
    const colour = colourNamed(base, all, what.text, trial?.text);
    return keptColour(base, what.text, verdict, remark, colour);
  });
  return {
    id: String(note.id),
    title: note.title,
    question: record.question ?? '',
    asked,
    colours: kept,
    changed: kept.filter(({ changed }) => changed).length,
  };
}

/** The palette's colour for a kept recipe or undyed colour: on the fibre of the kept trial, where one was named. */
function colourNamed(
  base: EvidenceBase,
  all: readonly PaletteColour[],
  what: string,
  trial: string | undefined,
): PaletteColour | undefined {
  const recipe = base.resolve(what, ['recipe']);
  const own = all.filter(({ judgement }) => judgement.route.id === recipe || judgement.route.id === what);
  return own.find(({ samples }) => trial !== undefined && samples.some((one) => one.trial === base.resolve(trial, ['trial']))) ?? own[0];
}

function keptColour(
  base: EvidenceBase,
  what: string,
  verdict: string | undefined,
  remark: string | undefined,
  colour: PaletteColour | undefined,
): KeptColour {
  const kept = VERDICTS.find((one) => one === verdict);
  const now = colour?.judgement.verdict;
  const title = titleOf(base, colour?.judgement.route.recipe ?? what);
  const changed = now === undefined || (kept !== undefined && now !== kept);
  return {
    what,
    title,
    keptVerdict: kept ? verdictWords[kept].word : (verdict ?? ''),
    nowVerdict: now ? verdictWords[now].word : '',
    changed,
    says: saysOf(title, kept, now),
    note: withoutDoses(base, remark ?? ''),
    ...(colour && { cloth: clothOf(base, colour, 'none') }),
  };
}

function saysOf(title: string, kept: Verdict | undefined, now: Verdict | undefined): string {
  if (now === undefined) return `${title} cannot be judged: the notebook has no such recipe with a coloured trial any more.`;
  if (kept === undefined || kept === now) return '';
  const words = { kept: verdictWords[kept].word.toLowerCase(), now: verdictWords[now].word.toLowerCase() };
  return VERDICTS.indexOf(now) > VERDICTS.indexOf(kept)
    ? `${title} is no longer ${words.kept}: ${words.now}.`
    : `${title} was kept as ${words.kept} and is ${words.now} now.`;
}
