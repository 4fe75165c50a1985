import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../web/domain/colour/delta-e.ts';
import { asLab10, labToLch } from '../../web/domain/colour/lab.ts';
import type { Lab10 } from '../../web/domain/colour/lab.ts';
import { spectrumToLab10 } from '../../web/domain/colour/xyz-lab.ts';
import { referenceText } from '../helpers/reference-table.ts';
import { demoNotes, demoSpectra, demoSpectralFiles, demoText } from './read-demo.ts';

type Span = readonly [low: number, high: number];
interface Box {
  readonly recipe: string;
  readonly fibres: readonly string[];
  readonly strength: string;
  readonly standIn?: string;
  readonly L: Span;
  readonly C: Span;
  /** Degrees, upward from the first to the second, perhaps past 360. */
  readonly h: Span;
  readonly source: string;
}
const { boxes } = JSON.parse(referenceText('colour-boxes.json')) as { readonly boxes: readonly Box[] };

const within = (value: number, [low, high]: Span): boolean => value >= low && value <= high;
function isInside({ L, C, h }: Box, lab: Lab10): boolean {
  const { l, c, h: hue = 0 } = labToLch(lab);
  return within(l, L) && within(c, C) && (h[0] <= h[1] ? within(hue, h) : hue >= h[0] || hue <= h[1]);
}

const curves = new Map(demoSpectralFiles().map((path) => [path, demoSpectra(path)]));
const trials = demoNotes('trials', 'trial');
const recipes = demoNotes('recipes', 'recipe');

/** Each dyed skein of the demonstration with its measured and stated colour. */
const skeins = trials.flatMap(({ note, record }) =>
  record.samples.map((sample) => {
    const dye = record.actual.find(({ role }) => role === 'dye');
    const curve = sample.spectrum && curves.get(sample.spectrum.file)?.get(sample.spectrum.sample ?? '');
    const stated = sample.colour?.lab && asLab10(sample.colour.lab);
    return {
      trial: String(note.id),
      recipe: record.recipe?.text ?? '',
      code: sample.code ?? '',
      fibre: sample.fibre?.text ?? '',
      onto: sample.onto ?? '',
      standIn: record.actual.find(({ role, standsFor }) => role === 'dye' && standsFor)?.what?.text,
      dose: `${dye?.what?.text} ${dye?.amount?.text ?? ''}`,
      isFirstBath: (record.bath?.nth ?? 1) === 1,
      stated,
      asked: sample.spectrum,
      curve,
      lab: curve ? spectrumToLab10(curve.spectrum) : stated,
      colour: sample.colour,
    };
  }),
);
type Skein = (typeof skeins)[number];
const at = (code: string): Lab10 => {
  const lab = skeins.find((skein) => skein.code === code)?.lab;
  if (!lab) throw new Error(`no colour for ${code}`);
  return lab;
};

/** A stand-in has boxes of its own where the recipe's own dye also has some. */
function boxesOf({ recipe, fibre, standIn }: Skein): readonly Box[] {
  const all = boxes.filter((box) => box.recipe === recipe && box.fibres.includes(fibre));
  const own = all.filter((box) => box.standIn === standIn);
  return own.length > 0 ? own : all;
}

describe('the trials of the demonstration', () => {
  test('are read without a finding, say that they are invented, and come from one recipe each', () => {
    expect(trials.filter(({ diagnostics }) => diagnostics.length > 0).map(({ note }) => note.id)).toEqual([]);
    expect(trials.filter(({ note }) => !note.invented).map(({ note }) => note.id)).toEqual([]);
    const known = new Set(recipes.map(({ note }) => String(note.id)));
    expect(skeins.filter(({ recipe }) => !known.has(recipe))).toEqual([]);
    expect(skeins.length).toBeGreaterThanOrEqual(90);
  });

  test('give every skein a code of its own that begins with the trial', () => {
    expect(new Set(skeins.map(({ code }) => code)).size).toBe(skeins.length);
    expect(skeins.filter(({ code, trial }) => !code.startsWith(`${trial.toUpperCase()}-`))).toEqual([]);
  });

  test('state every colour under D65 and the 10° observer, as read by an instrument', () => {
    const others = skeins.filter(
      ({ colour }) =>
        colour && !(colour.illuminant === 'D65' && colour.observer === 10 && /^(?:instrument|spectrum)$/.test(colour.by ?? '')),
    );
    expect(others.map(({ code }) => code)).toEqual([]);
  });

  test.each(skeins.map((skein) => [skein.code, skein.recipe, skein] as const))('%s lies in a box of %s', (_code, _recipe, skein) => {
    const own = boxesOf(skein);
    expect(own.length, 'boxes for this recipe and fibre').toBeGreaterThan(0);
    for (const lab of [skein.lab, skein.stated])
      if (lab)
        expect(
          own.filter((box) => isInside(box, lab)).map((box) => box.strength),
          String(lab),
        ).not.toEqual([]);
    expect(skein.lab, 'a colour').toBeDefined();
  });
});

describe('the boxes', () => {
  test('name their source, and leave no recipe with a trial out', () => {
    expect(boxes.filter(({ source }) => source.trim() === '')).toEqual([]);
    const tried = new Set(skeins.map(({ recipe }) => recipe));
    expect([...tried].filter((recipe) => !boxes.some((box) => box.recipe === recipe))).toEqual([]);
  });

  test('tell dyes apart: no skein fits the boxes of more than a quarter of the recipes', () => {
    const all = new Set(boxes.map(({ recipe }) => recipe)).size;
    const fits = skeins.map(
      ({ code, lab }) => [code, new Set(boxes.filter((box) => lab && isInside(box, lab)).map(({ recipe }) => recipe)).size] as const,
    );
    expect(fits.filter(([, count]) => count > all / 4)).toEqual([]);
  });

  test.each([
    ['weld-alum-wool', [77, 2, 62]],
    ['madder-alum-wool', [43, 42, -20]],
    ['woad-wool', [45, 10, -22]],
    ['kermes-alum-wool', [38, 50, 40]],
    ['cochineal-alum-wool', [35, 40, 30]],
  ] as const)('of %s refuse a colour of a neighbouring hue', (recipe, lab) => {
    expect(boxes.filter((box) => box.recipe === recipe && isInside(box, asLab10(lab)))).toEqual([]);
  });
});

describe('the spectra of the demonstration', () => {
  test('hold at least 24 skeins, and every one that a trial asks for', () => {
    expect(skeins.filter(({ asked, curve }) => asked && !curve).map(({ code }) => code)).toEqual([]);
    expect(skeins.filter(({ curve }) => curve).length).toBeGreaterThanOrEqual(24);
  });

  test.each(demoSpectralFiles())('%s says geometry, illuminant and observer, and that it is invented', (path) => {
    const text = demoText(path);
    for (const line of [
      /^MEASUREMENT_GEOMETRY\s+"d\/8/m,
      /^ILLUMINANT\s+"D65"/m,
      /^OBSERVER\s+"10"/m,
      /^# invented for the demonstration/m,
    ])
      expect(text).toMatch(line);
  });

  test.each([...curves].flatMap(([path, samples]) => [...samples].map(([id, sample]) => [id, path, sample] as const)))(
    '%s in %s is a smooth curve of 36 bands',
    (_id, _path, { spectrum, lab }) => {
      expect([spectrum.startNm, spectrum.stepNm, spectrum.values.length]).toEqual([380, 10, 36]);
      expect(spectrum.values.every((value) => value > 0.001 && value < 0.95)).toBe(true);
      // A dyed fibre's curve bends slowly: third differences of the log of R/(1 − R) stay small. Our choice of limit.
      const bends = difference(difference(difference(spectrum.values.map((r) => Math.log(r / (1 - r))))));
      expect(Math.max(...bends.map(Math.abs))).toBeLessThan(0.35);
      if (lab) expect(deltaE00(asLab10(lab), spectrumToLab10(spectrum))).toBeLessThan(0.05);
    },
  );

  test('agree with the stated colours of their trials', () => {
    const far = skeins.flatMap(({ code, curve, stated }) => {
      const apart = curve && stated ? deltaE00(stated, spectrumToLab10(curve.spectrum)) : 0;
      return apart > 0.1 ? [`${code} ${apart}`] : [];
    });
    expect(far).toEqual([]);
  });
});

const difference = (values: readonly number[]): number[] => values.slice(1).map((value, i) => value - (values[i] ?? 0));

/** Skeins dyed alike: same recipe, dose, fibre and ground, first bath. Vats are left out: there the number of dips counts. */
function repeatsOf(all: readonly Skein[]): readonly (readonly [what: string, group: readonly Skein[]])[] {
  const groups = new Map<string, Skein[]>();
  for (const skein of all) {
    if (!skein.isFirstBath || /^(?:woad|indigo)-/.test(skein.recipe)) continue;
    const key = [skein.recipe, skein.dose.trim(), skein.fibre, skein.onto].join(' | ');
    groups.set(key, [...(groups.get(key) ?? []), skein]);
  }
  return [...groups].filter(([, group]) => group.length >= 3);
}
const repeats = repeatsOf(skeins);

describe('repeats of one dyeing', () => {
  test('are many enough to speak of a spread', () => expect(repeats.length).toBeGreaterThanOrEqual(8));

  test.each(repeats)('%s scatter as dyers’ do', (_what, group) => {
    const apart = group.flatMap((one, i) => group.slice(i + 1).map((other) => deltaE00(at(one.code), at(other.code))));
    // Our judgement of hand dyeing: the farthest pair ΔE00 2–7, and no two skeins the same.
    expect(Math.max(...apart)).toBeGreaterThan(2);
    expect(Math.max(...apart)).toBeLessThan(7);
    expect(Math.min(...apart)).toBeGreaterThan(0.4);
  });
});

describe('depth series', () => {
  const series = (recipe: string, date: RegExp): readonly Skein[] => {
    const dated = new Set(trials.filter(({ record }) => date.test(record.date?.text ?? '')).map(({ note }) => String(note.id)));
    return skeins.filter((skein) => skein.recipe === recipe && skein.fibre === 'wool' && dated.has(skein.trial));
  };

  test.each([
    ['madder-alum-wool', /^2024-06-04$/],
    ['cochineal-alum-wool', /^2024-03-19$/],
    ['woad-wool', /^2023-08-22$/],
    ['woad-wool', /^2024-08-20$/],
  ] as const)('%s gets darker with more dye', (recipe, date) => {
    const lightness = series(recipe, date).map(({ code }) => at(code)[0]);
    expect(lightness.length).toBe(3);
    expect(lightness).toEqual(lightness.toSorted((one, other) => other - one));
  });

  test('weld gets stronger with more dye', () => {
    const chroma = series('weld-alum-wool', /^2024-07-23$/).map(({ code }) => labToLch(at(code)).c);
    expect(chroma.length).toBe(3);
    expect(chroma).toEqual(chroma.toSorted((one, other) => one - other));
  });

  test('a later bath is paler than the bath it comes after', () => {
    const later = trials.filter(({ record }) => record.bath?.after);
    expect(later.length).toBeGreaterThanOrEqual(5);
    for (const { note, record } of later)
      expect(at(`${note.id.toUpperCase()}-1`)[0]).toBeGreaterThan(at(`${record.bath?.after?.text.toUpperCase()}-1`)[0]);
  });
});
