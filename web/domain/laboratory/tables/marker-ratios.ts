import type { Basis } from '../compound.ts';

/** A ratio a laboratory may report, and where it lies for each dyestuff that has it. */
export interface MarkerRatio {
  /** Its name: `a:b`, or `… share` for a part of a family. */
  readonly name: string;
  readonly above: readonly string[];
  readonly below: readonly string[];
  /** `times`: compared by factors (log 10). `share`: 0–1, compared by differences. */
  readonly scale: 'times' | 'share';
  /** How far outside its range a dyestuff still strays, on the scale: standard deviation. */
  readonly spread: number;
  readonly ranges: readonly { readonly dye: string; readonly low: number; readonly high: number; readonly basis: Basis }[];
}

const insects: Basis = { source: 'Wouters & Verhecken 1989, at 275 nm; Lech et al. 2016', fromMemory: true };
const judged: Basis = { source: 'our judgement' };
const madders: Basis = {
  source: 'Karapanagiotis et al. 2021: above about 2.2 read as R. tinctorum; the ends of the range are our judgement',
};
const INSECTS = ['carminic acid', 'kermesic acid', 'flavokermesic acid', 'dcII'];

/** The ratios the tables know. */
export const MARKER_RATIOS: readonly MarkerRatio[] = [
  {
    name: 'alizarin:purpurin',
    above: ['alizarin'],
    below: ['purpurin'],
    scale: 'times',
    // Dyeing heat, extraction and age move it: half a power of ten is not rare. Our judgement.
    spread: 0.3,
    ranges: [
      { dye: 'madder', low: 0.8, high: 15, basis: madders },
      { dye: 'wild-madder', low: 0.03, high: 0.5, basis: madders },
      { dye: 'ladys-bedstraw', low: 0.02, high: 0.4, basis: madders },
      { dye: 'indian-madder', low: 0.01, high: 0.2, basis: judged },
      {
        dye: 'relbunium',
        low: 0.005,
        high: 0.05,
        basis: { source: 'Wouters & Rosario-Chirinos 1992: no alizarin; the figure is our judgement' },
      },
      { dye: 'chay-root', low: 20, high: 200, basis: judged },
      { dye: 'synthetic-alizarin', low: 50, high: 1000, basis: judged },
    ],
  },
  {
    name: 'carminic share',
    above: ['carminic acid'],
    below: INSECTS,
    scale: 'share',
    spread: 0.02,
    ranges: [
      { dye: 'american-cochineal', low: 0.94, high: 0.98, basis: insects },
      { dye: 'armenian-cochineal', low: 0.95, high: 0.99, basis: insects },
      { dye: 'polish-cochineal', low: 0.62, high: 0.88, basis: insects },
      { dye: 'kermes', low: 0, high: 0.01, basis: insects },
    ],
  },
  {
    name: 'kermesic share',
    above: ['kermesic acid', 'flavokermesic acid'],
    below: INSECTS,
    scale: 'share',
    spread: 0.015,
    ranges: [
      { dye: 'american-cochineal', low: 0.004, high: 0.022, basis: insects },
      { dye: 'armenian-cochineal', low: 0.01, high: 0.04, basis: insects },
      { dye: 'polish-cochineal', low: 0.12, high: 0.38, basis: insects },
      { dye: 'kermes', low: 0.98, high: 1, basis: insects },
    ],
  },
  {
    name: 'dcII share',
    above: ['dcII'],
    below: INSECTS,
    scale: 'share',
    spread: 0.004,
    ranges: [
      { dye: 'american-cochineal', low: 0.014, high: 0.038, basis: insects },
      { dye: 'armenian-cochineal', low: 0.001, high: 0.012, basis: insects },
      { dye: 'polish-cochineal', low: 0, high: 0.006, basis: judged },
    ],
  },
  {
    name: 'genistein:luteolin',
    above: ['genistein'],
    below: ['luteolin'],
    scale: 'times',
    spread: 0.4,
    ranges: [
      { dye: 'dyers-greenweed', low: 0.1, high: 1.2, basis: { source: 'CORDIS result 38862: 9:86:5 to 48:42:9 by process' } },
      { dye: 'weld', low: 0.0005, high: 0.005, basis: judged },
    ],
  },
];

/** The ratio of a name. */
export const ratioNamed = (name: string): MarkerRatio | undefined => MARKER_RATIOS.find((one) => one.name === name);
