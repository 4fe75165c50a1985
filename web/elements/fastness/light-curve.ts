import type { LightReadingView, LightTestView } from '../../notebook/views/fastness-view.ts';

/** The drawing's own units. */
export const CURVE_BOX = { width: 480, height: 220, left: 34, right: 28, top: 26, bottom: 44 } as const;

/** Grades written at the side, by the change in colour they stand for. @source ISO 105-A02 nominal values, the scale of A05's ΔE_F. */
const GRADES: readonly (readonly [grade: string, change: number])[] = [
  ['5', 0],
  ['4', 1.7],
  ['3', 3.4],
  ['2', 6.8],
  ['1', 13.6],
];

/** A mark on the curve. */
export interface CurvePoint {
  readonly x: number;
  readonly y: number;
  readonly hex: string;
  /** "2.2", or the date where doses are not given. */
  readonly label: string;
}

/** A light test drawn: change in colour downwards against light to the right. */
export interface LightCurve {
  readonly points: readonly CurvePoint[];
  readonly path: string;
  readonly grades: readonly { readonly grade: string; readonly y: number }[];
  /** What runs across. */
  readonly across: string;
}

/** The curve of a test; undefined below two readings with a colour. Without doses in every reading they stand at even steps. */
export function lightCurve({ readings }: Pick<LightTestView, 'readings'>): LightCurve | undefined {
  const seen = readings.filter(
    (one): one is LightReadingView & { hex: string; change: number } => one.hex !== undefined && one.change !== undefined,
  );
  if (seen.length < 2) return undefined;
  const hasDoses = seen.every(({ megaluxHours }) => megaluxHours !== undefined);
  const across = seen.map(({ megaluxHours }, at) => (hasDoses ? (megaluxHours ?? 0) : at));
  const [least, most] = [Math.min(...across), Math.max(...across)];
  const deepest = Math.max(...seen.map(({ change }) => change));
  const floor = GRADES.find(([, change]) => change >= deepest)?.[1] ?? deepest;
  const { width, height, left, right, top, bottom } = CURVE_BOX;
  const x = (value: number) => left + ((value - least) / (most - least || 1)) * (width - left - right);
  const y = (change: number) => top + (change / (floor || 1)) * (height - top - bottom);
  const points = seen.map(({ hex, change, dose, date }, at) => ({
    x: round(x(across[at] ?? 0)),
    y: round(y(change)),
    hex,
    label: hasDoses ? `${Number((across[at] ?? 0).toPrecision(3))}` : date || dose,
  }));
  return {
    points,
    path: points.map((point, at) => `${at === 0 ? 'M' : 'L'}${point.x} ${point.y}`).join(''),
    grades: GRADES.filter(([, change]) => change <= floor).map(([grade, change]) => ({ grade, y: round(y(change)) })),
    across: hasDoses ? 'light, Mlx·h' : 'readings in order; the light was not measured in all of them',
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;
