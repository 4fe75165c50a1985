import { describe, expect, test } from 'vitest';
import changes from '../../reference/changes-1370-1670.json' with { type: 'json' };
import { compareView, type CompareView } from '../../../web/notebook/views/compare-view.ts';
import { demoNotebook } from '../../corpus/demo-notebook.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const compared = (...args: Parameters<typeof compareView>): CompareView => {
  const result = compareView(...args);
  if (!('compare' in result)) throw new Error(JSON.stringify(result.problems));
  return result.compare;
};

describe('1370 and 1670 in the demonstration', () => {
  const views = new Map<string, CompareView>();
  const between = (region: string): CompareView => {
    const view = views.get(region) ?? compared(demoNotebook(), { region, when: '1370' }, { region, when: '1670' });
    views.set(region, view);
    return view;
  };
  const named = changes.changes.map((one) => ({ ...one, material: 'dye' in one ? one.dye : one.material }));

  // Each change with its published source in test/reference/changes-1370-1670.json.
  test.each(named.map((one) => [one.id, one] as const))('%s', (_id, { change, material, region, source }) => {
    const found = between(region).materials.find(({ id }) => id === material);
    expect(source).not.toBe('');
    expect(found?.kind ?? 'none').toBe(change);
    if (!found) return;
    // Why: a claim with the source it names stands beside the change, in full under the comparison.
    const keys = between(region).sources.map(({ key }) => key);
    expect(keys.some((key) => `${found.before} ${found.now}`.includes(key))).toBe(true);
  });
  test('at least ten of them differ, and no source is missing from the bibliography', () => {
    expect(named.filter(({ change }) => change !== 'none').length).toBeGreaterThanOrEqual(10);
    for (const { key, text } of between('england').sources) expect(text, key).not.toMatch(/not in the bibliography/);
  });
  test('every colour that hangs on one side only is told, and every one that hangs on both is told or counted', () => {
    const { before, now, colours, same } = between('england');
    const [was, is] = [before, now].map(({ cloths }) => new Set(cloths.map(({ id }) => id)));
    const only = (some?: ReadonlySet<string>, others?: ReadonlySet<string>) => [...(some ?? [])].filter((id) => !others?.has(id)).length;
    const count = (...kinds: readonly string[]) => colours.filter(({ kind }) => kinds.includes(kind)).length;
    expect(count('came')).toBe(only(is, was));
    expect(count('went')).toBe(only(was, is));
    expect(count('origin', 'verdict') + same).toBe([...(was ?? [])].filter((id) => is?.has(id)).length);
    expect(new Set(colours.map(({ says }) => says)).size).toBe(colours.length);
  });
});

describe('two notebooks', () => {
  const weld = (claims: string) => aNote(`kind: dyestuff\ntitle: Weld\nmatter: plant\navailability: [${claims}]`);
  const grown = '{region: england, when: 1300–1500, status: grown, known-by: text, source: a-book}';
  const imported = '{region: england, when: 1300–1500, status: imported, known-by: trade, source: b-book}';
  const shared = {
    ...aWorld,
    'alum.md': aNote(`kind: mordant\ntitle: Alum\navailability: [${imported}]`),
    'weld-yellow.md': aNote(
      'kind: recipe\ntitle: Weld yellow\nfibre: wool\ningredients: [{what: weld, role: dye}, {what: alum, role: mordant}]',
    ),
    'weld-1.md': aNote('kind: trial\nrecipe: weld-yellow\nfibre: wool\ncolour: {lab: [75, 0, 60], illuminant: D65, observer: 10}'),
  };
  const at = { region: 'england', when: '1400' };
  const mine = aNotebook({ ...shared, 'weld.md': weld(grown) });

  test('what only one of them can stand behind came or went, in either one’s own words', () => {
    const theirs = aNotebook({ ...shared, 'weld.md': weld('') });
    const { colours, materials } = compared(mine, at, at, theirs);
    expect(colours.map(({ kind }) => kind)).toEqual(['came']);
    expect(materials).toMatchObject([{ kind: 'came', id: 'weld' }]);
    expect(materials[0]?.now).toContain('a-book');
    expect(compared(theirs, at, at, mine).colours.map(({ kind }) => kind)).toEqual(['went']);
  });
  test('another origin is told with both claims', () => {
    const { colours, materials } = compared(mine, at, at, aNotebook({ ...shared, 'weld.md': weld(imported) }));
    expect(colours.map(({ kind }) => kind)).toEqual(['origin']);
    expect(materials).toMatchObject([{ kind: 'origin', id: 'weld' }]);
    expect(materials[0]?.before).toContain('b-book');
    expect(materials[0]?.now).toContain('a-book');
  });
  test('a witness in one of them changes the verdict, and says which', () => {
    const find = aNote(
      'kind: textile\ntitle: A yellow scrap\nregion: england\nwhen: 1400\nthreads: [{where: weft, fibre: wool, dyes: [weld], tested: found}]',
    );
    const { colours } = compared(aNotebook({ ...shared, 'weld.md': weld(grown), 'scrap.md': find }), at, at, mine);
    expect(colours).toMatchObject([{ kind: 'verdict', says: expect.stringContaining('A yellow scrap') }]);
  });
  test('a colour without a sample in one of them is told by its title in the other', () => {
    const { 'weld-1.md': _sample, 'weld-yellow.md': _recipe, ...without } = shared;
    const { colours } = compared(aNotebook({ ...without, 'weld.md': weld(grown) }), at, at, mine);
    expect(colours).toMatchObject([{ kind: 'went', says: expect.stringMatching(/^Weld yellow/) }]);
  });
  test('the same notebook twice differs in nothing', () => {
    const { colours, materials, same } = compared(mine, at, at, aNotebook({ ...shared, 'weld.md': weld(grown) }));
    expect([colours, materials]).toEqual([[], []]);
    expect(same).toBeGreaterThan(0);
  });
  test('a place that only the other does not know is its problem, and found by its title where the id is another', () => {
    const { 'england.md': _england, ...nowhere } = Object.fromEntries(
      Object.entries({ ...shared, 'weld.md': weld(grown) }).map(([path, text]) => [path.replace(/^regions\//, ''), text]),
    );
    expect(compareView(mine, at, at, aNotebook(nowhere))).toMatchObject({ inOther: true, problems: [{ part: 'region' }] });
    const renamed = {
      ...nowhere,
      'engelonde.md': aNote('kind: region\ntitle: England'),
      'weld.md': weld(grown.replace('england', 'engelonde')),
    };
    expect(compared(mine, at, at, aNotebook(renamed)).before.heading).toMatch(/^England/);
  });
});
