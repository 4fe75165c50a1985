import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import { type ColourWordMeaning, colourWordMeanings } from '../../domain/naming/colour-word-meanings.ts';
import type { YearSpan } from '../../domain/date/date-span.ts';
import { type RegionId, WORLD } from '../../domain/place/region-tree.ts';
import { inSentence } from './claim-line.ts';

/** What colour-words in a text meant, a sentence each: those in use here and then first. Empty where it names none. */
export const meaningSentences = (
  base: EvidenceBase,
  text: string,
  asked: { readonly region: RegionId; readonly span: YearSpan } = { region: WORLD, span: { from: null, to: null } },
): readonly string[] => colourWordMeanings(base, text, asked).map((one) => meaningSentence(base, one));

function meaningSentence(base: EvidenceBase, { title, meaning, place, time, fits, doubt }: ColourWordMeaning): string {
  const dyes = meaning.dyes.map(({ text }) => inSentence(base, base.resolve(text, MATERIAL_KINDS)));
  const parts = [
    meaning.shade,
    meaning.cloth,
    meaning.process,
    meaning.rank,
    dyes.length > 0 ? `from ${dyes.join(' or ')}` : undefined,
  ].filter((part) => part !== undefined);
  const away =
    time && time.gapYears > 0
      ? `, recorded ${time.gapYears === 1 ? '1 year' : `${time.gapYears} years`} ${time.relation}`
      : place === 'neighbour' || place === 'elsewhere'
        ? ', recorded in another place'
        : '';
  return `“${title}”${fits ? ', here and then' : away}: ${parts.join('; ')}.${doubt === undefined ? '' : ` Doubt: ${doubt}`}`;
}
