import { boardGroups } from '../../domain/display/board-order.ts';
import { type Box, layOut } from '../../domain/display/lay-out.ts';
import { alikeNeighbours, type AlikePair } from '../../domain/display/neighbours.ts';
import { notThen } from '../../domain/display/not-then.ts';
import { captionTypeMm, sheetMm } from '../../domain/display/sheet-size.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { BoardOrder, Sheet } from '../../domain/note/display-record.ts';
import { gapsIn, type PaletteColour } from '../../domain/palette/palette.ts';
import type { SwatchColour } from '../../domain/colour/swatch-colour.ts';
import type { Notebook } from '../notebook.ts';
import { type Shown, type ShownColour, shownColours } from '../shown-colours.ts';
import { colourOriginWords, gapSentence } from '../words/palette-words.ts';
import { colourKeys } from '../colour-keys.ts';
import { ruleSentence } from '../words/because.ts';
import { titleOf } from '../words/claim-line.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { verdictWords } from '../words/verdict-words.ts';
import { captionsOf, type CaptionView, draftOf } from './caption-view.ts';
import { clothOf, type PaletteCloth } from './palette-view.ts';
import { inList } from '../words/in-list.ts';

/** One colour on the board. */
export interface BoardColour {
  readonly what: string;
  /** Its address on the published page. */
  readonly key: string;
  readonly title: string;
  /** Absent where the notebook can judge it no more. */
  readonly cloth?: PaletteCloth;
  /** Of the sample that hangs there. */
  readonly hex: string;
  readonly lab: string;
  /** The same as numbers, D65/10°; absent where there is no colour. */
  readonly lab10?: readonly [number, number, number];
  readonly code: string;
  readonly trial: string;
  /** Latin names of its dyes: they stand in italics wherever they are printed. */
  readonly latin: readonly string[];
  readonly form: 'swatch' | 'skein';
  /** `real`: a window in the print, for the cloth itself. */
  readonly material: 'printed' | 'real';
  /** Where it lies on the sheet; absent where it found no room. */
  readonly box?: Box;
  readonly captionBox?: Box;
  /** Put where it is by the note, not by the order. */
  readonly placed: boolean;
  readonly captions: readonly CaptionView[];
}

/** A display, worked out: the board and what is to be said about it. */
export interface DisplayView {
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly version: number;
  readonly palette: { readonly id: string; readonly title: string };
  readonly question: string;
  readonly place: string;
  /** How the date was read. */
  readonly reading: string;
  readonly sheet: { readonly widthMm: number; readonly heightMm: number; readonly name: string };
  readonly typeMm: number;
  readonly order: BoardOrder;
  readonly colours: readonly BoardColour[];
  readonly headings: readonly (Box & { readonly text: string })[];
  readonly languages: readonly string[];
  /** What is wrong with the board, in sentences. */
  readonly problems: readonly string[];
  /** Neighbours that are hard to tell apart, in sentences. */
  readonly alike: readonly string[];
  readonly gaps: string;
  /** What was not to be had or not allowed then. */
  readonly notThen: readonly { readonly title: string; readonly hex: string; readonly why: string }[];
  readonly staleCaptions: number;
  /** The web address its published page will have; '' for none. */
  readonly publishedAt: string;
}

/** A display by its id; undefined when there is none. */
export function displayView(notebook: Notebook, id: string): DisplayView | undefined {
  const shown = shownColours(notebook, id);
  return shown && boardOf(notebook, shown);
}

/** The caption a colour of a display could begin with; undefined where it cannot be judged. */
export function captionDraft(notebook: Notebook, id: string, what: string): ReturnType<typeof draftOf> {
  const shown = shownColours(notebook, id);
  const one = shown?.colours.find((colour) => colour.what === what);
  return shown && one && draftOf(notebook, shown, one);
}

function boardOf(notebook: Notebook, shown: Shown): DisplayView {
  const { base } = notebook;
  const { record } = shown;
  const sheet = sheetMm(record.sheet);
  const typeMm = captionTypeMm(sheet);
  const order = record.order ?? 'hue';
  const captions = new Map(shown.colours.map((one) => [one.what, captionsOf(notebook, shown, one)]));
  const inOrder = ordered(base, shown, order);
  const laid = layOut(
    inOrder.map(({ one, group }) => ({
      id: one.what,
      group,
      captionLength: captionLength(captions.get(one.what) ?? []),
      captionSpot: one.place?.caption ?? 'below',
      ...(one.place && { fixed: fixedBox(one.place) }),
    })),
    sheet,
    typeMm,
  );
  const boxes = new Map(laid.items.map((item) => [item.id, item]));
  const swatches = new Map(shown.colours.flatMap(({ what, swatch }): [string, SwatchColour][] => (swatch ? [[what, swatch]] : [])));
  const keys = colourKeys(base, shown.colours);
  const titles = new Map(shown.colours.map((one) => [one.what, titleOf(base, one.colour?.judgement.route.recipe ?? one.what)]));
  const named = (what: string) => titles.get(what) ?? what;
  const colours = inOrder.map(({ one }): BoardColour => {
    const box = boxes.get(one.what);
    return {
      ...boardColour(base, one, named(one.what)),
      key: keys.get(one.what) ?? '',
      placed: box?.fixed ?? false,
      ...(box && { box: box.cloth }),
      ...(box?.caption && { captionBox: box.caption }),
      captions: captions.get(one.what) ?? [],
    };
  });
  return {
    id: shown.id,
    title: shown.title,
    file: shown.file,
    version: record.version ?? 1,
    palette: { id: shown.palette?.id ?? '', title: shown.palette?.title ?? '' },
    question: shown.palette?.record.question ?? '',
    place: shown.question ? titleOf(base, shown.question.route.region) : '',
    reading: shown.when ? formatSpan(shown.when) : '',
    sheet: { ...sheet, name: sheetName(record.sheet) },
    typeMm,
    order,
    colours,
    headings: laid.headings.map(({ group, ...box }) => ({ ...box, text: group })),
    languages: [...new Set(record.captions.map(({ lang }) => lang))],
    problems: [
      ...(shown.palette ? [] : ['The palette this display shows is not in the notebook.']),
      ...(shown.palette && !shown.question ? ['The place or the date of the palette cannot be read, so nothing can be judged.'] : []),
      ...shown.colours
        .filter(({ colour }) => !colour)
        .map(({ what }) => `${named(what)} cannot be judged: the notebook has no such recipe with a coloured trial.`),
      ...laid.clashes.map((clash) =>
        clash.with === undefined
          ? `${named(clash.id)} lies over the edge of the sheet.`
          : `${named(clash.id)} and ${named(clash.with)} lie over one another.`,
      ),
      ...(laid.overflow.length > 0
        ? [`No room on this sheet for ${inList(laid.overflow.map(named))}: take a larger one, or shorten captions.`]
        : []),
      ...record.captions
        .filter(({ about }) => !shown.colours.some(({ what }) => what === about.text))
        .map(({ about }) => `A caption is about ${about.text}, which is not on the board.`),
    ],
    alike: alikeNeighbours(laid.items, swatches).map((pair) => alikeSentence(pair, named)),
    gaps: gapSentence(gapsIn(shown.colours.flatMap(({ colour }) => (colour ? [colour] : [])))),
    notThen: notThen(shown.all).map(({ colour, why, rules }) => ({
      title: titleOf(base, colour.judgement.route.recipe ?? colour.judgement.route.id),
      hex: colour.colour.hex,
      why:
        why === 'forbidden'
          ? rules.map((rule) => ruleSentence(base, rule, shown.question?.route.wearer)).join(' ')
          : `${verdictWords[why].word}: ${inList(colour.judgement.weakest.map((material) => titleOf(base, material)))}.`,
    })),
    publishedAt: record.publishedAt ?? '',
    staleCaptions: colours.flatMap((colour) => colour.captions).filter(({ stale }) => stale.length > 0).length,
  };
}

/** The colours in the board's order with the words of their group; what cannot be judged hangs last. */
function ordered(base: EvidenceBase, shown: Shown, order: BoardOrder): readonly { readonly one: ShownColour; readonly group: string }[] {
  const judged = shown.colours.flatMap(({ colour }) => (colour ? [colour] : []));
  const groups = boardGroups(base, judged, order);
  const used = new Set<ShownColour>();
  const take = (colour: PaletteColour): ShownColour | undefined => {
    const one = shown.colours.find((each) => each.colour === colour && !used.has(each));
    if (one) used.add(one);
    return one;
  };
  const hung = groups.flatMap(({ key, ids, colours }) => {
    const group = groupWords(base, key, ids, order);
    return colours.flatMap((colour) => {
      const one = take(colour);
      return one ? [{ one, group }] : [];
    });
  });
  return [
    ...hung,
    ...shown.colours.filter((one) => !used.has(one)).map((one) => ({ one, group: order === 'as-placed' ? '' : 'not judged' })),
  ];
}

/** Heads colours whose dyestuff was perhaps or nearby at hand: without it they would hang under the heading before. */
const ORIGIN_NOT_CERTAIN = 'origin not certain';

function groupWords(base: EvidenceBase, key: string, ids: readonly string[], order: BoardOrder): string {
  if (ids.length > 0)
    return order === 'route' ? `from ${inList(ids.map((id) => titleOf(base, id)))}` : ids.map((id) => titleOf(base, id)).join(' + ');
  if (order === 'hue' || order === 'as-placed') return key;
  if (key === '') return ORIGIN_NOT_CERTAIN;
  return Object.hasOwn(colourOriginWords, key) ? colourOriginWords[key as keyof typeof colourOriginWords] : key;
}

function boardColour(base: EvidenceBase, { what, place, colour, sample, swatch }: ShownColour, title: string) {
  const latin = (colour?.judgement.route.dyes ?? []).flatMap((dye) => {
    const record = base.note(dye)?.record;
    return record?.kind === 'dyestuff' ? record.latin : [];
  });
  return {
    what,
    title,
    ...(colour && { cloth: clothOf(base, colour, 'none') }),
    hex: swatch?.hex ?? '',
    lab: swatch ? swatch.lab10.map((value) => value.toFixed(1)).join(', ') : '',
    ...(swatch && { lab10: [swatch.lab10[0], swatch.lab10[1], swatch.lab10[2]] as const }),
    code: sample?.sample.code ?? place?.code ?? '',
    trial: sample?.trial ?? '',
    latin,
    form: place?.form ?? ('swatch' as const),
    material: place?.cloth ?? ('printed' as const),
  };
}

const fixedBox = ({ x, y, widthMm, heightMm }: NonNullable<ShownColour['place']>): Partial<Box> => ({
  ...(x === undefined ? {} : { x }),
  ...(y === undefined ? {} : { y }),
  ...(widthMm === undefined ? {} : { widthMm }),
  ...(heightMm === undefined ? {} : { heightMm }),
});

/** The longest of a colour's captions decides the room, its code and Latin name among it. */
const captionLength = (captions: readonly CaptionView[]): number =>
  captions.length === 0 ? 90 : Math.max(...captions.map(({ text, headline }) => text.length + headline.length)) + 90;

const sheetName = (sheet: Sheet | undefined): string => {
  if (!sheet) return 'A3 portrait';
  return sheet.size === 'free' ? 'free' : `${sheet.size.toUpperCase()} ${sheet.orientation}`;
};

const VISION_WORDS = { protan: 'long', deutan: 'middle', tritan: 'short' } as const;

function alikeSentence({ one, other, deltaE00, to }: AlikePair, named: (what: string) => string): string {
  const pair = `${named(one)} and ${named(other)} hang side by side`;
  if (to === 'everybody') return `${pair} and look alike (ΔE00 ${deltaE00.toFixed(1)}).`;
  const waves = inList(to.map((vision) => VISION_WORDS[vision]));
  return `${pair} and differ for most people (ΔE00 ${deltaE00.toFixed(1)}), but hardly for people who lack the cones for ${waves} waves: give them words, or move one.`;
}
