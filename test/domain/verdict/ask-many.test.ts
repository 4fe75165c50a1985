import { describe, expect, test } from 'vitest';
import { TEXTILE } from '../../../web/domain/colour/conditions.ts';
import { swatchFromLab } from '../../../web/domain/colour/swatch-colour.ts';
import { askColour } from '../../../web/domain/verdict/ask.ts';
import { askMany } from '../../../web/domain/verdict/ask-many.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const { base, colours } = await demoNotebook();

describe('askMany', () => {
  test.each([
    ['hanse-towns', 1370, 'wool'],
    ['england', 1665, undefined],
    ['baltic-shore', 920, 'linen'],
  ] as const)('gives for each colour the verdict that asking for it alone gives: %s, %s, %s', (region, year, fibre) => {
    const question = { region, span: { from: year, to: year }, dyedHere: false, tolerance: 6, ...(fibre && { fibre }) };
    const ask = askMany(base, colours, question);
    const verdicts = new Set<string>();
    for (let l = 20; l <= 80; l += 25)
      for (let a = -20; a <= 45; a += 21)
        for (let b = -20; b <= 60; b += 27) {
          const swatch = swatchFromLab([l, a, b], TEXTILE, 'lab');
          if (!swatch.ok) continue;
          const alone = askColour(base, colours, { ...question, colour: { kind: 'swatches', swatches: [swatch.value] } });
          const brief = ask(swatch.value.lab10);
          expect(brief.verdict, `${l} ${a} ${b}`).toBe(alone.verdict);
          expect(brief.best?.deltaE00).toBe(alone.candidates[0]?.deltaE00);
          verdicts.add(brief.verdict);
        }
    expect(verdicts.size).toBeGreaterThan(1);
  });
});
