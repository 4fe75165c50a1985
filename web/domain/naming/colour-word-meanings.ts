import type { EvidenceBase } from '../claim/evidence-base.ts';
import { type SwatchColour, swatchFromStated } from '../colour/swatch-colour.ts';
import type { YearSpan } from '../date/date-span.ts';
import { type TimeRelation, timeRelation } from '../date/time-relation.ts';
import type { Meaning, NoteId } from '../note/note.ts';
import type { PlaceRelation, RegionId } from '../place/region-tree.ts';
import { findNames } from './find-names.ts';
import { namesOfKind } from './notebook-names.ts';

/** What a colour-word meant, seen from a place and time. */
export interface ColourWordMeaning {
  readonly word: NoteId;
  readonly title: string;
  readonly meaning: Meaning;
  /** The middle of each family of colours it covers; empty where the note states none that can be read. */
  readonly swatches: readonly SwatchColour[];
  /** Where the word was in use, seen from the asked place; absent where the note does not say. */
  readonly place?: PlaceRelation;
  /** When it was in use, seen from the asked years; absent where the note does not say. */
  readonly time?: TimeRelation;
  /** In use here and then, as far as the note says. */
  readonly fits: boolean;
  readonly doubt?: string;
}

/** The colour-words that typed words name; all of them where several notes are about one word. */
export const colourWordsNamed = (base: EvidenceBase, text: string): readonly NoteId[] => [
  ...new Set(findNames(text, namesOfKind(base, 'colour-word').dictionary).flatMap(({ candidates }) => candidates)),
];

/**
 * What the colour-words in a text meant here and then. Several meanings stand side by side; none is chosen.
 *
 * @param text as typed: "murrey", "a murrey gown".
 * @param asked where and when.
 * @returns meanings in use there first, then by how near they are in time; empty where the text names no colour-word.
 */
export function colourWordMeanings(
  base: EvidenceBase,
  text: string,
  asked: { readonly region: RegionId; readonly span: YearSpan },
): readonly ColourWordMeaning[] {
  return colourWordsNamed(base, text)
    .flatMap((word) => meaningsOf(base, word, asked))
    .sort((a, b) => Number(b.fits) - Number(a.fits) || (a.time?.gapYears ?? 0) - (b.time?.gapYears ?? 0));
}

function meaningsOf(
  base: EvidenceBase,
  word: NoteId,
  asked: { readonly region: RegionId; readonly span: YearSpan },
): readonly ColourWordMeaning[] {
  const note = base.note(word);
  if (note?.record.kind !== 'colour-word') return [];
  const { record } = note;
  const region = record.region && base.regionId(record.region.text);
  const span = base.spanOf(record.when);
  const place = region === undefined ? undefined : base.regions.relation(region, asked.region);
  const time = span && timeRelation(span, asked.span);
  const here = place === undefined || place === 'here' || place === 'within' || place === 'around';
  const then = time === undefined || time.gapYears === 0;
  return record.means.map((meaning) => ({
    word,
    title: note.title,
    meaning,
    swatches: meaning.colours.flatMap((colour) => {
      const swatch = swatchFromStated(colour);
      return swatch.ok ? [swatch.value] : [];
    }),
    ...(place && { place }),
    ...(time && { time }),
    fits: here && then,
    ...(record.doubt === undefined ? {} : { doubt: record.doubt }),
  }));
}

/**
 * The colours a word stands for here and then: those of every meaning that fits; where none fits, of all of them.
 *
 * @returns whether any meaning was in use there, beside the colours.
 */
export function coloursOfMeanings(meanings: readonly ColourWordMeaning[]): {
  readonly swatches: readonly SwatchColour[];
  readonly fits: boolean;
} {
  const fitting = meanings.filter(({ fits, swatches }) => fits && swatches.length > 0);
  const used = fitting.length > 0 ? fitting : meanings;
  return { swatches: used.flatMap(({ swatches }) => swatches), fits: fitting.length > 0 };
}
