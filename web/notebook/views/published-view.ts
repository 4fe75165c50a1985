import { withoutDoses } from '../../domain/pot/without-doses.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { isoDay } from '../../domain/light/iso-day.ts';
import type { JudgedClaim } from '../../domain/verdict/judge-claim.ts';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { weighClaims } from '../../domain/verdict/weigh-claims.ts';
import type { Notebook } from '../notebook.ts';
import type { PrintedRun } from '../references/print-reference.ts';
import { type ShownColour, shownColours } from '../shown-colours.ts';
import { boardAltText } from '../words/board-words.ts';
import { counted } from '../words/counted.ts';
import { type BoardColour, displayView } from './display-view.ts';
import { type CitedClaim, type EvidenceSheetView, type ListedReference, listReferences, sheetOf } from './evidence-sheet-view.ts';

/** A claim as the public reads it. */
export interface PublishedClaim {
  readonly says: string;
  readonly region: string;
  readonly years: string;
  readonly evidence: string;
  readonly sources: readonly (readonly PrintedRun[])[];
}

/** One colour as the public sees it. */
export interface PublishedColour {
  /** Its address on the page, letters, figures and hyphens. */
  readonly key: string;
  readonly title: string;
  readonly hex: string;
  readonly weave: string;
  readonly verdict?: Verdict;
  readonly word: string;
  readonly means: string;
  readonly classes: number;
  readonly code: string;
  readonly latin: readonly string[];
  readonly captions: readonly { readonly lang: string; readonly headline: string; readonly text: string; readonly version: number }[];
  readonly because: readonly string[];
  readonly speaksFor: readonly PublishedClaim[];
  readonly speaksAgainst: readonly PublishedClaim[];
  readonly unknown: readonly string[];
  readonly standIns: readonly string[];
  readonly recipe?: { readonly title: string; readonly ingredients: readonly string[]; readonly cautions: readonly string[] };
  /** When and with what the sample was dyed; never by whom, nor where. */
  readonly dyed?: { readonly date: string; readonly with: readonly string[] };
}

/** Everything of a display that goes out, and what stays in. */
export interface PublishedView {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly question: string;
  readonly place: string;
  /** The date as it is asked for. */
  readonly reading: string;
  readonly day: string;
  readonly languages: readonly string[];
  readonly words: string;
  readonly colours: readonly PublishedColour[];
  readonly references: readonly ListedReference[];
  readonly missing: readonly string[];
  /** What goes out, in sentences. */
  readonly goesOut: readonly string[];
  /** What is kept back, in sentences. */
  readonly keptBack: readonly string[];
}

/**
 * What of a display is published: its captions and what stands behind them. Nothing is taken from notes the display does not use;
 * private notes, people and places of work never go out.
 *
 * @param now UTC, ISO 8601.
 * @returns undefined when there is no display of that id.
 */
export function publishedView(notebook: Notebook, id: string, now: string): PublishedView | undefined {
  const shown = shownColours(notebook, id);
  const board = displayView(notebook, id);
  if (!shown || !board || notebook.base.note(id)?.private === true) return undefined;
  const colours = board.colours.flatMap((colour) => {
    const one = shown.colours.find(({ what }) => what === colour.what);
    return one ? [publishedColour(notebook, one, colour, sheetOf(notebook, shown, one))] : [];
  });
  const cited = [...new Set(colours.flatMap(({ cites }) => cites))];
  const held = new Set(colours.flatMap(({ held: notes }) => notes));
  const all = colours.map(({ colour }) => colour);
  return {
    id,
    title: board.title,
    version: board.version,
    question: board.question,
    place: board.place,
    reading: shown.asked.when,
    day: isoDay(now.slice(0, 10)) ?? '',
    languages: board.languages,
    words: boardAltText({ ...board, colours: board.colours.map((colour, at) => ({ ...colour, title: all[at]?.title ?? '' })) }),
    colours: all,
    ...listReferences(
      notebook,
      cited.map((key) => ({ key })),
    ),
    goesOut: goesOutText(all, cited.length),
    keptBack: [
      ...(held.size > 0 ? [`Private notes, though the display uses them: ${[...held].sort().join(', ')}.`] : []),
      'Who dyed, reviewed or wrote; where it was dyed, gathered or bought; logs, water, lots and costs.',
      'Comments on captions, drafts, and the body of every note.',
      'Every note the display does not use.',
    ],
  };
}

function goesOutText(colours: readonly PublishedColour[], sources: number): readonly string[] {
  const captions = colours.flatMap((colour) => colour.captions);
  return [
    `${counted(colours.length, 'colour')}: ${colours.map(({ title }) => title).join('; ')}.`,
    `${counted(captions.length, 'caption')} in ${[...new Set(captions.map(({ lang }) => lang))].join(', ') || 'no language'}.`,
    `${counted(
      colours.reduce((sum, { speaksFor, speaksAgainst }) => sum + speaksFor.length + speaksAgainst.length, 0),
      'claim',
    )} with ${counted(sources, 'source')}.`,
    `${counted(colours.filter(({ recipe }) => recipe).length, 'recipe')}: what goes in, and the cautions; the day each sample was dyed and with what.`,
  ];
}

interface Published {
  readonly colour: PublishedColour;
  readonly cites: readonly string[];
  /** Private notes that were kept back. */
  readonly held: readonly string[];
}

function publishedColour({ base }: Notebook, one: ShownColour, board: BoardColour, sheet: EvidenceSheetView | undefined): Published {
  const judgement = one.colour?.judgement;
  const weighed = judgement && weighClaims(judgement);
  const isPrivate = (id: string | undefined) => id !== undefined && base.note(id)?.private === true;
  const isOpen = ({ placed: { claim, region } }: JudgedClaim) => ![claim.note, String(region)].some(isPrivate);
  const open = (judged: readonly JudgedClaim[], cited: readonly CitedClaim[]) =>
    judged.flatMap((claim, at) => (isOpen(claim) ? [[claim, cited[at]] as const] : []));
  const speaksFor = open(weighed?.speaksFor ?? [], sheet?.speaksFor ?? []);
  const speaksAgainst = open(weighed?.speaksAgainst ?? [], sheet?.speaksAgainst ?? []);
  const behind = [
    ...(judgement?.materials.flatMap(({ material, claims }) => [
      material.id,
      ...claims.flatMap(({ placed }) => [placed.claim.note, String(placed.region)]),
    ]) ?? []),
    ...(judgement?.witnesses.map(({ note }) => String(note)) ?? []),
    ...(judgement?.rules.map(({ note }) => String(note)) ?? []),
    ...(judgement?.route.recipe === undefined ? [] : [String(judgement.route.recipe)]),
    ...(one.sample ? [String(one.sample.trial)] : []),
  ];
  const held = [...new Set(behind.filter(isPrivate))];
  const clean = cleanOf(base, held);
  const recipePrivate = isPrivate(judgement?.route.recipe);
  const title = recipePrivate ? (board.captions[0]?.headline ?? board.code) || board.code : board.title;
  const bound = board.captions.flatMap((caption) => caption.bound.map(({ claim }) => claim.replace(/#\d+$/, '')));
  const trial = one.sample && !isPrivate(one.sample.trial) ? base.note(one.sample.trial)?.record : undefined;
  return {
    held,
    cites: [
      ...[...speaksFor, ...speaksAgainst].flatMap(([claim]) => claim.placed.claim.sources.map(({ key }) => key)),
      ...bound.flatMap((id) =>
        isPrivate(id) || base.note(id)?.record.kind === 'dyestuff' ? [] : (base.note(id)?.sources ?? []).map(({ key }) => key),
      ),
    ],
    colour: {
      key: board.key,
      title,
      hex: board.hex,
      weave: board.cloth?.weave ?? 'wool',
      ...(board.cloth && { verdict: board.cloth.verdict }),
      word: sheet?.word ?? '',
      means: sheet?.means ?? '',
      classes: board.cloth?.classes ?? 0,
      code: board.code,
      latin: board.latin,
      captions: board.captions.map(({ lang, headline, text, version }) => ({
        lang,
        headline: withoutDoses(base, headline),
        text: withoutDoses(base, text),
        version,
      })),
      because: clean(sheet?.because ?? []),
      speaksFor: speaksFor.flatMap(([, cited]) => (cited ? [publishedClaim(cited)] : [])),
      speaksAgainst: speaksAgainst.flatMap(([, cited]) => (cited ? [publishedClaim(cited)] : [])),
      unknown: clean(sheet?.unknown ?? []),
      standIns: clean(sheet?.standIns ?? []),
      ...(sheet?.recipe &&
        !recipePrivate && {
          recipe: { title: sheet.recipe.title, ingredients: clean(sheet.recipe.ingredients), cautions: sheet.recipe.cautions },
        }),
      ...(trial?.kind === 'trial' && { dyed: { date: trial.date?.text ?? '', with: clean(sheet?.trial?.actual ?? []) } }),
    },
  };
}

/** Sentences that name none of the private notes, by id, title or any other name. */
function cleanOf(base: EvidenceBase, held: readonly string[]): (sentences: readonly string[]) => readonly string[] {
  const names = held.flatMap((id) => {
    const note = base.note(id);
    return [id, ...(note ? [note.title, ...note.names.map(({ name }) => name)] : [])];
  });
  const words = names.map((name) => name.toLowerCase()).filter((name) => name !== '');
  return (sentences) => sentences.filter((sentence) => !words.some((word) => sentence.toLowerCase().includes(word)));
}

const publishedClaim = ({ says, region, years, evidence, sources }: CitedClaim): PublishedClaim => ({
  says,
  region,
  years,
  evidence,
  sources,
});
