import { describe, expect, test } from 'vitest';
import { findNames } from '../../../web/domain/naming/find-names.ts';
import { nameDictionary } from '../../../web/domain/naming/name-dictionary.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { aNote } from '../../helpers/a-notebook.ts';
import { signsPassed } from '../../helpers/signs-passed.ts';
import { fc } from '../../helpers/property.ts';

const dyestuffs: Readonly<Record<string, string>> = {
  madder: 'title: Madder\nlatin: Rubia tinctorum\nnames: [{name: Krapp, lang: de}, {name: mædere, lang: ang}]',
  'wild-madder': 'title: Wild madder\nlatin: Rubia peregrina',
  woad: 'title: Woad\nlatin: Isatis tinctoria\nnames: [{name: guède, lang: fr}]',
  indigo: 'title: Indigo\nlatin: Indigofera tinctoria\nnames: [{name: nīl, lang: hi}]',
  weld: "title: Weld\nlatin: Reseda luteola\nnames: [dyer's rocket]",
  logwood: 'title: Logwood',
  lac: 'title: Lac',
  kermes: 'title: Kermes\nnames: [grain, grain of Portugal]',
  'st-johns-wort': "title: St John's wort",
  'alder-bark': 'title: Alder bark\nnames: ["alder, birch and buckthorn bark"]',
  heather: 'title: Heather',
  'oak-galls': 'title: Oak galls\nnames: [galls]',
  saffron: 'title: Saffron',
};
const dictionary = nameDictionary(
  Object.entries(dyestuffs).map(([id, yaml]) => parseNote(`dyestuffs/${id}.md`, aNote(`kind: dyestuff\n${yaml}`)).value),
);
const found = (text: string) => findNames(text, dictionary).map((one) => `${one.text}=${one.candidates.join('|')}`);

describe('findNames', () => {
  test('finds a name whatever its case and accents', () => {
    expect(found('MADDER, guede, GUÈDE, krapp; Maedere')).toEqual([
      'MADDER=madder',
      'guede=woad',
      'GUÈDE=woad',
      'krapp=madder',
      'Maedere=madder',
    ]);
  });

  test('lets the longest name win', () => {
    expect(found('wild madder and grain of Portugal')).toEqual(['wild madder=wild-madder', 'grain of Portugal=kermes']);
  });

  test('finds abbreviated Latin with and without its space and stop, and both genera of a shared letter', () => {
    expect(found('R. tinctorum, R.tinctorum, R tinctorum')).toHaveLength(3);
    expect(found('I. tinctoria')).toEqual(['I. tinctoria=woad|indigo']);
  });

  test('finds words apart, together, with hyphens, over a line break and in emphasis', () => {
    expect(found("dyer's\nrocket, dyers' rocket, Dyer’s-rocket")).toEqual([
      "dyer's\nrocket=weld",
      "dyers' rocket=weld",
      'Dyer’s-rocket=weld',
    ]);
    expect(found('log-wood, log wood, *Rubia* *tinctorum*, > quoted wild\n> madder')).toEqual([
      'log-wood=logwood',
      'log wood=logwood',
      'Rubia* *tinctorum=madder',
      'wild\n> madder=wild-madder',
    ]);
    expect(found('St. John’s wort, Saint Johns wort, St John’s-wort')).toHaveLength(3);
  });

  test('finds plurals, possessives and what is shortened before it', () => {
    expect(found("madders, madder's red, l'indigo, d’indigo")).toEqual([
      'madders=madder',
      'madder=madder',
      'indigo=indigo',
      'indigo=indigo',
    ]);
  });

  test('does not join a name over a full stop, a list or a paragraph', () => {
    expect(found('It was wild. Madder came later.')).toEqual(['Madder=madder']);
    expect(found('- wild\n- madder')).toEqual(['madder=madder']);
    expect(found('wild\n\nmadder')).toEqual(['madder=madder']);
    expect(found('wild, madder')).toEqual(['madder=madder']);
    expect(found('wild — madder')).toEqual(['madder=madder']);
  });

  test('lets commas stand in a name that has them', () => {
    expect(found('alder, birch and buckthorn bark')).toEqual(['alder, birch and buckthorn bark=alder-bark']);
  });

  test.each([
    'welded and welding',
    'weld-\ned',
    'lacquer, lace, black',
    'madders-less',
    'weldless',
    'snake_weld_case',
    'O’Weld',
    'woad2 2woad',
    'Krappwurzel',
    'indigos_1',
  ])('never finds a name inside another word: %j', (text) => {
    expect(found(text).filter((one) => !one.startsWith('madders='))).toEqual([]);
  });

  test('never finds a name inside another word, whatever letters stand against it', () => {
    const letter = fc.constantFrom('a', 'b', 'z', 'ä', 'ø', 'ß', 'ж', 'ω', '中', '٣', '7', '𝒜');
    const names = fc.constantFrom('madder', 'Woad', 'WELD', 'lac', 'nīl', 'guède');
    fc.assert(
      fc.property(names, fc.string({ unit: letter, maxLength: 3 }), fc.string({ unit: letter, maxLength: 3 }), (name, before, after) => {
        const text = `“${before}${name}${after}”, they said`;
        const word = `${before}${name}${after}`;
        for (const one of findNames(text, dictionary)) expect(text.slice(one.start, one.end)).toBe(word);
      }),
    );
  });

  test('gives offsets that cut out what it found, in order and without overlap', () => {
    const piece = fc.constantFrom(
      'madder',
      'wild',
      ' ',
      '-',
      '’',
      '\n',
      'grain',
      'of Portugal',
      '🐚',
      'guède',
      '.',
      'R.',
      'tinctorum',
      '*',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const text = pieces.join('');
        let last = 0;
        for (const { start, end, text: cut } of findNames(text, dictionary)) {
          expect(start).toBeGreaterThanOrEqual(last);
          expect(text.slice(start, end)).toBe(cut);
          last = end;
        }
      }),
    );
  });

  test.each([
    'He was madder than a hatter.',
    'They grew maddest and the boys madder still.',
    'A grain of sand.',
    'The grain of the wood runs straight.',
    'They will weld the hinge.',
    'The weld on the fire basket is not pretty.',
    'Heather signed for the parcel.',
    'We went to Saffron Walden.',
    'It galls me.',
  ])('knows another sense by the words around: %s', (text) => {
    expect(found(text)).toEqual([]);
  });

  test.each([
    ['More madder than weld went in.', ['madder=madder', 'weld=weld']],
    ['We will add the weld on Friday.', ['weld=weld']],
    ['Cloth dyed in grain.', ['grain=kermes']],
    ['Heather and alum give a yellow.', ['Heather=heather']],
    ['Madder still grows by the wall.', ['Madder=madder']],
    ['The weld on alumed wool faded.', ['weld=weld']],
    ['Galls blacken iron.', ['Galls=oak-galls']],
  ])('keeps the dyestuff in: %s', (text, names) => {
    expect(found(text)).toEqual(names);
  });

  test('takes a name with its own accents, or in emphasis, for the name; doubts it as an ordinary word', () => {
    expect(found('The result was nil. It was nīl. It was *nil*.')).toEqual(['nīl=indigo', 'nil=indigo']);
    expect(findNames('We counted nil here', dictionary)[0]?.doubt).toBe('ordinary-word');
    expect(findNames('The dyer counted nil here', dictionary)[0]?.doubt).toBeUndefined();
  });

  test.each(['wild madder log-', "grain of l'", 'R. ', 'dyer’s\n', 'madder than ', '____', 'a-', '*_'])(
    'takes work linear in the text, also where every word begins a name: %j',
    (unit) => {
      const signsOf = (times: number) => signsPassed(() => void findNames(unit.repeat(times), dictionary));
      // Eight times the text: quadratic work would be sixty-four times as much.
      expect(signsOf(8_000)).toBeLessThanOrEqual(8.8 * signsOf(1_000));
    },
  );
});
