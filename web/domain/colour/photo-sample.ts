import type { Result } from '../result.ts';
import { failed, ok } from '../result.ts';
import { ciede2000 } from './ciede2000.ts';
import type { Lab2, Xyz } from './lab.ts';
import { asLab2 } from './lab.ts';
import type { LinearRgb } from './linear-rgb.ts';
import { linearToLab2 } from './linear-rgb.ts';
import type { PhotoPatch } from './photo-patch.ts';
import { solveLinear } from './solve-linear.ts';
import { whitePoint } from './spectrum-to-xyz.ts';
import { labToXyz, xyzToLab } from './xyz-lab.ts';

/** What lay beside the cloth in the same light. */
export type PhotoReference =
  /** Nothing: the camera's own white balance is believed. */
  | { readonly kind: 'none' }
  | { readonly kind: 'white'; readonly white: PhotoPatch; readonly whiteReflectance: number }
  | {
      readonly kind: 'white-grey';
      readonly white: PhotoPatch;
      readonly whiteReflectance: number;
      readonly grey: PhotoPatch;
      readonly greyReflectance: number;
    }
  /** A chart: patches of known colour, D65/2°. */
  | { readonly kind: 'chart'; readonly patches: readonly { readonly seen: PhotoPatch; readonly known: Lab2 }[] };

/** A colour taken from a photo. */
export interface PhotoSample {
  readonly lab2: Lab2;
  /** How uneven the cloth's patch is: mean ΔE00 of pixels from their mean. */
  readonly spread: number;
  /** How well the chart's own patches come out, mean ΔE00; absent without a chart. */
  readonly chartError?: number;
  readonly origin: 'photo' | 'photo-with-chart';
}

/** Why a photo cannot be corrected. */
export type PhotoProblem = 'reference-impossible' | 'chart-too-small' | 'spaces-differ';

/** Three channels have nine unknowns, each patch gives three equations: twice as many as needed. Our choice. */
const SMALLEST_CHART = 6;

/**
 * The colour of a cloth in a photo, corrected channel by channel in linear light, or by a matrix fitted to a chart.
 *
 * @param fabric averaged by `averagePatch`, like every patch of the reference, from one photo.
 * @error `reference-impossible` when a known reflectance is outside 0–1, or grey is not darker than white, or the chart's patches are all alike;
 * `chart-too-small` under six patches; `spaces-differ` when patches come from different canvases.
 */
export function samplePhoto(fabric: PhotoPatch, reference: PhotoReference): Result<PhotoSample, PhotoProblem> {
  if (patchesOf(reference).some(({ space }) => space !== fabric.space)) return failed('spaces-differ');
  if (reference.kind === 'chart') return sampleByChart(fabric, reference.patches);
  const corrected = correctChannels(fabric.mean, reference);
  if (!corrected) return failed('reference-impossible');
  return ok({ lab2: linearToLab2(corrected, fabric.space), spread: fabric.spread, origin: 'photo' });
}

function patchesOf(reference: PhotoReference): readonly PhotoPatch[] {
  if (reference.kind === 'none') return [];
  if (reference.kind === 'white') return [reference.white];
  return reference.kind === 'white-grey' ? [reference.white, reference.grey] : reference.patches.map(({ seen }) => seen);
}

function correctChannels(fabric: LinearRgb, reference: Exclude<PhotoReference, { kind: 'chart' }>): LinearRgb | undefined {
  if (reference.kind === 'none') return fabric;
  const known = reference.whiteReflectance;
  if (!(known > 0 && known <= 1)) return undefined;
  const white = reference.white.mean;
  if (reference.kind === 'white') return white.every((v) => v > 0) ? mapChannels((c) => (fabric[c] * known) / white[c]) : undefined;
  const grey = reference.grey.mean;
  const low = reference.greyReflectance;
  if (!(low >= 0 && low < known) || !grey.every((v, c) => v < (white[c] ?? 0))) return undefined;
  return mapChannels((c) => low + ((known - low) * (fabric[c] - grey[c])) / (white[c] - grey[c]));
}

const mapChannels = (channel: (c: 0 | 1 | 2) => number): LinearRgb => [channel(0), channel(1), channel(2)];

/** Least squares from linear channels to XYZ over the chart's patches, each weighted by 1/Y so that dark patches count as the eye counts them. */
function sampleByChart(
  fabric: PhotoPatch,
  patches: readonly { readonly seen: PhotoPatch; readonly known: Lab2 }[],
): Result<PhotoSample, PhotoProblem> {
  if (patches.length < SMALLEST_CHART) return failed('chart-too-small');
  const white = whitePoint('D65', 2);
  const targets = patches.map(({ known }) => labToXyz(known, white));
  const weights = targets.map(([, y]) => 1 / Math.max(y, 1) ** 2);
  const rows: Float64Array[] = [];
  for (let k = 0; k < 3; k++) {
    const matrix = new Float64Array(9);
    const right = new Float64Array(3);
    patches.forEach(({ seen }, p) => {
      for (let i = 0; i < 3; i++) {
        const w = (weights[p] ?? 0) * (seen.mean[i] ?? 0);
        right[i] = (right[i] ?? 0) + w * (targets[p]?.[k] ?? 0);
        for (let j = 0; j < 3; j++) matrix[i * 3 + j] = (matrix[i * 3 + j] ?? 0) + w * (seen.mean[j] ?? 0);
      }
    });
    if (!solveLinear(matrix, right)) return failed('reference-impossible');
    rows.push(right);
  }
  const toLab = (rgb: LinearRgb): Lab2 => {
    const xyz = rows.map((row) => row.reduce((sum, value, i) => sum + value * (rgb[i] ?? 0), 0)) as unknown as Xyz;
    return asLab2(xyzToLab(xyz, white));
  };
  const errors = patches.map(({ seen, known }) => {
    const found = toLab(seen.mean);
    return ciede2000([found[0], found[1], found[2]], [known[0], known[1], known[2]]);
  });
  const chartError = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  return ok({ lab2: toLab(fabric.mean), spread: fabric.spread, chartError, origin: 'photo-with-chart' });
}
