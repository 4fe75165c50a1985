import { describe, expect, test } from 'vitest';
import { fastnessTestOf } from '../../../web/domain/fastness/fastness-test.ts';
import { gradeScaleOf, isGrade } from '../../../web/domain/fastness/grade-scale.ts';
import { lightTests, readMegaluxHours } from '../../../web/domain/fastness/light-test.ts';
import { readFastnessLine } from '../../../web/domain/fastness/read-fastness-line.ts';
import { readBlueWool } from '../../../web/domain/light/blue-wool.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';
import { referenceTable } from '../../helpers/reference-table.ts';

describe('fastnessTestOf', () => {
  // Parts of ISO 105: B light, C washing, E01 water, E04 perspiration, X12 rubbing.
  test.each([
    ['ISO 105-C06', '', 'wash'],
    ['domestic wash, 40 °C', 'grey scale for change', 'wash'],
    ['soap wash', 'ISO 105-C10', 'wash'],
    ['ISO 105-X12, wet', '', 'rub'],
    ['dry rub, ten strokes', '', 'rub'],
    ['ISO 105-E01', '', 'water'],
    ['ISO 105-E04', '', 'other'],
    ['ISO 105-B02', 'blue wool 1–8', 'light'],
    ['', '', 'light'],
  ])('%s %s is %s', (method, scale, expected) => expect(fastnessTestOf(method, scale)).toBe(expected));

  test('every published grade of the demonstration is of light', async () => {
    const { base } = await demoNotebook();
    const grades = base.ofKind('dyestuff').flatMap(({ record }) => record.lightfast);
    expect(grades.length).toBeGreaterThan(20);
    expect(grades.filter(({ method, scale }) => fastnessTestOf(method, scale) !== 'light')).toEqual([]);
  });
});

describe('grades and scales', () => {
  test.each([
    ['grey scale for change', 'grey-change'],
    ['ISO 105-A02', 'grey-change'],
    ['grey scale for staining', 'grey-staining'],
    ['ISO 105-A03', 'grey-staining'],
    ['blue wool, BS 1–8', 'blue-wool'],
    ['AATCC L2–L9', 'blue-wool-american'],
    ['stars', 'unknown'],
  ] as const)('“%s” is %s', (text, scale) => expect(gradeScaleOf(text)).toBe(scale));

  // ISO 105-A02: five steps and half steps between them; ISO 105-B02: blue wools 1 to 8.
  test.each([
    ['4-5', 'grey scale', true],
    ['3', 'grey scale', true],
    ['2-4', 'grey scale', false],
    ['6', 'grey scale', false],
    ['5-6', 'blue wool', true],
    ['9', 'blue wool', false],
    ['L4', 'AATCC', true],
    ['4', 'AATCC', false],
    ['good', 'grey scale', false],
    ['4', '', false],
  ])('%s on %s: %s', (grade, scale, expected) => expect(isGrade(grade, scale)).toBe(expected));

  test('a wash grade is never taken for a blue wool class', () => {
    expect(readBlueWool('4', 'ISO 105-C06')).toBe('other-scale');
    expect(readBlueWool('4', 'ISO 105-X12')).toBe('other-scale');
    expect(readBlueWool('4', 'ISO 105-B02')).toEqual({ from: 4, to: 4 });
  });
});

describe('readFastnessLine', () => {
  test('reads test, grade, scale and method', () => {
    expect(readFastnessLine('wash fastness: 4 (grey scale for change; ISO 105-C06)')).toEqual({
      test: 'wash',
      which: '',
      grade: '4',
      scale: 'grey scale for change',
      method: 'ISO 105-C06',
      isOfScale: true,
    });
    expect(readFastnessLine('2025-03-02 rubbing fastness, wet: 2-3 (grey scale for staining; ISO 105-X12)')).toMatchObject({
      test: 'rub',
      which: 'wet',
      grade: '2-3',
      isOfScale: true,
    });
    expect(readFastnessLine('wash fastness: 7 (grey scale)')).toMatchObject({ grade: '7', isOfScale: false });
    expect(readFastnessLine('wash fastness: 4')).toMatchObject({ scale: '', isOfScale: false });
  });

  test('brackets stand in brackets once; the last stop belongs to the line', () => {
    expect(readFastnessLine('light fastness: 5 (blue wool (EU); ISO 105-B02).')).toMatchObject({
      grade: '5',
      scale: 'blue wool (EU)',
      method: 'ISO 105-B02',
    });
    expect(readFastnessLine('wash fastness: 4 (a (b (c)))')).toBeUndefined();
    expect(readFastnessLine('wash fastness: 4 (a) 3 (b)')).toBeUndefined();
    expect(readFastnessLine('wash fastness, : 4')).toBeUndefined();
    expect(readFastnessLine('wash fastness: ;')).toBeUndefined();
  });

  test('a line of blanks ends, wherever they stand', () => {
    const blanks = ' '.repeat(100_000);
    expect(readFastnessLine(`wash fastness,${blanks}wet${blanks}:${blanks}4${blanks}(grey scale)${blanks};`)).toMatchObject({
      which: 'wet',
      grade: '4',
    });
    expect(readFastnessLine(`wash fastness:${blanks}4${blanks}(grey`)).toBeUndefined();
  });

  test.each(['11:42 heat off after 60 min', 'washed twice: clear', 'wash fastness', ''])('leaves “%s”', (line) =>
    expect(readFastnessLine(line)).toBeUndefined(),
  );
});

describe('readMegaluxHours', () => {
  test.each([
    ['0.8 Mlx·h', 0.8],
    ['150 klx h', 0.15],
    ['800 000 lx·h', 0.8],
    ['2,5 Mlux hours', 2.5],
    ['0 Mlx·h', 0],
  ])('%s', (text, expected) => expect(readMegaluxHours(text)).toBeCloseTo(expected, 9));
  test.each(['two months in a window', '3 weeks', '50 lx', ''])('“%s” is no dose', (text) =>
    expect(readMegaluxHours(text)).toBeUndefined(),
  );
});

describe('lightTests', () => {
  const of = (readings: string, reference = '') =>
    aNotebook({
      'exposures/x.md': aNote(`kind: exposure\nsample: A-1\nreadings: [${readings}]${reference === '' ? '' : `\nreference: ${reference}`}`),
    }).base;
  const reading = ([l, a, b]: readonly number[], dose = '0 Mlx·h') =>
    `{ dose: ${dose}, colour: { lab: [${l}, ${a}, ${b}], illuminant: D65, observer: 10 } }`;

  // Worked examples of ISO 105-A05, recomputed with a second formulation (test/reference/greyscale-iso105a05.csv).
  const rows = referenceTable('greyscale-iso105a05.csv');
  test.each(rows.map((row) => [row['id'] ?? '', row['grade'] ?? '', row] as const))('%s is grade %s', (_, grade, row) => {
    const number = (key: string) => Number(row[key]);
    const first = [number('L_O'), number('a_O'), number('b_O')];
    const second = [number('L_T'), number('a_T'), number('b_T')];
    const [test0] = lightTests(of(`${reading(first)}, ${reading(second, '1 Mlx·h')}`), 'A-1');
    expect(test0?.readings[1]?.change?.step).toBe(grade);
  });

  test('blue wools beside it are read; a code that fits none has no test', () => {
    const base = of(reading([50, 20, 20]), '"BW2 reached grey-scale 4 in May; blue wool 3 grey scale 4-5"');
    expect(lightTests(base, 'A-1')[0]?.blueWools).toEqual([
      { blueWool: 2, grade: '4' },
      { blueWool: 3, grade: '4-5' },
    ]);
    expect(lightTests(base, 'A-2')).toEqual([]);
    expect(lightTests(base)).toHaveLength(1);
  });

  test('a grade belongs to the first blue wool of its clause; a clause may want either', () => {
    const of = (reference: string) =>
      lightTests(aNotebook({ 'exposures/x.md': aNote(`kind: exposure\nreference: "${reference}"`) }).base)[0]?.blueWools;
    expect(of('BW2 and BW3 reached grey scale 4')).toEqual([{ blueWool: 2, grade: '4' }]);
    expect(of('BW2 broke, BW3 grey scale 3–4; grey scale 2')).toEqual([{ blueWool: 3, grade: '3-4' }]);
    expect(of('BW2 '.repeat(50_000))).toEqual([]);
  });

  test('a reading without a colour stays, ungraded', () => {
    const [test0] = lightTests(of(`{ dose: a month }, ${reading([50, 20, 20])}`), 'A-1');
    expect(test0?.readings.map(({ change }) => change?.step)).toEqual([undefined, '5']);
  });
});
