import { describe, expect, test } from 'vitest';
import { dyeNames } from '../../../web/domain/naming/dye-names.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { aNote } from '../../helpers/a-notebook.ts';

const names = (yaml: string, id = 'x') =>
  dyeNames(parseNote(`dyestuffs/${id}.md`, aNote(`kind: dyestuff\n${yaml}`)).value).map(({ spelling, form }) => `${spelling} (${form})`);

describe('dyeNames', () => {
  test('gives title, id, names and Latin, and abbreviates the genus', () => {
    const all = names('title: Madder\nlatin: Rubia tinctorum\nnames: [{name: Krapp, lang: de}]', 'madder');
    expect(all).toEqual(
      expect.arrayContaining([
        'Madder (listed)',
        'madder (listed)',
        'Krapp (listed)',
        'Rubia tinctorum (listed)',
        'R. tinctorum (abbreviated)',
      ]),
    );
  });

  test('speaks of a whole genus where the note does, and never of one where it does not', () => {
    expect(names('title: Orchil\nlatin: Roccella spp.')).toContain('Roccella (abbreviated)');
    expect(names('title: Madder\nlatin: Rubia tinctorum')).not.toContain('Rubia (abbreviated)');
  });

  test('does not abbreviate an English name of two words', () => {
    const abbreviated = names('title: Canada goldenrod\nnames: [Japanese indigo, Persian berries, Aleppo galls]').filter((one) =>
      one.includes('abbreviated'),
    );
    expect(abbreviated).toEqual([]);
  });

  test('leaves a Latin name with words behind it whole', () => {
    expect(
      names('title: Saxon blue\nlatin: ["Indigofera tinctoria, dissolved in vitriol"]').filter((one) => one.includes('tinctoria')),
    ).toEqual(['Indigofera tinctoria, dissolved in vitriol (listed)']);
  });

  test('writes woods together and apart', () => {
    expect(names('title: Logwood\npart: heartwood\nnames: [brazil]')).toEqual(
      expect.arrayContaining(['Log wood (respelt)', 'brazilwood (respelt)']),
    );
  });
});
