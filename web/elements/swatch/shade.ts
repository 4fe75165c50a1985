/** A channel below this is lifted a little when shaded, else black cloth would show no weave. Our choice. */
const SURFACE_SHINE = 0.03;

const toLinear = (v: number): number => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
const toScreen = (v: number): number => (v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055);

/** The three channels of `#rrggbb` in linear light, 0–1; undefined when it is no such colour. */
export function linearOf(hex: string): readonly [number, number, number] | undefined {
  const digits = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex.trim());
  if (!digits) return undefined;
  const channel = (i: number): number => toLinear(parseInt(digits[i] ?? '0', 16) / 255);
  return [channel(1), channel(2), channel(3)];
}

/**
 * A thread of the cloth, lit or in shadow. Shades of `k` and `-k` lie equally far from the colour in linear light, channel by
 * channel, so equal areas of both leave the mean where it was; where a channel has no room (white, pure yellow) both stay nearer.
 *
 * @param hex `#rrggbb`, the mean colour of the cloth.
 * @param k −1 to 1: share of the light added or taken away; 0 gives the colour itself.
 * @returns `#rrggbb`; the input itself when it is no such colour.
 * @source transfer function: IEC 61966-2-1 (sRGB).
 */
export function shade(hex: string, k: number): string {
  const linear = linearOf(hex);
  if (!linear) return hex;
  const channels = linear.map((c) => {
    const swing = Math.min(Math.abs(k) * (c + SURFACE_SHINE), c, 1 - c);
    const byte = Math.round(toScreen(c + Math.sign(k) * swing) * 255);
    return byte.toString(16).padStart(2, '0');
  });
  return `#${channels.join('')}`;
}
