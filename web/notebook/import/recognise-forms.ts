import Papa from 'papaparse';
import { GATHER_TABLES, type GatherForm } from './gather.ts';
import { matchColumns } from './match-columns.ts';

const NOTEBOOK = /"tg:text"\s*:/;
const PLACES = /"type"\s*:\s*"Feature(?:Collection)?"/;
const PERIODS = /"(?:authorities|periodCollections|periods|definitions|spatialCoverage|start|stop)"\s*:/;

/** How much of a table is looked at: its headings stand in it, however long the table is. */
const HEAD_CHARACTERS = 20_000;

/**
 * What a file looks like, the likeliest first: JSON by the words only one form has, a table by the headings it shares
 * with one. Empty where nothing speaks for any.
 */
export function recogniseForms(text: string): readonly GatherForm[] {
  const inside = text.replace(/^\uFEFF/, '').trimStart();
  if (inside.startsWith('{') || inside.startsWith('[')) {
    const found: readonly (readonly [GatherForm, RegExp])[] = [
      ['notebook-jsonld', NOTEBOOK],
      ['places', PLACES],
      ['periods', PERIODS],
    ];
    return found.filter(([, sign]) => sign.test(inside)).map(([form]) => form);
  }
  const headings = headingsOf(inside);
  if (headings.length < 2) return [];
  return (Object.entries(GATHER_TABLES) as [GatherForm, Readonly<Record<string, readonly string[]>>][])
    .map(([form, names]) => ({ form, matched: Object.keys(matchColumns(headings, names).columns).length }))
    .filter(({ matched }) => matched > 0)
    .sort((a, b) => b.matched - a.matched)
    .map(({ form }) => form);
}

function headingsOf(text: string): readonly string[] {
  const { data } = Papa.parse<string[]>(text.slice(0, HEAD_CHARACTERS), { delimitersToGuess: [',', ';', '\t', '|'], preview: 1 });
  return data[0] ?? [];
}
