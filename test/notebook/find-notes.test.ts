import { describe, expect, test } from 'vitest';
import { COLOUR_INDEX, genericName, genericNamesOf } from '../../web/domain/laboratory/colour-index.ts';
import { COMPOUNDS } from '../../web/domain/laboratory/tables/compounds.ts';
import { findNotes, namedMaterials } from '../../web/notebook/find-notes.ts';
import { dyestuffIndex } from '../../web/notebook/views/dyestuff-view.ts';
import { labView } from '../../web/notebook/views/lab-view.ts';
import { demoNotebook } from '../helpers/demo-notebook.ts';

const demo = await demoNotebook();
const { base } = demo;
const found = (words: string) => findNotes(base, words, []);

/** Dyestuffs of the demonstration for which we know no Colour Index generic name; a few have only a constitution number. */
const WITHOUT_GENERIC = [
  'alder-bark',
  'american-goldenrod',
  'avocado',
  'bilberry',
  'birch-leaf',
  'bog-myrtle',
  'cortinarius',
  'crottle',
  'dyers-chamomile',
  'eucalyptus',
  'goldenrod',
  'heather',
  'mauveine',
  'oak-bark',
  'oak-galls',
  'onion-skin',
  'picric-acid',
  'sawwort',
  'st-johns-wort',
  'tansy',
  'tormentil',
  'yellow-larkspur',
];

/** Mixtures and families, and compounds whose number we are not sure of: none is given rather than a doubtful one. */
const WITHOUT_CAS = [
  "6,6'-dibromoindirubin",
  '6-monobromoindigotin',
  'Ct1',
  'Ct2',
  'Ct3',
  'Ct4',
  'alkannin or shikonin',
  'amino-orceins',
  'anthocyanins',
  'brazilein type B',
  'catechins',
  'dcII',
  'dermocybin',
  'dermorubin',
  'granatin',
  'hydroxyorceins',
  'indigotin monosulfonate',
  'mauveine A',
  'mauveine B',
  'procyanidins',
  'xanthorhamnin',
];

describe('Colour Index generic names', () => {
  test('every dyestuff of the demonstration has its own, or is among those without; every name leads to a dyestuff', () => {
    const without = base.ofKind('dyestuff').flatMap(({ id }) => (genericNamesOf(id).length === 0 ? [String(id)] : []));
    expect(without.sort()).toEqual(WITHOUT_GENERIC);
    for (const { name, dyes } of COLOUR_INDEX) {
      for (const dye of dyes) expect(base.note(dye)?.record.kind, `${name}: ${dye}`).toBe('dyestuff');
    }
  });

  // The pairs are those that handbooks and makers print on the label: madder, cochineal, lac, logwood, turmeric, saffron, indigo.
  test.each([
    ['C.I. Natural Red 8', 'madder'],
    ['CI natural red 4', 'american-cochineal'],
    ['Natural Red 25', 'lac'],
    ['natural black 1', 'logwood'],
    ['C. I. Natural Yellow 3', 'turmeric'],
    ['C.I. Natural Yellow 6', 'saffron'],
    ['C.I. Vat Blue 1', 'synthetic-indigo'],
  ])('%s typed in find leads to %s', (typed, dye) => {
    expect(genericName(typed)?.dyes).toContain(dye);
    expect(namedMaterials(base, typed)).toContain(dye);
    expect(found(typed).map(({ note }) => String(note.id))).toContain(dye);
  });

  test('they are among the names a dyestuff is looked up by', () => {
    const madder = dyestuffIndex(demo).find(({ id }) => id === 'madder');
    expect(madder?.names).toContain('C.I. Natural Red 8');
  });

  test('one typed among the compounds is told as the name of a source', () => {
    const result = labView(demo, {
      findings: [
        { compound: 'C.I. Natural Red 8', found: 'present' },
        { compound: 'alizarin', found: 'present' },
      ],
      ratios: [],
      method: 'hplc-dad',
    });
    expect('lab' in result && result.lab.remarks.join(' ')).toMatch(/generic name of a source, madder/i);
  });
});

describe('compounds', () => {
  test('typed as a synonym or a CAS number lead to the notes that name them', () => {
    const ids = (words: string) => found(words).map(({ note }) => String(note.id));
    for (const words of ['72-48-0', '1,2-dihydroxyanthraquinone', 'Alizarin']) expect(ids(words), words).toContain('madder');
    expect(ids('482-89-3')).toEqual(expect.arrayContaining(['woad', 'indigo']));
    expect(found('72-48-0').every(({ compound }) => compound === 'alizarin')).toBe(true);
  });

  test('a material’s own name stays the material: indigo is not every source of indigotin', () => {
    expect(found('indigo').some(({ compound }) => compound !== undefined)).toBe(false);
  });

  test('each has its CAS number, or is among those without', () => {
    const without = COMPOUNDS.filter(({ cas, family }) => cas === undefined && family !== 'element').map(({ name }) => name);
    expect(without.sort()).toEqual(WITHOUT_CAS);
  });
});
