import { describe, expect, test } from 'vitest';
import { FOUND } from '../../web/domain/laboratory/findings.ts';
import { COMPOUNDS } from '../../web/domain/laboratory/tables/compounds.ts';
import { MARKER_RATIOS } from '../../web/domain/laboratory/tables/marker-ratios.ts';
import { LAB_METHODS } from '../../web/domain/laboratory/tables/methods.ts';
import { addressOf, readAddress } from '../../web/notebook/address.ts';
import { labOfSettings, settingsOfLab } from '../../web/notebook/lab-address.ts';
import type { TypedLab } from '../../web/notebook/typed-lab.ts';
import { fc } from '../helpers/property.ts';

const compound = fc.constantFrom(...COMPOUNDS.map(({ name }) => name), 'something unheard of', 'é & + #?');
const chance = fc.integer({ min: 0, max: 100 }).map((one) => one / 100);
const report: fc.Arbitrary<TypedLab> = fc.record(
  {
    findings: fc.uniqueArray(fc.record({ compound, found: fc.constantFrom(...FOUND) }), { maxLength: 6, selector: (one) => one.compound }),
    ratios: fc.uniqueArray(fc.record({ ratio: fc.constantFrom(...MARKER_RATIOS.map(({ name }) => name)), value: chance }), {
      maxLength: 2,
      selector: ({ ratio }) => ratio,
    }),
    method: fc.constantFrom(...LAB_METHODS),
    elseAbsent: fc.constant(true as const),
    region: fc.constantFrom('hanse-towns', 'Low Countries'),
    when: fc.constantFrom('c. 1370', '880–960'),
    figures: fc.record({ gone: fc.dictionary(compound, chance, { minKeys: 1, maxKeys: 2 }) }),
  },
  { requiredKeys: ['findings', 'ratios', 'method'] },
);
const sorted = (lab: TypedLab) => ({ ...lab, findings: [...lab.findings].sort((a, b) => (a.compound < b.compound ? -1 : 1)) });

describe('a report in an address', () => {
  test('comes back as it was, by way of the address itself', () => {
    fc.assert(
      fc.property(report, (lab) => {
        const address = addressOf({ view: 'ask', id: 'laboratory', settings: settingsOfLab(lab) });
        const read = readAddress(address);
        expect(read.id).toBe('laboratory');
        expect(sorted(labOfSettings(read.settings))).toEqual(sorted(lab));
      }),
    );
  });

  test('what is no number, no chance or no method is left out', () => {
    expect(labOfSettings({ ratios: 'a:b|x;carminic share|-1', method: 'magic', gone: 'luteolin|2', reach: 'luteolin|magic|0.5' })).toEqual({
      findings: [],
      ratios: [],
      method: 'hplc-dad',
    });
  });
});
