import { svg, type TemplateResult } from 'lit';
import { qrCode } from '../../notebook/qr-code.ts';

/** A text as a QR code, black on white whatever the view. */
export const qrDrawing = (text: string): TemplateResult =>
  svg`<rect width="100%" height="100%" fill="#fff"></rect><path d=${qrCode(text)?.path ?? ''} fill="#000"></path>`;

/** Modules along one side of the drawing. */
export const qrSize = (text: string): number => qrCode(text)?.size ?? 0;
