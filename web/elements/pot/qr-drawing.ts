import encodeQR from 'qr';
import { svg, type TemplateResult } from 'lit';

/** White around a code that readers need, in modules (ISO/IEC 18004). */
const QUIET = 4;

/** A text as a QR code, black on white whatever the view; a quarter of it may be stained and it still reads. */
export function qrDrawing(text: string): TemplateResult {
  const rows = encodeQR(text, 'raw', { ecc: 'quartile', border: QUIET });
  const path = rows.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return svg`<rect width="100%" height="100%" fill="#fff"></rect><path d=${path} fill="#000"></path>`;
}

/** Modules along one side of the drawing. */
export const qrSize = (text: string): number => encodeQR(text, 'raw', { ecc: 'quartile', border: QUIET }).length;
