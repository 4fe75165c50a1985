import { type OnScreen, onScreen } from '../../domain/colour/swatch-colour.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { labToLch } from '../../domain/colour/lab.ts';
import { coreOf } from '../../domain/date/date-span.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { comparePalettes, type PaletteChange } from '../../domain/palette/compare-palettes.ts';
import { couldBeTried, gapsIn, type PaletteColour, paletteOf, sortPalette, USUAL_VERDICTS } from '../../domain/palette/palette.ts';
import type { RouteQuestion } from '../../domain/verdict/judge-route.ts';
import { type Verdict, VERDICTS } from '../../domain/verdict/standing-words.ts';
import type { Notebook } from '../notebook.ts';
import type { PaletteGrouping, TypedPalette } from '../typed-palette.ts';
import type { QuestionProblem } from '../pose-question.ts';
import { poseCircumstances } from '../pose-question.ts';
import { titleOf } from '../words/claim-line.ts';
import { bothOrders, changeInWords, colourOriginWords, gapSentence } from '../words/palette-words.ts';
import { verdictWords } from '../words/verdict-words.ts';
import { weaveOf } from './cloth-view.ts';
import { spreadOfPredictions } from './spread-of-predictions.ts';

/** A cloth on the line. */
export interface PaletteCloth extends OnScreen {
  readonly id: string;
  readonly title: string;
  readonly recipe?: string;
  readonly weave: string;
  readonly fibre: string;
  readonly verdict: Verdict;
  readonly verdictWord: string;
  readonly classes: number;
  readonly origin: string;
  readonly dyes: string;
  readonly group: string;
  readonly lab: readonly [number, number, number];
  readonly lch: string;
  readonly samples: number;
  /** Set where a rule forbids it to the asked wearer. */
  readonly ruled: boolean;
  readonly predicted: boolean;
  /** Of a predicted over-dye: the two recipes it is foretold from, and both orders they can be dyed in, as a sentence. */
  readonly overDye?: { readonly recipes: readonly { readonly id: string; readonly title: string }[]; readonly orders: string };
}

/** A palette, worked out. */
export interface PaletteView {
  readonly place: string;
  readonly reading: string;
  readonly from: number | null;
  readonly to: number | null;
  readonly cloths: readonly PaletteCloth[];
  /** How many colours of the notebook are not shown, by verdict. */
  readonly hidden: readonly { readonly verdict: Verdict; readonly word: string; readonly count: number }[];
  readonly gaps: string;
  /** Predicted over-dyes, where they were asked for. */
  readonly couldBeTried: readonly PaletteCloth[];
  /** How far off they are likely to be; absent where none was asked for. */
  readonly spread?: string;
  /** What came, went and changed since the date compared with; absent when none was given. */
  readonly since?: { readonly date: string; readonly changes: readonly string[] };
}

export type PaletteOrProblems = { readonly palette: PaletteView } | { readonly problems: readonly QuestionProblem[] };

/** The palette of a place and date. */
export function paletteView(notebook: Notebook, typed: TypedPalette): PaletteOrProblems {
  const { base } = notebook;
  const { question, problems } = poseCircumstances(base, typed);
  if (!question) return { problems };
  const all = palettesOf(notebook, question.route);
  const shown = isShown(typed.all ?? false);
  const cloths = sortPalette(all.filter(shown), typed.sort ?? 'hue').map((one) => clothOf(base, one, typed.group ?? 'family'));
  const since = typed.since === undefined || typed.since === '' ? undefined : base.spanOfText(typed.since);
  const before = since && palettesOf(notebook, { ...question.route, span: coreOf(since) });
  return {
    palette: {
      place: titleOf(base, question.route.region),
      reading: formatSpan(question.when),
      ...question.route.span,
      cloths: grouped(cloths),
      hidden: VERDICTS.map((verdict) => ({
        verdict,
        word: verdictWords[verdict].word,
        count: all.filter((one) => !shown(one) && one.judgement.verdict === verdict).length,
      })).filter(({ count }) => count > 0),
      gaps: gapSentence(gapsIn(all.filter(shown))),
      couldBeTried: typed.tryOverDyes === true ? triedCloths(notebook, question.route) : [],
      ...(typed.tryOverDyes === true ? { spread: spreadOfPredictions(notebook) } : {}),
      ...(since && before ? { since: { date: formatSpan(since), changes: changesBetween(base, before, all, shown) } } : {}),
    },
  };
}

const palettesOf = ({ base, colours }: Notebook, question: RouteQuestion): readonly PaletteColour[] => paletteOf(base, colours, question);

const isShown =
  (all: boolean) =>
  (one: PaletteColour): boolean =>
    USUAL_VERDICTS.includes(one.judgement.verdict) || (all && VERDICTS.indexOf(one.judgement.verdict) <= VERDICTS.indexOf('disputed'));

/** The words for every change between two palettes, what came first. */
export function changesBetween(
  base: EvidenceBase,
  before: readonly PaletteColour[],
  now: readonly PaletteColour[],
  shown: (one: PaletteColour) => boolean,
): readonly string[] {
  const order: readonly PaletteChange['kind'][] = ['came', 'went', 'origin', 'verdict'];
  return [...comparePalettes(before, now, shown)]
    .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind))
    .map((change) => changeInWords({ before: base, now: base }, change));
}

function triedCloths({ base, colours }: Notebook, question: RouteQuestion): readonly PaletteCloth[] {
  return sortPalette(couldBeTried(base, colours, question), 'hue').map((one) => {
    const [first = '', second = ''] = one.judgement.route.id.split(' + ');
    return {
      ...clothOf(base, one, 'family'),
      predicted: true,
      overDye: {
        recipes: [first, second].map((id) => ({ id, title: titleOf(base, id) })),
        orders: bothOrders(base, [first, second]),
      },
    };
  });
}

/** A palette's colour as a cloth of a view. */
export function clothOf(base: EvidenceBase, one: PaletteColour, grouping: PaletteGrouping): PaletteCloth {
  const { judgement, colour } = one;
  const { route } = judgement;
  const { l, c, h } = labToLch(colour.lab10);
  const dyes = route.dyes.map((dye) => titleOf(base, dye)).join(' + ');
  const origin = one.origin === undefined ? '' : colourOriginWords[one.origin];
  const groupOf: Readonly<Record<PaletteGrouping, string>> = {
    family: one.family,
    origin,
    dyestuff: dyes === '' ? 'undyed' : dyes,
    verdict: verdictWords[judgement.verdict].word,
    none: '',
  };
  return {
    id: one.id,
    title: titleOf(base, route.recipe ?? route.id),
    ...(route.recipe === undefined ? {} : { recipe: route.recipe }),
    ...onScreen(colour),
    weave: weaveOf(base, one.fibre),
    fibre: one.fibre === undefined ? '' : titleOf(base, one.fibre),
    verdict: judgement.verdict,
    verdictWord: verdictWords[judgement.verdict].word,
    classes: judgement.classes.length,
    origin,
    dyes,
    group: groupOf[grouping],
    lab: [colour.lab10[0], colour.lab10[1], colour.lab10[2]],
    lch: `L* ${l.toFixed(0)} · C* ${c.toFixed(0)}${h === undefined ? '' : ` · h ${h.toFixed(0)}°`}`,
    samples: one.samples.length,
    predicted: false,
    ruled: judgement.rules.some(({ touches }) => touches !== 'others'),
  };
}

/** Cloths of one group side by side, groups in the order in which they first hang. */
function grouped(cloths: readonly PaletteCloth[]): readonly PaletteCloth[] {
  const groups = new Map<string, PaletteCloth[]>();
  for (const cloth of cloths) groups.set(cloth.group, [...(groups.get(cloth.group) ?? []), cloth]);
  return [...groups.values()].flat();
}
