/** Points of the picture for each unit of the drawing (our choice: sharp on a printed page's width). */
const POINTS_A_UNIT = 2;

/**
 * A drawing in points.
 *
 * @param size of the drawing, in its own units.
 * @param pointsAUnit points of the picture for each unit.
 * @returns undefined where the browser cannot draw it, as when it is too long for a canvas.
 */
export async function drawnAsPng(
  svg: string,
  { width, height }: { readonly width: number; readonly height: number },
  pointsAUnit = POINTS_A_UNIT,
): Promise<Blob | undefined> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = Object.assign(document.createElement('canvas'), {
      width: Math.round(width * pointsAUnit),
      height: Math.round(height * pointsAUnit),
    });
    const pen = canvas.getContext('2d');
    if (!pen) return undefined;
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve) => canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/png'));
  } catch {
    return undefined;
  } finally {
    URL.revokeObjectURL(address);
  }
}
