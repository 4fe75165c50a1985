import { describe, expect, test } from 'vitest';
import { inflectName } from '../../../web/domain/naming/inflect-name.ts';

describe('inflectName', () => {
  test.each([
    ['Madder', undefined, ['Madders']],
    ['Birch leaf', undefined, ['Birch leaves']],
    ['Persian berries', undefined, ['Persian berry']],
    ['oak galls', undefined, ['oak gall']],
    ['Bilberry', 'en', ['Bilberries']],
    ['Kermes', undefined, []],
    ['Eucalyptus', undefined, []],
    ['Waid', 'de', ['Waids']],
    ['Färberröte', 'de', ['Faerberroete']],
    ['vermiculum', 'la', ['vermiculi', 'vermiculo']],
    ['warentia', 'la', ['warentiae', 'warentiam']],
    ['garance', 'fr', []],
  ])('%s (%s) → %j', (name, lang, forms) => {
    expect(inflectName(name, lang)).toEqual(forms);
  });
});
