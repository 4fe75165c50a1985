import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { qrCode } from '../../web/notebook/qr-code.ts';

/** The code as a printer lays it down: so many points a module, read by another library than the one that made it. */
function readBack(text: string, points = 4): string | undefined {
  const code = qrCode(text);
  if (!code) return undefined;
  const side = code.size * points;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x = '', y = ''] of code.path.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let dy = 0; dy < points; dy += 1)
      for (let dx = 0; dx < points; dx += 1) {
        const at = ((Number(y) * points + dy) * side + Number(x) * points + dx) * 4;
        pixels.fill(0, at, at + 3);
      }
  return jsQR(pixels, side, side)?.data;
}

describe('qrCode', () => {
  test.each(['https://museum.example/board/#kermes-alum-wool', 'https://museum.example/ausstellung/gefärbt/?q=1#wq24-001', 'WQ24-001-1'])(
    '%s is read back by another library',
    (text) => expect(readBack(text)).toBe(text),
  );

  test('leaves four light modules round it, and gives up on what no code can hold', () => {
    const code = qrCode('https://museum.example/');
    const columns = [...(code?.path ?? '').matchAll(/M(\d+) /g)].map(([, x]) => Number(x));
    expect(Math.min(...columns)).toBe(4);
    expect(Math.max(...columns)).toBe((code?.size ?? 0) - 5);
    expect(qrCode('a'.repeat(4000))).toBeUndefined();
  });
});
