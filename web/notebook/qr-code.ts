import encodeQR from 'qr';

/** A QR code as one outline: a unit is one module, the quiet zone included. */
export interface QrCode {
  readonly size: number;
  /** SVG path data of the dark modules. */
  readonly path: string;
}

/** Light modules around the code. @source ISO/IEC 18004: a quiet zone of four modules on each side. */
const QUIET = 4;

/**
 * A text as a QR code with error correction Q: a quarter of it may be stained and it still reads.
 *
 * @returns undefined for a text too long for any code.
 * @source ISO/IEC 18004, by the library `qr`; read back by another library in the tests.
 */
export function qrCode(text: string): QrCode | undefined {
  let rows: readonly (readonly boolean[])[];
  try {
    rows = encodeQR(text, 'raw', { ecc: 'quartile', border: QUIET });
  } catch {
    return undefined;
  }
  const path = rows.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return { size: rows.length, path };
}
