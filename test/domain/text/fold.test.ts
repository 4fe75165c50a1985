import { describe, expect, test } from 'vitest';
import { fold } from '../../../web/domain/text/fold.ts';
import { fc } from '../../helpers/property.ts';

describe('a name as it is compared', () => {
  test.each([
    ['Färberröte', 'farberrote'],
    ['FÄRBERRÖTE', 'farberrote'],
    ['Œillet à la graine', 'oeillet a la graine'],
    ['Þistill', 'thistill'],
    ['weißes  Garn', 'weisses garn'],
    ['Dyer’s–greenweed', 'dyer’s greenweed'],
    ['oak_gall - black', 'oak gall black'],
    ['  Weld\t', 'weld'],
    ['ﬁne wool', 'fine wool'],
    ['', ''],
  ])('%j is compared as %j', (name, compared) => {
    expect(fold(name)).toBe(compared);
  });

  test('however its accents are spelt, and folded twice as once', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (name) => {
        const compared = fold(name);
        expect(fold(name.normalize('NFD'))).toBe(fold(name.normalize('NFC')));
        expect(fold(compared)).toBe(compared);
      }),
    );
  });

  test('plain letters and signs as any others', () => {
    // A mark that folding takes away leads a plain name around the short way.
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme-ascii' }), (name) => {
        const folded = fold(`${name}a\u0301`);
        expect(folded.replace(/a$/, '').trim()).toBe(fold(name));
      }),
    );
  });
});
