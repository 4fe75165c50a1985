import { type OnScreen, onScreen } from '../../domain/colour/swatch-colour.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { claimKey, isHard, type PlacedClaim } from '../../domain/claim/claim.ts';
import { evidenceClassOf } from '../../domain/claim/evidence-class.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { genericNamesOf } from '../../domain/laboratory/colour-index.ts';
import type { DyestuffRecord, Note } from '../../domain/note/note.ts';
import { dyedRecipes } from '../../domain/verdict/cloths.ts';
import { routeOf } from '../../domain/verdict/route.ts';
import type { Notebook } from '../notebook.ts';
import { sourceText, titleOf } from '../words/claim-line.ts';
import { classWords, knownByWords, statusWords } from '../words/verdict-words.ts';
import { weaveOf } from './cloth-view.ts';
import { labOfMarkers } from './lab-links.ts';
import { type FastnessRow, type LightTestView, lightTestViews, publishedFastness } from './fastness-view.ts';

/** A band of the chart: one claim about one place. */
export interface BandView {
  readonly claimKey: string;
  /** Core years; null is open. */
  readonly from: number | null;
  readonly to: number | null;
  readonly outerFrom: number | null;
  readonly outerTo: number | null;
  readonly style: 'local' | 'imported' | 'cloth-only' | 'find' | 'absent';
  readonly soft: boolean;
  readonly label: string;
}

/** A row of the chart. */
export interface BandRow {
  readonly id: string;
  readonly title: string;
  readonly hex?: string;
  readonly fibre?: string;
  readonly bands: readonly BandView[];
}

/** A claim in a list. */
export interface ListedClaim {
  readonly key: string;
  readonly region: string;
  readonly years: string;
  readonly says: string;
  readonly evidence: string;
  readonly sure: string;
  readonly source: string;
  readonly note: string;
  readonly remark: string;
}

/** A cloth that a dyestuff gave. */
export interface GivenCloth extends OnScreen {
  readonly id: string;
  readonly recipe: string;
  readonly title: string;
  readonly weave: string;
  readonly trial: string;
  readonly code: string;
  readonly dyes: string;
}

/** A dyestuff in the index. */
export interface DyestuffEntry {
  readonly id: string;
  readonly title: string;
  readonly latin: string;
  readonly names: readonly string[];
  readonly matter: string;
  readonly claims: number;
  readonly hex?: string;
}

/** Everything on one dyestuff. */
export interface DyestuffView {
  readonly id: string;
  readonly title: string;
  readonly latin: readonly string[];
  readonly names: readonly { readonly name: string; readonly lang?: string }[];
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  readonly markers: readonly string[];
  /** The laboratory's page with these found; '' without any. */
  readonly laboratory: string;
  readonly gather?: { readonly months: readonly number[]; readonly text: string };
  readonly fastness: readonly FastnessRow[];
  /** Light tests of samples it was used for. */
  readonly lightTests: readonly LightTestView[];
  readonly cautions: readonly string[];
  readonly rows: readonly BandRow[];
  readonly claims: readonly ListedClaim[];
  readonly cloths: readonly GivenCloth[];
  readonly textiles: readonly { readonly id: string; readonly title: string; readonly text: string }[];
  readonly source: string;
  readonly invented: boolean;
}

/** Every dyestuff of the notebook, by title. */
export function dyestuffIndex(notebook: Notebook): readonly DyestuffEntry[] {
  const { base } = notebook;
  const cloths = clothsByDye(notebook);
  return base
    .ofKind('dyestuff')
    .map(({ id, title, names, record }): DyestuffEntry => {
      const hex = cloths.get(id)?.[0]?.hex;
      return {
        id,
        title,
        latin: record.latin[0] ?? '',
        names: [...names.map(({ name }) => name), ...genericNamesOf(id).map(({ name }) => name)],
        matter: record.matter ?? '',
        claims: base.claimsOf(id).length,
        ...(hex === undefined ? {} : { hex }),
      };
    })
    .sort((a, b) => a.title.localeCompare(b.title, 'en'));
}

/** Everything on one dyestuff; undefined when the notebook has none of that id. */
export function dyestuffView(notebook: Notebook, id: string): DyestuffView | undefined {
  const { base } = notebook;
  const note = base.note(id);
  if (note?.record.kind !== 'dyestuff') return undefined;
  const { record } = note;
  const placed = [...base.claimsOf(note.id)].sort((a, b) => (a.span.earliestStart ?? -Infinity) - (b.span.earliestStart ?? -Infinity));
  return {
    id: note.id,
    title: note.title,
    latin: record.latin,
    names: note.names,
    facts: [
      ...(record.matter ? [{ label: 'Matter', text: record.matter }] : []),
      ...(record.part === undefined ? [] : [{ label: 'Part used', text: record.part }]),
      ...genericFact(note.id),
    ],
    markers: record.markers,
    laboratory: record.markers.length === 0 ? '' : labOfMarkers(record.markers),
    ...(record.gather ? { gather: gatherOf(record) } : {}),
    fastness: publishedFastness(base, record.lightfast),
    lightTests: lightTestViews(base, [...new Set((clothsByDye(notebook).get(note.id) ?? []).map(({ code }) => code))]),
    cautions: record.cautions,
    rows: rowsByRegion(base, placed),
    claims: placed.map((one) => listedClaim(base, one)),
    cloths: clothsByDye(notebook).get(note.id) ?? [],
    textiles: textilesWith(base, note),
    source: sourceText(note.sources),
    invented: note.invented,
  };
}

/** Colour Index generic names, which are from memory and say so. */
function genericFact(id: string): DyestuffView['facts'] {
  const names = genericNamesOf(id).map(({ name, doubtful }) => `${name}${doubtful === true ? ' (doubtful)' : ''}`);
  return names.length === 0 ? [] : [{ label: 'Colour Index', text: `${names.join(', ')}, from memory` }];
}

function gatherOf({ gather }: DyestuffRecord): { readonly months: readonly number[]; readonly text: string } {
  return {
    months: gather?.months ?? [],
    text: [gather?.yearOfGrowth === undefined ? undefined : `${gather.yearOfGrowth} year of growth`, gather?.note]
      .filter((part) => part !== undefined)
      .join('; '),
  };
}

/** One row a region, the regions by their earliest claim. */
export function rowsByRegion(base: EvidenceBase, placed: readonly PlacedClaim[]): readonly BandRow[] {
  const rows = new Map<string, BandView[]>();
  for (const one of placed) rows.set(one.region, [...(rows.get(one.region) ?? []), bandOf(base, one)]);
  return [...rows].map(([region, bands]) => ({ id: region, title: titleOf(base, region), bands }));
}

/** A claim as a band. */
export function bandOf(base: EvidenceBase, { claim, region, span }: PlacedClaim): BandView {
  const style =
    claim.status === 'wild' || claim.status === 'grown' || claim.status === 'made'
      ? 'local'
      : claim.status === 'on-cloth'
        ? 'find'
        : claim.status;
  const how = [
    claim.knownBy && knownByWords[claim.knownBy],
    claim.sure === 'yes' ? undefined : claim.sure,
    sourceText(claim.sources) || undefined,
  ].filter((part) => part !== undefined);
  return {
    claimKey: claimKey(claim),
    from: span.latestStart,
    to: span.earliestEnd,
    outerFrom: span.earliestStart,
    outerTo: span.latestEnd,
    style,
    soft: !isHard(claim),
    label: `${titleOf(base, region)}: ${statusWords[claim.status]}, ${formatSpan(span)} (${how.join(', ')})`,
  };
}

/** A claim for a list. */
export function listedClaim(base: EvidenceBase, { claim, region, span }: PlacedClaim): ListedClaim {
  return {
    key: claimKey(claim),
    region: titleOf(base, region),
    years: formatSpan(span),
    says: statusWords[claim.status],
    evidence: claim.knownBy ? `${classWords[evidenceClassOf(claim.knownBy)]}: ${knownByWords[claim.knownBy]}` : 'evidence not stated',
    sure: claim.sure === 'yes' ? '' : claim.sure,
    source: sourceText(claim.sources) || 'no source given',
    note: claim.note,
    remark: claim.remark ?? '',
  };
}

function textilesWith(base: EvidenceBase, note: Note): DyestuffView['textiles'] {
  return base.ofKind('textile').flatMap(({ id, title, record }) => {
    const threads = record.threads.filter(({ dyes }) => dyes.some(({ text }) => base.resolve(text, ['dyestuff']) === note.id));
    if (threads.length === 0) return [];
    const where = record.region && base.regionId(record.region.text);
    const parts = [
      where === undefined ? undefined : titleOf(base, where),
      record.when?.text,
      threads
        .map((thread) =>
          [thread.where, thread.fibre && titleOf(base, base.resolve(thread.fibre.text, ['fibre'])).toLowerCase()]
            .filter(Boolean)
            .join(', '),
        )
        .join('; '),
    ];
    return [{ id: String(id), title, text: parts.filter((part) => part !== undefined && part !== '').join(' · ') }];
  });
}

const shelves = new WeakMap<Notebook, { readonly version: number; readonly cloths: ReadonlyMap<string, readonly GivenCloth[]> }>();

/** The first cloth of each recipe under every dye of its route, worked out once for each state of the notebook. */
function clothsByDye(notebook: Notebook): ReadonlyMap<string, readonly GivenCloth[]> {
  const { base, colours } = notebook;
  const held = shelves.get(notebook);
  if (held?.version === base.version) return held.cloths;
  const cloths = new Map<string, GivenCloth[]>();
  for (const { recipe, samples } of dyedRecipes(base, colours)) {
    const { dyes } = routeOf(base, recipe, undefined);
    const given = samples.map(({ trial, nth, sample, fibre, colour }): GivenCloth => ({
      id: `${trial} ${nth}`,
      recipe,
      title: titleOf(base, recipe),
      ...onScreen(colour),
      weave: weaveOf(base, fibre),
      trial,
      code: sample.code ?? trial,
      dyes: dyes.map((dye) => titleOf(base, dye)).join(' + '),
    }));
    // A dyestuff's own colour comes first: recipes with fewer dyes before over-dyes.
    for (const dye of dyes) {
      const list = cloths.get(dye) ?? [];
      cloths.set(dye, dyes.length === 1 ? [...given, ...list] : [...list, ...given]);
    }
  }
  shelves.set(notebook, { version: base.version, cloths });
  return cloths;
}

/** The first cloth a dyestuff gave, alone before over-dyes. */
export const clothOfDye = (notebook: Notebook, id: string): GivenCloth | undefined => clothsByDye(notebook).get(id)?.[0];
