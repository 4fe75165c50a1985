/** A channel below this is lifted a little when shaded, else black cloth would show no weave. Our choice. */
const SURFACE_SHINE = 0.03;

const toLinear = (v: number): number => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
const toScreen = (v: number): number => (v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055);

const WIDE = /^color\(display-p3 ([\d.]+) ([\d.]+) ([\d.]+)\)$/;

/** The three channels of `#rrggbb` or `color(display-p3 r g b)` in that space's linear light, 0–1; undefined for anything else. */
export function linearOf(hex: string): readonly [number, number, number] | undefined {
  const wide = WIDE.exec(hex.trim());
  if (wide) return [toLinear(Number(wide[1])), toLinear(Number(wide[2])), toLinear(Number(wide[3]))];
  const digits = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex.trim());
  if (!digits) return undefined;
  const channel = (i: number): number => toLinear(parseInt(digits[i] ?? '0', 16) / 255);
  return [channel(1), channel(2), channel(3)];
}

/**
 * A thread of the cloth, lit or in shadow. Shades of `k` and `-k` lie equally far from the colour in linear light, channel by
 * channel, so equal areas of both leave the mean where it was; where a channel has no room (white, pure yellow) both stay nearer.
 *
 * @param hex `#rrggbb` or `color(display-p3 r g b)`, the mean colour of the cloth.
 * @param k −1 to 1: share of the light added or taken away; 0 gives the colour itself.
 * @returns in the same notation; the input itself when it is no such colour.
 * @source transfer function: IEC 61966-2-1 (sRGB), which Display P3 shares.
 */
export function shade(hex: string, k: number): string {
  const linear = linearOf(hex);
  if (!linear) return hex;
  const channels = linear.map((c) => {
    const swing = Math.min(Math.abs(k) * (c + SURFACE_SHINE), c, 1 - c);
    return toScreen(c + Math.sign(k) * swing);
  });
  if (WIDE.test(hex.trim())) return `color(display-p3 ${channels.map((v) => Math.round(v * 1e4) / 1e4).join(' ')})`;
  const byte = (v: number): string =>
    Math.round(v * 255)
      .toString(16)
      .padStart(2, '0');
  return `#${channels.map(byte).join('')}`;
}
