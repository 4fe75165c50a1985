import type { RgbSpace } from '../../domain/colour/linear-rgb.ts';
import type { Area } from './photo-view.ts';

/** A photo as it was decoded, upright. */
export async function decodePhoto(file: Blob): Promise<ImageBitmap | undefined> {
  try {
    return await createImageBitmap(file);
  } catch {
    return undefined;
  }
}

/** Longest side of the shown picture, in pixels; colours are read from the photo itself. */
const SHOWN = 1200;

/** Draws the photo for looking at. */
export function drawPhoto(canvas: HTMLCanvasElement, photo: ImageBitmap): void {
  const scale = Math.min(1, SHOWN / Math.max(photo.width, photo.height));
  canvas.width = Math.max(1, Math.round(photo.width * scale));
  canvas.height = Math.max(1, Math.round(photo.height * scale));
  canvas.getContext('2d')?.drawImage(photo, 0, 0, canvas.width, canvas.height);
}

/** Most pixels read from one area: single pixels of a larger one are taken, evenly, none blended. */
const MOST_PIXELS = 400_000;

/**
 * The photo's own pixels in an area.
 *
 * @param space in which they are read: the photo's, so that a clipped channel is seen as one.
 */
export function pixelsIn(photo: ImageBitmap, { x, y, width, height }: Area, space: RgbSpace): Uint8ClampedArray {
  const [left, top] = [Math.floor(x * photo.width), Math.floor(y * photo.height)];
  const wide = Math.max(1, Math.min(photo.width - left, Math.round(width * photo.width)));
  const high = Math.max(1, Math.min(photo.height - top, Math.round(height * photo.height)));
  const scale = Math.min(1, Math.sqrt(MOST_PIXELS / (wide * high)));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.floor(wide * scale));
  canvas.height = Math.max(1, Math.floor(high * scale));
  const context = canvas.getContext('2d', { colorSpace: space, willReadFrequently: true });
  if (!context) return new Uint8ClampedArray();
  context.imageSmoothingEnabled = false;
  context.drawImage(photo, left, top, wide, high, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height, { colorSpace: space }).data;
}
