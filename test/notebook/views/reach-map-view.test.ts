import { describe, expect, test } from 'vitest';
import { type ReachMapView, reachMapView } from '../../../web/notebook/views/reach-map-view.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const notebook = aNotebook({
  ...aWorld,
  'regions/york.md': aNote('kind: region\ntitle: York\nwithin: england\npoint: [53.96, -1.08]'),
  'regions/far.md': aNote('kind: region\ntitle: Far\npoint: [10, 120]'),
  'dyestuffs/madder.md': aDyestuff(
    'Madder',
    'region: york, when: 900–1000, status: grown, known-by: remains, source: a',
    'region: york, when: 900–1000, status: imported, known-by: trade, source: a',
    'region: far, when: 950, status: cloth-only, known-by: text, sure: doubtful, source: a',
    'region: ireland, when: 900–1000, status: absent, reason: looked-for, known-by: text, source: a',
    'region: scotland, when: 1500, status: imported, known-by: trade, source: a',
  ),
  'dyestuffs/silent.md': aDyestuff('Silent'),
});
const map = (dye: string, when: string): ReachMapView => {
  const result = reachMapView(notebook, { dye, when });
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return result.map;
};

describe('reachMapView', () => {
  test('has each region once, the best way first, from west to east, without a point last', () => {
    const { places, otherYears } = map('madder', '950');
    expect(places.map(({ region, reaches }) => [region, reaches])).toEqual([
      ['york', ['grown', 'imported']],
      ['far', ['cloth-only']],
      ['ireland', ['absent']],
    ]);
    expect(places.map(({ point }) => point)).toEqual([[53.96, -1.08], [10, 120], undefined]);
    expect(otherYears).toBe(1);
  });

  test('a doubtful record is doubtful, and so is one that only its doubtful years bring', () => {
    expect(map('madder', '950').places.map(({ doubtful }) => doubtful)).toEqual([false, true, false]);
    const { base } = notebook;
    expect(base.spanOfText('c. 1480')).toBeDefined();
    const near = reachMapView(
      aNotebook({
        ...aWorld,
        'dyestuffs/x.md': aDyestuff('X', 'region: england, when: c. 1500, status: grown, known-by: text, source: a'),
      }),
      { dye: 'x', when: '1490' },
    );
    expect('map' in near && near.map.places[0]?.doubtful).toBe(true);
  });

  test('counts absence apart, and never reads silence as absence', () => {
    expect(map('madder', '950').sentence).toMatch(/2 places and say of 1 /);
    expect(map('silent', '950')).toMatchObject({ places: [], otherYears: 0 });
    expect(map('silent', '950').sentence).toContain('Silence is not absence');
  });

  test('what cannot be understood is told with the nearest', () => {
    const result = reachMapView(notebook, { dye: 'maddr', when: 'yore' });
    expect('problems' in result && result.problems.map(({ part, problem }) => [part, problem])).toEqual([
      ['dye', 'unknown'],
      ['when', 'unreadable'],
    ]);
  });

  test('American cochineal is nowhere in Europe in 1350, and in Italy by 1600', async () => {
    const demo = await demoNotebook();
    const at = (when: string) => {
      const result = reachMapView(demo, { dye: 'american-cochineal', when });
      return 'map' in result ? result.map.places.filter(({ reaches }) => reaches[0] !== 'absent').map(({ region }) => region) : [];
    };
    expect(at('1350')).not.toContain('italy');
    expect(at('1600')).toContain('italy');
  });
});
