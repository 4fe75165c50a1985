import type { LabFigures } from '../domain/laboratory/figures.ts';
import { type Finding, FOUND, type Found, type RatioFinding } from '../domain/laboratory/findings.ts';
import { LAB_METHODS, type LabMethod } from '../domain/laboratory/tables/methods.ts';
import { EMPTY_LAB, type TypedLab } from './typed-lab.ts';

type Settings = Readonly<Record<string, string>>;

/** Under which setting of an address each finding stands. */
const KEYS = { present: 'found', trace: 'trace', absent: 'absent', 'not-tested': 'untested' } as const satisfies Record<Found, string>;

/** The settings of an address that holds this report: names of compounds between semicolons, figures behind a bar. */
export function settingsOfLab({ findings, ratios, method, elseAbsent, region, when, fibre, source, figures }: TypedLab): Settings {
  const named = FOUND.map((found) => [KEYS[found], listed(findings.filter((one) => one.found === found).map(({ compound }) => compound))]);
  const settings: Readonly<Record<string, string | undefined>> = {
    ...Object.fromEntries(named),
    ratios: listed(ratios.map(({ ratio, value, tolerance }) => [ratio, value, ...(tolerance === undefined ? [] : [tolerance])].join('|'))),
    method: method === EMPTY_LAB.method ? undefined : method,
    else: elseAbsent === true ? 'absent' : undefined,
    region,
    when,
    fibre,
    source,
    reach: listed(
      LAB_METHODS.flatMap((one) => Object.entries(figures?.reach?.[one] ?? {}).map(([compound, figure]) => `${compound}|${one}|${figure}`)),
    ),
    gone: listed(Object.entries(figures?.gone ?? {}).map(([compound, figure]) => `${compound}|${figure}`)),
  };
  return Object.fromEntries(Object.entries(settings).filter((pair): pair is [string, string] => pair[1] !== undefined && pair[1] !== ''));
}

/** The report an address holds; what is no number or no method is left out. */
export function labOfSettings(settings: Settings): TypedLab {
  const findings = FOUND.flatMap((found) => parts(settings[KEYS[found]]).map((compound): Finding => ({ compound, found })));
  const method = LAB_METHODS.find((one) => one === settings['method']) ?? EMPTY_LAB.method;
  const text = (key: 'region' | 'when' | 'fibre' | 'source') => (settings[key] === undefined ? {} : { [key]: settings[key] });
  const figures = figuresOf(settings);
  return {
    findings,
    ratios: parts(settings['ratios']).flatMap(ratioOf),
    method,
    ...(settings['else'] === 'absent' && { elseAbsent: true }),
    ...text('region'),
    ...text('when'),
    ...text('fibre'),
    ...text('source'),
    ...(figures && { figures }),
  };
}

const listed = (texts: readonly string[]): string => texts.join(';');
const parts = (text: string | undefined): readonly string[] =>
  (text ?? '')
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '');

function ratioOf(text: string): readonly RatioFinding[] {
  const [ratio = '', value = '', tolerance] = text.split('|');
  const [v, t] = [Number(value), Number(tolerance ?? '0')];
  if (ratio === '' || value === '' || !Number.isFinite(v) || v < 0) return [];
  return [{ ratio, value: v, ...(t > 0 ? { tolerance: t } : {}) }];
}

function figuresOf(settings: Settings): LabFigures | undefined {
  const reach: Partial<Record<LabMethod, Record<string, number>>> = {};
  for (const part of parts(settings['reach'])) {
    const [compound = '', name, figure] = part.split('|');
    const method = LAB_METHODS.find((one) => one === name);
    const chance = chanceOf(figure);
    if (method && chance !== undefined) reach[method] = { ...reach[method], [compound]: chance };
  }
  const gone = parts(settings['gone']).flatMap((part) => {
    const [compound = '', figure] = part.split('|');
    const chance = chanceOf(figure);
    return chance === undefined ? [] : [[compound, chance] as const];
  });
  if (Object.keys(reach).length === 0 && gone.length === 0) return undefined;
  return {
    ...(Object.keys(reach).length > 0 && { reach }),
    ...(gone.length > 0 && { gone: Object.fromEntries(gone) }),
  };
}

function chanceOf(text: string | undefined): number | undefined {
  const figure = text === undefined || text.trim() === '' ? NaN : Number(text);
  return figure >= 0 && figure <= 1 ? figure : undefined;
}
