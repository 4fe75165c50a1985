import { amountShown, formShown, withoutDoses } from '../../domain/pot/without-doses.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { Citation, Ingredient, Note } from '../../domain/note/note.ts';
import { standInsOf } from '../../domain/caption/caption-subject.ts';
import type { JudgedClaim } from '../../domain/verdict/judge-claim.ts';
import type { RouteJudgement } from '../../domain/verdict/judge-route.ts';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { weighClaims } from '../../domain/verdict/weigh-claims.ts';
import { whatWouldChange } from '../../domain/verdict/what-would-change.ts';
import { byAuthor, printCitation, type PrintedRun, printReference } from '../references/print-reference.ts';
import type { Notebook } from '../notebook.ts';
import { type Shown, type ShownColour, shownColours } from '../shown-colours.ts';
import { becauseOfRoute, changeSentence, ruleSentence } from '../words/because.ts';
import { type ClaimLine, claimLine, inSentence, titleOf } from '../words/claim-line.ts';
import { verdictWords } from '../words/verdict-words.ts';
import { questionSentence } from './answer-view.ts';
import { lightOf } from './light-plan-view.ts';

/** A claim with its sources printed in full. */
export interface CitedClaim extends ClaimLine {
  /** Each source as a note, with its page; a key the bibliography lacks stands as it is. */
  readonly sources: readonly (readonly PrintedRun[])[];
  /** Each source by author and date: "Munro 2012, p. 4". */
  readonly citations: readonly string[];
}

/** One entry of a list of sources in both plain styles. */
export interface ListedReference {
  readonly key: string;
  readonly short: string;
  readonly note: readonly PrintedRun[];
  readonly authorDate: readonly PrintedRun[];
}

/** The recipe and the pot behind a colour. */
export interface SheetRecipe {
  readonly id: string;
  readonly title: string;
  readonly ingredients: readonly string[];
  readonly steps: readonly string[];
  readonly basedOn: readonly { readonly id: string; readonly title: string }[];
  readonly cautions: readonly string[];
}
export interface SheetTrial {
  readonly id: string;
  readonly title: string;
  readonly code: string;
  readonly date: string;
  readonly by: string;
  readonly water: string;
  readonly lots: readonly string[];
  readonly actual: readonly string[];
  readonly log: readonly string[];
  readonly deviations: readonly string[];
}

/** Everything behind one colour of a display, for reading on paper: claim, trial, sample. */
export interface EvidenceSheetView {
  readonly display: { readonly id: string; readonly title: string; readonly version: number };
  readonly what: string;
  readonly title: string;
  readonly hex: string;
  readonly inScreenGamut: boolean;
  readonly lab: string;
  readonly weave: string;
  readonly sentence: string;
  readonly verdict: Verdict;
  readonly word: string;
  readonly means: string;
  readonly because: readonly string[];
  readonly speaksFor: readonly CitedClaim[];
  readonly speaksAgainst: readonly CitedClaim[];
  readonly nearest: readonly CitedClaim[];
  /** What is not known, and what would change the verdict. */
  readonly unknown: readonly string[];
  readonly rules: readonly string[];
  readonly standIns: readonly string[];
  readonly recipe?: SheetRecipe;
  readonly trial?: SheetTrial;
  /** Light fastness, in sentences. */
  readonly light: readonly string[];
  readonly references: readonly ListedReference[];
  /** Keys cited here that no bibliography of the notebook holds. */
  readonly missing: readonly string[];
}

/** The evidence sheet of one colour of a display; undefined when it is not on it or cannot be judged. */
export function evidenceSheetView(notebook: Notebook, id: string, what: string): EvidenceSheetView | undefined {
  const shown = shownColours(notebook, id);
  const one = shown?.colours.find((colour) => colour.what === what);
  return shown && one && sheetOf(notebook, shown, one);
}

/** The sheet of a colour already found. */
export function sheetOf(notebook: Notebook, shown: Shown, one: ShownColour): EvidenceSheetView | undefined {
  const { base } = notebook;
  const { colour, swatch, sample } = one;
  const { question } = shown;
  if (!colour || !swatch || !question) return undefined;
  const { judgement } = colour;
  const weighed = weighClaims(judgement);
  const cited = (claims: readonly JudgedClaim[]) => claims.map((claim) => citedClaim(notebook, claim));
  const recipe = judgement.route.recipe === undefined ? undefined : base.note(judgement.route.recipe);
  const trial = sample && base.note(sample.trial);
  const citations = [
    ...[...weighed.speaksFor, ...weighed.speaksAgainst, ...weighed.nearest].flatMap(({ placed }) => placed.claim.sources),
    ...(recipe?.sources ?? []),
    ...(trial?.sources ?? []),
    ...judgement.witnesses.flatMap(({ note }) => base.note(note)?.sources ?? []),
    ...judgement.rules.flatMap(({ note }) => base.note(note)?.sources ?? []),
  ];
  return {
    display: { id: shown.id, title: shown.title, version: shown.record.version ?? 1 },
    what: one.what,
    title: titleOf(base, judgement.route.recipe ?? judgement.route.id),
    hex: swatch.hex,
    inScreenGamut: swatch.inScreenGamut,
    lab: swatch.lab10.map((value) => value.toFixed(1)).join(', '),
    weave: colour.fibre === undefined ? 'wool' : (base.fibreLine(colour.fibre).at(-1) ?? colour.fibre),
    sentence: questionSentence(base, question),
    verdict: judgement.verdict,
    ...verdictWords[judgement.verdict],
    because: becauseOfRoute(base, judgement, question.route),
    speaksFor: cited(weighed.speaksFor),
    speaksAgainst: cited(weighed.speaksAgainst),
    nearest: cited(weighed.nearest),
    unknown: [...unrecordedOf(base, judgement), ...whatWouldChange(judgement).map((change) => changeSentence(base, change))],
    rules: judgement.rules.map((rule) => ruleSentence(base, rule, question.route.wearer)),
    standIns: standInsOf(base, judgement, sample).map(({ used, meant }) => `${titleOf(base, used)} for ${inSentence(base, meant)}`),
    ...(recipe && { recipe: recipeOf(base, recipe) }),
    ...(trial && { trial: trialOf(base, trial, sample.sample.code ?? '') }),
    light: lightOf(base, colour, sample),
    ...listReferences(notebook, citations),
  };
}

const unrecordedOf = (base: EvidenceBase, { materials, witnesses, route }: RouteJudgement): readonly string[] => [
  ...materials
    .filter(({ standing }) => standing === 'unrecorded')
    .map(({ material }) => `${titleOf(base, material.id)}: nothing in the notes reaches this place and time.`),
  ...(witnesses.length === 0 && route.dyes.length > 0
    ? ['No textile or text in these notes shows exactly this dyeing there and then.']
    : []),
];

function citedClaim(notebook: Notebook, judged: JudgedClaim): CitedClaim {
  const references = notebook.references();
  return {
    ...claimLine(notebook.base, judged),
    citations: judged.placed.claim.sources.map(({ key, locator = '' }) => {
      const reference = references.get(key);
      return reference ? printCitation(reference, locator) : [key, locator].filter((part) => part !== '').join(', ');
    }),
    sources: judged.placed.claim.sources.map(({ key, locator = '' }): readonly PrintedRun[] => {
      const reference = references.get(key);
      return reference ? printReference(reference, 'note', locator) : [{ text: locator === '' ? key : `${key}, ${locator}` }];
    }),
  };
}

/** The sources of some citations, each once, by author; and the keys that no bibliography holds. */
export function listReferences(
  notebook: Notebook,
  citations: readonly Citation[],
): { readonly references: readonly ListedReference[]; readonly missing: readonly string[] } {
  const references = notebook.references();
  const keys = [...new Set(citations.map(({ key }) => key))];
  return {
    references: keys
      .flatMap((key) => references.get(key) ?? [])
      .sort(byAuthor)
      .map((reference) => ({
        key: reference.key,
        short: printCitation(reference),
        note: printReference(reference, 'note'),
        authorDate: printReference(reference, 'author-date'),
      })),
    missing: keys.filter((key) => !references.has(key)).sort(),
  };
}

function recipeOf(base: EvidenceBase, { id, title, record }: Note): SheetRecipe {
  if (record.kind !== 'recipe') return { id, title, ingredients: [], steps: [], basedOn: [], cautions: [] };
  return {
    id,
    title: withoutDoses(base, title),
    ingredients: record.ingredients.map((one) => ingredientText(base, one)),
    steps: record.steps.map((step) => withoutDoses(base, step)),
    basedOn: record.basedOn.map(({ text }) => {
      const found = base.resolve(text, ['text', 'recipe', 'plain']);
      return { id: found, title: titleOf(base, found) };
    }),
    cautions: record.cautions,
  };
}

function trialOf(base: EvidenceBase, { id, title, record }: Note, code: string): SheetTrial {
  if (record.kind !== 'trial') return { id, title, code, date: '', by: '', water: '', lots: [], actual: [], log: [], deviations: [] };
  const { hardness, pH, note } = record.water ?? {};
  return {
    id,
    title: withoutDoses(base, title),
    code,
    date: record.date?.text ?? '',
    by: record.by ?? '',
    water: [hardness, pH === undefined ? undefined : `pH ${pH}`, note].filter((part) => part !== undefined).join(', '),
    lots: record.lots.map((lot) => withoutDoses(base, lot)),
    actual: record.actual.map((one) => ingredientText(base, one)),
    log: record.log.map((line) => withoutDoses(base, line)),
    deviations: record.deviations.map((line) => withoutDoses(base, line)),
  };
}

/** "Alum, 15 %, crystals"; "American cochineal for kermes, 8 %". */
function ingredientText(base: EvidenceBase, ingredient: Ingredient): string {
  const { what, standsFor } = ingredient;
  const kinds = ['dyestuff', 'mordant', 'assistant', 'process'] as const;
  const name = what ? titleOf(base, base.resolve(what.text, kinds)) : 'something unnamed';
  const meant = standsFor ? ` for ${inSentence(base, base.resolve(standsFor.text, kinds))}` : '';
  return [`${name}${meant}`, amountShown(base, ingredient), formShown(base, ingredient)].filter((part) => part !== '').join(', ');
}
