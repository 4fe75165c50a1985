import jsonld from 'jsonld';
import { describe, expect, test } from 'vitest';
import { dataOut } from '../../../web/notebook/export/data-out.ts';
import { JSONLD_CONTEXT } from '../../../web/notebook/export/notebook-jsonld.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

/**
 * Checked by an independent processor of JSON-LD 1.1 (jsonld.js, which passes the W3C test suite). Nothing is fetched: the context stands in the
 * file, and a document loader that is asked for anything fails the test.
 */
const documentLoader = (url: string): Promise<never> => Promise.reject(new Error(`asked for ${url}`));
const options = { documentLoader, safe: true } as const;

type Node = Readonly<Record<string, unknown>>;
const demo = await demoNotebook();
const parsed = JSON.parse(dataOut(demo.base, 'notebook-jsonld').text) as { readonly '@context': Node; readonly '@graph': readonly Node[] };
const expanded = (await jsonld.expand(parsed as never, options)) as readonly Node[];

const CRM = 'http://www.cidoc-crm.org/cidoc-crm/';
const byId = new Map(expanded.map((node) => [node['@id'], node]));
const nodeOf = (id: string): Node => byId.get(`urn:tenterground:notebook/${id}`) ?? {};

/** Every key of a file, its graph's nodes inside one another included. */
function keysIn(value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap(keysIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => [key, ...keysIn(inside)]);
}

describe('the notebook’s JSON-LD before an independent processor', () => {
  // `safe` makes the processor refuse a file that would lose a term, a value or a relative address.
  test('expands without losing a term: as many nodes, each key an address', () => {
    expect(expanded).toHaveLength(parsed['@graph'].length);
    const lost = new Set(keysIn(expanded).filter((key) => !key.startsWith('@') && !/^(?:http|urn:)/.test(key)));
    expect([...lost]).toEqual([]);
    const count = (keys: readonly string[], key: string) => keys.filter((one) => one === key).length;
    const [before, after] = [keysIn(parsed['@graph']), keysIn(expanded)];
    const pairs = [
      ['P140_assigned_attribute_to', `${CRM}P140_assigned_attribute_to`],
      ['P4_has_time-span', `${CRM}P4_has_time-span`],
      ['P82a_begin_of_the_begin', `${CRM}P82a_begin_of_the_begin`],
      ['prefLabel', 'http://www.w3.org/2004/02/skos/core#prefLabel'],
      ['source', 'http://purl.org/dc/terms/source'],
      ['tg:text', 'urn:tenterground:terms#text'],
    ] as const;
    for (const [key, address] of pairs) {
      expect(count(before, key), key).toBeGreaterThan(0);
      expect(count(after, address), key).toBe(count(before, key));
    }
  });

  test('a region lies within an address, a year is an xsd:gYear, a name has its language', () => {
    expect(nodeOf('york')[`${CRM}P89_falls_within`]).toEqual([{ '@id': 'urn:tenterground:notebook/england' }]);
    expect(JSON.stringify(nodeOf('wadholm-house-2'))).toContain('"@type":"http://www.w3.org/2001/XMLSchema#gYear"');
    expect(nodeOf('madder')['http://www.w3.org/2004/02/skos/core#altLabel']).toContainEqual({ '@value': 'Krapp', '@language': 'de' });
    expect(nodeOf('madder')['@type']).toEqual([`${CRM}E57_Material`, 'http://www.w3.org/2004/02/skos/core#Concept']);
  });

  test('compacted again under its own context it is the same graph', async () => {
    const compacted = await jsonld.compact(expanded as never, JSONLD_CONTEXT as never, { ...options, base: 'urn:tenterground:notebook/' });
    const graph = compacted['@graph'] as readonly Node[];
    const texts = (nodes: readonly Node[]) => nodes.flatMap((node) => node['tg:text'] ?? []);
    expect(texts(graph)).toEqual(texts(parsed['@graph']));
    expect(await jsonld.expand(compacted as never, options)).toEqual(expanded);
  });

  test('ids and texts of other letters survive', async () => {
    const { base } = aNotebook({ 'dyestuffs/färber-röte.md': aNote('kind: dyestuff\ntitle: Färber: "Röte" <b>') });
    const [node] = await jsonld.expand(JSON.parse(dataOut(base, 'notebook-jsonld').text) as never, options);
    expect(decodeURIComponent(String(node?.['@id']))).toBe('urn:tenterground:notebook/färber-röte');
    expect(node?.['urn:tenterground:terms#text']).toEqual([{ '@value': base.note('färber-röte')?.source }]);
  });
});
