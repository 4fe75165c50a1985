import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { contrast, lightnessOf, tokensOf } from './token-sheet.ts';
import type { View } from './token-sheet.ts';
import { filesBelow, ROOT } from './web-files.ts';

const sheet = readFileSync(join(ROOT, 'web/styles/tokens.css'), 'utf8');
const VIEWS: readonly View[] = ['paper', 'evening', 'print'];
const GROUNDS = ['--tg-ground', '--tg-surface', '--tg-well'];

describe('contrast', () => {
  test('black on white is 21, a grey on itself 1', () => {
    expect(contrast(0, 1)).toBeCloseTo(21, 10);
    expect(contrast(0.5, 0.5)).toBe(1);
  });

  test('#767676 on white is 4.54, the well-known edge of AA', () => {
    const linear = ((0x76 / 255 + 0.055) / 1.055) ** 2.4;
    expect(contrast(Math.cbrt(linear), 1)).toBeCloseTo(4.54, 2);
  });
});

describe.each(VIEWS)('tokens, %s', (view) => {
  const tokens = tokensOf(sheet, view);
  const between = (a: string, b: string) => contrast(lightnessOf(tokens, a, view), lightnessOf(tokens, b, view));

  test.each(
    GROUNDS.flatMap(
      (ground) =>
        [
          ['--tg-ink', ground],
          ['--tg-ink-quiet', ground],
        ] as const,
    ),
  )('%s on %s can be read', (ink, ground) => {
    expect(between(ink, ground)).toBeGreaterThanOrEqual(4.5);
  });

  test('ink on an inverse ground and on the judging surround can be read', () => {
    expect(between('--tg-ink-inverse', '--tg-inverse')).toBeGreaterThanOrEqual(4.5);
    expect(between('--tg-ink-judging', '--tg-judging')).toBeGreaterThanOrEqual(4.5);
  });

  test.each(GROUNDS)('an edge and the focus outline are seen on %s', (ground) => {
    expect(between('--tg-edge', ground)).toBeGreaterThanOrEqual(3);
    expect(between('--tg-focus', ground)).toBeGreaterThanOrEqual(3);
  });
});

describe('greys', () => {
  test('the look: paper 0.96 under 0.22, evening 0.24 under 0.90', () => {
    const tokens = tokensOf(sheet, 'paper');
    const at = (name: string, view: View) => lightnessOf(tokens, name, view);
    expect([at('--tg-ground', 'paper'), at('--tg-ink', 'paper')]).toEqual([0.96, 0.22]);
    expect([at('--tg-ground', 'evening'), at('--tg-ink', 'evening')]).toEqual([0.24, 0.9]);
  });

  test('the judging surround is L* 50', () => {
    const luminance = lightnessOf(tokensOf(sheet, 'paper'), '--tg-judging', 'paper') ** 3;
    expect(116 * Math.cbrt(luminance) - 16).toBeCloseTo(50, 0);
  });

  test('every colour written in the styles has chroma 0', () => {
    const written = filesBelow('web/styles', /\.css$/).flatMap(({ path, text }) =>
      [...text.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/#[0-9a-f]{3,8}\b|\b(?:oklch|oklab|lab|lch|rgba?|hsla?|color)\([^)]*\)/gi)].map(
        ([colour]) => `${path} ${colour}`,
      ),
    );
    expect(written.length).toBeGreaterThan(10);
    expect(written.filter((one) => !/ oklch\([\d.]+ 0 0\)$/.test(one))).toEqual([]);
  });

  test('a grey is named after its lightness', () => {
    for (const [name, value] of tokensOf(sheet, 'paper')) {
      const named = /^--tg-grey-(\d+)$/.exec(name)?.[1];
      if (named) expect(Math.round(Number(/oklch\(([\d.]+)/.exec(value)?.[1]) * 100), name).toBe(Number(named));
    }
  });
});
