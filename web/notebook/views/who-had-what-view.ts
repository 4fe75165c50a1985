import { claimKey } from '../../domain/claim/claim.ts';
import { noteId } from '../../domain/note/note.ts';
import type { MATTERS } from '../../domain/note/note.ts';
import type { PlacedClaim } from '../../domain/claim/claim.ts';
import type { Notebook } from '../notebook.ts';
import type { ChartSources, TypedChart } from '../typed-chart.ts';
import { titleOf } from '../words/claim-line.ts';
import { bandOf, type BandRow, clothOfDye, type ListedClaim, listedClaim } from './dyestuff-view.ts';

/** The chart of a place. */
export interface WhoHadWhatView {
  readonly place: string;
  readonly rows: readonly BandRow[];
  /** Sources without a claim for the place. */
  readonly silent: readonly { readonly id: string; readonly title: string }[];
}

/** Who had what, when, in a region and its parts; undefined when there is no such region. */
export function whoHadWhat(notebook: Notebook, typed: TypedChart): WhoHadWhatView | undefined {
  const { base } = notebook;
  const region = base.regionId(typed.region);
  if (region === undefined) return undefined;
  const speaks = ({ region: of, extent }: PlacedClaim): boolean => {
    const place = base.regions.relation(of, region);
    if (place === 'here' || place === 'within') return true;
    return typed.around === true && ((place === 'around' && extent === 'whole') || place === 'neighbour');
  };
  const sources = materialsOf(notebook, typed.sources ?? 'all');
  const rows = sources.map((id): BandRow => {
    const cloth = clothOfDye(notebook, id);
    const bands = base
      .claimsOf(id)
      .filter(speaks)
      .map((one) => bandOf(base, one))
      .filter(({ style }) => typed.origin === undefined || style === typed.origin);
    return { id, title: titleOf(base, id), bands, ...(cloth && { hex: cloth.hex, fibre: cloth.weave }) };
  });
  // A source that is only known to be absent hangs at the end: the first year of the others is the order of their coming.
  const first = ({ bands }: BandRow) =>
    Math.min(...bands.filter(({ style }) => style !== 'absent').map(({ from, outerFrom }) => from ?? outerFrom ?? -Infinity));
  return {
    place: titleOf(base, region),
    rows: rows.filter(({ bands }) => bands.length > 0).sort((a, b) => first(a) - first(b) || a.title.localeCompare(b.title, 'en')),
    silent: rows.filter(({ bands }) => bands.length === 0).map(({ id, title }) => ({ id, title })),
  };
}

function materialsOf({ base }: Notebook, sources: ChartSources): readonly string[] {
  if (sources === 'mordant')
    return [...base.ofKind('mordant'), ...base.ofKind('assistant'), ...base.ofKind('process')]
      .filter(({ id }) => !base.isEveryday(id))
      .map(({ id }) => String(id));
  const wanted: (typeof MATTERS)[number] | undefined = sources === 'all' ? undefined : sources;
  return base
    .ofKind('dyestuff')
    .filter(({ record }) => wanted === undefined || record.matter === wanted)
    .map(({ id }) => String(id));
}

/** The claim behind a band, in words; undefined when it is gone. */
export function claimBehind({ base }: Notebook, key: string): (ListedClaim & { readonly material: string }) | undefined {
  const note = base.note(noteId(key.slice(0, key.lastIndexOf('#'))));
  const claim = note && base.claimsIn(note.file).find((one) => claimKey(one) === key);
  const placed = claim && base.place(claim);
  return placed && !('lacks' in placed) ? { ...listedClaim(base, placed), material: titleOf(base, placed.material) } : undefined;
}
