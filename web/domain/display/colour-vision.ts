import { ciede2000 } from '../colour/ciede2000.ts';
import { SCREEN } from '../colour/conditions.ts';
import { asLab2, type Lab2, type Xyz } from '../colour/lab.ts';
import { whitePoint } from '../colour/spectrum-to-xyz.ts';
import { labToXyz, xyzToLab } from '../colour/xyz-lab.ts';

/** Ways in which one kind of cone is missing: the long, the middle, the short. */
export const COLOUR_VISIONS = ['protan', 'deutan', 'tritan'] as const;
export type ColourVision = (typeof COLOUR_VISIONS)[number];

type Rows = readonly [Xyz, Xyz, Xyz];

/**
 * How linear sRGB is seen without one kind of cone (severity 1).
 *
 * @source Machado, Oliveira & Fernandes 2009, IEEE Transactions on Visualization and Computer Graphics 15(6), 1291–1298,
 *   doi:10.1109/TVCG.2009.113, table of matrices. The tritan matrix is an approximation, as its authors say.
 */
const SEEN: Readonly<Record<ColourVision, Rows>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Linear sRGB to XYZ (D65, 2°). @source IEC 61966-2-1. */
const TO_XYZ: Rows = [
  [0.4123907992659595, 0.35758433938387796, 0.1804807884018343],
  [0.21263900587151036, 0.7151686787677559, 0.07219231536073371],
  [0.01933081871559185, 0.11919477979462599, 0.9505321522496606],
];
/** Its inverse. */
const FROM_XYZ: Rows = [
  [3.2409699419045213, -1.5373831775700935, -0.4986107602930033],
  [-0.9692436362808798, 1.8759675015077206, 0.04155505740717561],
  [0.05563007969699361, -0.20397695888897657, 1.0569715142428786],
];

const times = (rows: Rows, [x, y, z]: Xyz): Xyz => [
  rows[0][0] * x + rows[0][1] * y + rows[0][2] * z,
  rows[1][0] * x + rows[1][1] * y + rows[1][2] * z,
  rows[2][0] * x + rows[2][1] * y + rows[2][2] * z,
];

/**
 * A colour as somebody without one kind of cone tells it apart from others; nothing is cut to the screen's gamut.
 *
 * @returns Lab, D65/2°, for comparing with another simulated colour only: it is no claim about what anybody sees.
 */
export function seenBy(vision: ColourVision, lab: Lab2): Lab2 {
  const white = whitePoint(SCREEN.illuminant, SCREEN.observer);
  const scale = white[1];
  const [x, y, z] = labToXyz([lab[0], lab[1], lab[2]], white);
  const seen = times(TO_XYZ, times(SEEN[vision], times(FROM_XYZ, [x / scale, y / scale, z / scale])));
  return asLab2(xyzToLab([Math.max(0, seen[0]) * scale, Math.max(0, seen[1]) * scale, Math.max(0, seen[2]) * scale], white));
}

/** ΔE00 of two colours as somebody without one kind of cone tells them apart. */
export function differenceSeenBy(vision: ColourVision, one: Lab2, other: Lab2): number {
  const [a, b] = [seenBy(vision, one), seenBy(vision, other)];
  return ciede2000([a[0], a[1], a[2]], [b[0], b[1], b[2]]);
}
