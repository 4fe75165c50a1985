import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../setup.mjs';
import { ciede2000 } from '../../web/domain/colour/ciede2000.ts';
import { TEXTILE } from '../../web/domain/colour/conditions.ts';
import { overDye } from '../../web/domain/colour/kubelka-munk.ts';
import { readSpectralFile } from '../../web/domain/colour/read-spectral-file.ts';
import { reconstructFromLab } from '../../web/domain/colour/reconstruct.ts';
import { averagePatch } from '../../web/domain/colour/photo-patch.ts';
import { spectrumToLab10 } from '../../web/domain/colour/xyz-lab.ts';
import { printTable } from './print-table.ts';

const text = readFileSync(join(ROOT, 'corpus-demo/spectra/yellows.txt'), 'utf8');
const spectra = readSpectralFile(text).samples.map(({ spectrum }) => spectrum);
const [ground, ...dyed] = spectra;
if (!ground) throw new Error('the demonstration has no spectra');
const labs = spectra.map((spectrum) => [...spectrumToLab10(spectrum)] as [number, number, number]);
const pixels = Uint8ClampedArray.from({ length: 4_000_000 }, (_, at) => (at % 4 === 3 ? 255 : 60 + (at % 97)));
const fields = Array.from({ length: 36 }, (_, nth) => `NM${380 + 10 * nth}`).join(' ');
const rows = Array.from({ length: 5000 }, (_, nth) => `S${nth} ${'0.5 '.repeat(36)}`).join('\n');
const large = `CGATS.17\nBEGIN_DATA_FORMAT\nSAMPLE_ID ${fields}\nEND_DATA_FORMAT\nBEGIN_DATA\n${rows}\nEND_DATA`;

/** How often a second something is done, best of three rounds. */
function perSecond(count: number, once: (nth: number) => unknown): number {
  let best = Infinity;
  for (let round = 0; round < 3; round += 1) {
    const start = performance.now();
    for (let nth = 0; nth < count; nth += 1) once(nth);
    best = Math.min(best, performance.now() - start);
  }
  return (count * 1000) / best;
}
const some = <T>(list: readonly T[], nth: number): T => list[nth % list.length] as T;

const difference = perSecond(100_000, (nth) => ciede2000([...some(labs, nth)], [...some(labs, nth + 1)]));
const row = (name: string, speed: number) => [name, speed, difference / speed] as const;
printTable(
  'Colour, in Node',
  ['', 'a second', 'costs × one ΔE00'],
  [
    row('ΔE00 of two colours', difference),
    row(
      'spectrum to Lab, D65/10°',
      perSecond(5000, (nth) => spectrumToLab10(some(spectra, nth))),
    ),
    row(
      'over-dye of two spectra',
      perSecond(5000, (nth) =>
        overDye(
          ground,
          [some(dyed, nth), some(dyed, nth + 1)].map((one) => ({ dyed: one, ground })),
        ),
      ),
    ),
    row(
      'spectrum from a Lab',
      perSecond(200, (nth) => reconstructFromLab(some(labs, nth), TEXTILE)),
    ),
    row(
      'area of a photo, a million pixels',
      perSecond(5, () => averagePatch(pixels, 'srgb')),
    ),
    row(
      'spectral file of 5000 samples',
      perSecond(2, () => readSpectralFile(large)),
    ),
  ],
);
