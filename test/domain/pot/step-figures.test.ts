import { describe, expect, test } from 'vitest';
import { temperatureCurve, temperaturesIn, timesIn } from '../../../web/domain/pot/step-figures.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const H = 60;
const D = 1440;

describe('timesIn', () => {
  test.each<[string, readonly (readonly [number, number])[]]>([
    ['Weld it at 80 °C, 45 minutes, with a pinch of chalk.', [[45, 45]]],
    ['Madder at 65–70 °C, one to two hours.', [[H, 2 * H]]],
    ['Soak the chopped root 12–24 hours; pour off the first yellow water.', [[12 * H, 24 * H]]],
    [
      'raise to 80–90 °C over an hour, hold one hour, cool in the bath',
      [
        [H, H],
        [H, H],
      ],
    ],
    ['copperas in a fresh bath, twenty minutes', [[20, 20]]],
    [
      'work the wool in it twenty minutes, air it half an hour',
      [
        [20, 20],
        [30, 30],
      ],
    ],
    ['stir every second day for air, three to five weeks or longer', [[3 * 7 * D, 5 * 7 * D]]],
    ['a sky or middle blue is enough. Air it a full day and rinse', [[D, D]]],
    [
      'boil 1½ h, then an hour and a half',
      [
        [90, 90],
        [90, 90],
      ],
    ],
    ['two and a half hours', [[150, 150]]],
    ['a quarter of an hour', [[15, 15]]],
    ['three quarters of an hour', [[45, 45]]],
    ['Leave overnight in the cooling bath', [[8 * H, 16 * H]]],
    ['ten dips, wool in and out', []],
    ['at 80 °C until it is green enough; a handful', []],
  ])('%s', (step, minutes) => {
    expect(timesIn(step).map(({ fromMinutes, toMinutes }) => [fromMinutes, toMinutes])).toEqual(minutes);
  });
  test('says which times are our reckoning', () => {
    expect(timesIn('overnight, then two hours').map(({ reckoned }) => reckoned)).toEqual([true, false]);
  });
});

describe('temperaturesIn', () => {
  test('reads all three scales as °C', () => {
    expect(
      temperaturesIn('from 30 °C to 65–70 °C; 160 °F; 56 °Ré').map(({ fromCelsius, toCelsius }) => [
        Math.round(fromCelsius),
        Math.round(toCelsius),
      ]),
    ).toEqual([
      [30, 30],
      [65, 70],
      [71, 71],
      [70, 70],
    ]);
  });
  test('does not read other figures', () => expect(temperaturesIn('pH 9–10, 30:1, 45 minutes, 18 °dH')).toEqual([]));
});

describe('temperatureCurve', () => {
  test('climbs and holds as written', () => {
    expect(temperatureCurve(['raise to 80–90 °C over an hour, hold one hour', 'rinse', 'weld at 80 °C, 45 minutes'])).toEqual([
      { minutes: 60, celsius: 85, step: 0 },
      { minutes: 120, celsius: 85, step: 0 },
      { minutes: 120, celsius: 80, step: 2 },
      { minutes: 165, celsius: 80, step: 2 },
    ]);
  });
  test('finds something in most recipes of the demonstration, and time only goes forward', async () => {
    const { base } = await demoNotebook();
    const curves = base.ofKind('recipe').map(({ record }) => temperatureCurve(record.steps));
    expect(curves.filter(({ length }) => length > 1).length).toBeGreaterThan(30);
    for (const curve of curves) expect(curve.every(({ minutes }, at) => minutes >= (curve[at - 1]?.minutes ?? 0))).toBe(true);
  });
});

test('a mass of figures or blanks states nothing, and ends', () => {
  for (const text of ['1'.repeat(200_000), `1${' '.repeat(200_000)}x`]) {
    expect(timesIn(text)).toEqual([]);
    expect(temperaturesIn(text)).toEqual([]);
  }
});
