import { type Claim, claimKey } from '../../domain/claim/claim.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { Citation, Note, NoteKind, Ref, Thread, WrittenDate } from '../../domain/note/note.ts';
import { WORLD } from '../../domain/place/region-tree.ts';
import { type Json, timeSpanNode } from './time-span-nodes.ts';

type Node = { readonly [key: string]: Json };

/** Names of the file's own terms, which no vocabulary here has. */
const OWN = 'urn:tenterground:terms#';

/** The context: CIDOC-CRM for things and times, SKOS for names, W3C geo for points, Dublin Core for sources, our own for the rest. */
export const JSONLD_CONTEXT: Node = {
  '@version': 1.1,
  '@base': 'urn:tenterground:notebook/',
  '@vocab': 'http://www.cidoc-crm.org/cidoc-crm/',
  skos: 'http://www.w3.org/2004/02/skos/core#',
  rdfs: 'http://www.w3.org/2000/01/rdf-schema#',
  dcterms: 'http://purl.org/dc/terms/',
  geo: 'http://www.w3.org/2003/01/geo/wgs84_pos#',
  xsd: 'http://www.w3.org/2001/XMLSchema#',
  tg: OWN,
  id: '@id',
  label: 'rdfs:label',
  prefLabel: 'skos:prefLabel',
  altLabel: 'skos:altLabel',
  broader: { '@id': 'skos:broader', '@type': '@id' },
  lat: { '@id': 'geo:lat', '@type': 'xsd:decimal' },
  long: { '@id': 'geo:long', '@type': 'xsd:decimal' },
  source: 'dcterms:source',
  ...Object.fromEntries(
    ['P82a_begin_of_the_begin', 'P81a_end_of_the_begin', 'P81b_begin_of_the_end', 'P82b_end_of_the_end'].map((key) => [
      key,
      { '@id': `http://www.cidoc-crm.org/cidoc-crm/${key}`, '@type': 'xsd:gYear' },
    ]),
  ),
  ...Object.fromEntries(
    [
      'P89_falls_within',
      'P122_borders_with',
      'P7_took_place_at',
      'P45_consists_of',
      'P53_has_former_or_current_location',
      'P67_refers_to',
      'P68_foresees_use_of',
      'P33_used_specific_technique',
      'P140_assigned_attribute_to',
      'P126_employed',
    ].map((key) => [key, { '@id': `http://www.cidoc-crm.org/cidoc-crm/${key}`, '@type': '@id' }]),
  ),
};

const CLASS_OF: Readonly<Record<NoteKind, readonly string[]>> = {
  dyestuff: ['E57_Material', 'skos:Concept'],
  mordant: ['E57_Material', 'skos:Concept'],
  assistant: ['E57_Material', 'skos:Concept'],
  process: ['E29_Design_or_Procedure', 'skos:Concept'],
  fibre: ['E57_Material', 'skos:Concept'],
  recipe: ['E29_Design_or_Procedure'],
  trial: ['E12_Production'],
  textile: ['E22_Human-Made_Object'],
  text: ['E73_Information_Object'],
  'colour-word': ['skos:Concept'],
  rule: ['E73_Information_Object'],
  wearer: ['skos:Concept'],
  region: ['E53_Place'],
  period: ['E4_Period'],
  palette: ['E73_Information_Object'],
  display: ['E73_Information_Object'],
  exposure: ['E16_Measurement'],
  plain: ['E73_Information_Object'],
};

/**
 * The whole notebook as JSON-LD: every note as a node with what the vocabularies can say of it, every claim as an attribute assignment,
 * and the text of every note byte for byte as `tg:text`, so that the file can be read back whole.
 */
export function notebookJsonLd(base: EvidenceBase): string {
  const notes = [...base.notes()].sort((a, b) => (a.file < b.file ? -1 : 1));
  const graph = notes.flatMap((note) => [noteNode(base, note), ...base.claimsIn(note.file).map((claim) => claimNode(base, claim))]);
  return `${JSON.stringify({ '@context': JSONLD_CONTEXT, '@graph': graph }, undefined, 1)}\n`;
}

const iri = (id: string): string => encodeURIComponent(id);

function noteNode(base: EvidenceBase, note: Note): Node {
  // Two notes of one id are two nodes: the one that does not hold the id goes by its file.
  const id = base.note(note.id)?.file === note.file ? iri(note.id) : `file/${iri(note.file)}`;
  const latin = 'latin' in note.record ? note.record.latin : [];
  return {
    id,
    '@type': CLASS_OF[note.record.kind],
    'tg:kind': note.record.kind,
    prefLabel: note.title,
    ...some('altLabel', [
      ...note.names.map(({ name, lang }): Json => (lang === undefined ? name : { '@value': name, '@language': lang })),
      ...latin.map((name): Json => ({ '@value': name, '@language': 'la' })),
    ]),
    ...some('source', note.sources.map(citation)),
    ...ownParts(base, note),
    'tg:file': note.file,
    'tg:text': note.source,
  };
}

function ownParts(base: EvidenceBase, { record }: Note): Node {
  const span = (when: WrittenDate | undefined) => timeOf(base, when);
  const place = (key: string, ref: Ref | undefined): Node => {
    const region = ref && base.regionId(ref.text);
    return region === undefined ? {} : { [key]: iri(region) };
  };
  const refs = (key: string, list: readonly Ref[], kinds: readonly NoteKind[]): Node =>
    some(
      key,
      list.map(({ text }) => iri(base.resolve(text, kinds))),
    );
  switch (record.kind) {
    case 'region':
      return {
        ...some(
          'P89_falls_within',
          record.within
            .flatMap(({ text }) => base.regionId(text) ?? [])
            .filter((one) => one !== WORLD)
            .map(iri),
        ),
        ...some('P122_borders_with', record.near.flatMap(({ text }) => base.regionId(text) ?? []).map(iri)),
        ...(record.point ? { lat: String(record.point[0]), long: String(record.point[1]) } : {}),
      };
    case 'period':
      return { ...span(record.when), ...place('P7_took_place_at', record.region) };
    case 'textile':
      return {
        ...place('P53_has_former_or_current_location', record.region),
        P108i_was_produced_by: { '@type': 'E12_Production', ...span(record.when), ...place('P7_took_place_at', record.madeAt) },
        ...some(
          'P46_is_composed_of',
          record.threads.map((thread) => threadNode(base, thread)),
        ),
      };
    case 'text':
      return {
        ...refs('P67_refers_to', record.dyes, ['dyestuff']),
        'tg:practised': { ...span(record.when), ...place('P7_took_place_at', record.region) },
      };
    case 'recipe':
      return refs(
        'P68_foresees_use_of',
        record.ingredients.flatMap(({ what }) => what ?? []),
        ['dyestuff', 'mordant', 'assistant', 'process'],
      );
    case 'trial':
      return {
        ...(record.recipe ? refs('P33_used_specific_technique', [record.recipe], ['recipe']) : {}),
        ...refs(
          'P126_employed',
          record.actual.flatMap(({ what }) => what ?? []),
          ['dyestuff', 'mordant', 'assistant'],
        ),
        ...span(record.date),
      };
    case 'fibre':
      return record.isKindOf ? refs('broader', [record.isKindOf], ['fibre']) : {};
    case 'wearer':
      return refs('broader', record.within, ['wearer']);
    case 'rule':
    case 'colour-word':
      return { 'tg:heldIn': { ...span(record.when), ...place('P7_took_place_at', record.region) } };
    default:
      return {};
  }
}

function threadNode(base: EvidenceBase, { where, fibre, dyes, markers, tested }: Thread): Node {
  const made = [...(fibre ? [base.resolve(fibre.text, ['fibre'])] : []), ...dyes.map(({ text }) => base.resolve(text, ['dyestuff']))];
  return {
    '@type': 'E22_Human-Made_Object',
    ...(where === undefined ? {} : { label: where }),
    ...some('P45_consists_of', made.map(iri)),
    ...some('tg:marker', markers),
    'tg:tested': tested,
  };
}

/** A claim: the notebook's attribute assignment, with its place, years, evidence and sources. */
function claimNode(base: EvidenceBase, claim: Claim): Node {
  const placed = base.place(claim);
  const region = claim.region && base.regionId(claim.region.text);
  const material =
    'lacks' in placed ? base.resolve(claim.about, ['dyestuff', 'mordant', 'assistant', 'process', 'fibre']) : placed.material;
  return {
    id: `claim/${iri(claimKey(claim))}`,
    '@type': 'E13_Attribute_Assignment',
    P140_assigned_attribute_to: iri(material),
    'tg:status': claim.status,
    ...(claim.knownBy === undefined ? {} : { 'tg:knownBy': claim.knownBy }),
    'tg:sure': claim.sure,
    ...('lacks' in placed ? {} : { 'tg:extent': placed.extent }),
    'tg:concerns': {
      '@type': 'E4_Period',
      ...timeOf(base, claim.when),
      ...(region === undefined ? {} : { P7_took_place_at: iri(region) }),
    },
    ...some('source', claim.sources.map(citation)),
    'tg:note': iri(claim.note),
  };
}

function timeOf(base: EvidenceBase, when: WrittenDate | undefined): Node {
  const span = base.spanOf(when);
  return when && span ? { 'P4_has_time-span': timeSpanNode(span, when.text) } : {};
}

const citation = ({ key, locator }: Citation): string => (locator === undefined ? key : `${key}, ${locator}`);
const some = (key: string, list: readonly Json[]): Node => (list.length === 0 ? {} : { [key]: list });
