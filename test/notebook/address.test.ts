import { describe, expect, test } from 'vitest';
import {
  addressOf,
  comparedOfAddress,
  questionOf,
  readAddress,
  settingsOf,
  settingsOfCompared,
  type TypedComparison,
  VIEWS,
} from '../../web/notebook/address.ts';
import { fc, runs } from '../helpers/property.ts';

describe('readAddress and addressOf', () => {
  test('an address read back is the same place', () => {
    const settings = fc.dictionary(
      fc.stringMatching(/^[a-z][a-z-]{0,8}$/).filter((key) => !['__proto__', 'constructor'].includes(key)),
      fc.string({ minLength: 1, maxLength: 30, unit: 'grapheme' }).filter((text) => !text.includes('+')),
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...VIEWS),
        fc.option(
          fc.string({ minLength: 1, maxLength: 20 }).filter((id) => !id.includes('+')),
          { nil: undefined },
        ),
        settings,
        (view, id, given) => {
          const place = { view, ...(id === undefined ? {} : { id }), settings: given };
          expect(readAddress(addressOf(place))).toEqual(place);
        },
      ),
      runs(300),
    );
  });
  test('nothing that can be typed behind # breaks it', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (hash) => {
        expect(VIEWS).toContain(readAddress(`#${hash}`).view);
      }),
    );
    expect(readAddress('#/palette?when=%E0%A4%A')).toMatchObject({ view: 'palette', settings: { when: '%E0%A4%A' } });
  });
  test('a question keeps its parts', () => {
    const question = {
      colour: '#8f3b2e',
      region: 'england',
      when: 'c. 1370',
      fibre: 'wool',
      wearer: 'burgher',
      dyedHere: true,
      tolerance: '4',
    };
    expect(questionOf(readAddress(addressOf({ view: 'ask', settings: settingsOf(question) })))).toEqual(question);
  });

  test('a comparison keeps both sides; of two notebooks there is one place, date and wearer', () => {
    const read = (comparison: TypedComparison) =>
      comparedOfAddress(readAddress(addressOf({ view: 'palette', settings: settingsOfCompared(comparison) })));
    const [before, now] = [
      { region: 'england', when: '1370', wearer: 'burgher' },
      { region: 'zeeland', when: 'c. 1400' },
    ];
    expect(read({ before, now, withOther: false })).toEqual({ before, now, withOther: false });
    expect(read({ before, now, withOther: true })).toEqual({ before: now, now, withOther: true });
    expect(comparedOfAddress(readAddress('#/palette?region=england&when=1370'))).toBeUndefined();
  });
});
