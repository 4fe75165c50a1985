import { keysOf } from '../../web/domain/note/note-keys.ts';
import { NOTE_KINDS } from '../../web/domain/note/note.ts';
import type { NoteKind } from '../../web/domain/note/note.ts';
import type { KeyTable, Shape } from '../../web/domain/note/shape.ts';
import type { PlainValue } from '../../web/domain/note/yaml-text.ts';
import { chance } from './random.ts';
import type { Chance } from './random.ts';
import { writeYaml } from './write-yaml.ts';
import { fc } from './property.ts';

/** A note made up by chance: its file and what its front matter says. */
export interface MadeNote {
  readonly seed: number;
  readonly kind: NoteKind;
  readonly text: string;
  readonly front: { readonly [key: string]: PlainValue };
}

/** Words that are easy to write wrongly in YAML. */
export const AWKWARD_WORDS: readonly string[] = [
  'plain words',
  'madder',
  'a: b',
  'a # b',
  '# not a comment',
  "it's",
  'she said "so"',
  'both \'kinds\' of "quote"',
  'yes',
  'no',
  'null',
  '~',
  'true',
  '12',
  '0700',
  '1e3',
  '-5',
  '.5',
  '0x1F',
  '- dash',
  '? ask',
  '{ brace',
  '[ bracket',
  'a, b',
  'a]b',
  'ends with:',
  ':starts',
  '& amp',
  '* star',
  '! mark',
  '| pipe',
  '> more',
  '% percent',
  '@ at',
  '` tick',
  '---',
  '...',
  'C:\\path\\file',
  'tab\there',
  'ünïcödé',
  '茜',
  '🧶 wool',
  'κόκκινο',
  '\u00a0nbsp',
  'line sep\u2028inside',
  'bell\u0007',
  'two\nlines',
  'three\n\nlines here\n',
  ' leading',
  'trailing ',
  '\nfirst line empty',
  'x'.repeat(200),
  'http://a.b/c#d',
  '<<',
  '__proto__',
];

const DATES = ['c. 1350', '1290–1350', 'late 9th century', '1180s', 'before 1000', '12XX', '1405-10', 'Viking age'];
const IDS = ['madder', 'weld', 'alum', 'wool', 'england', 'hanse-towns', 'noble', 'madder-alum-wool'];

/** A value that fits a shape. */
function aValue(shape: Shape<unknown>, key: string, dice: Chance, depth: number): PlainValue {
  if (shape.list && !dice.oneIn(4)) {
    const one: Shape<unknown> = { ...shape, list: false };
    return Array.from({ length: dice.below(4) }, () => aValue(one, key, dice, depth + 1));
  }
  switch (shape.form) {
    case 'word':
      return dice.pick(shape.words ?? ['x']);
    case 'yes-no':
      return dice.oneIn(2);
    case 'number':
      return dice.below(12) + 1;
    case 'reference':
      return dice.pick(IDS);
    case 'date':
      return dice.pick(DATES);
    case 'citation':
      return dice.pick(['cardon2007', 'cardon2007, p. 3', 'rosetti1548, ch. 2, p. 14']);
    case 'amount':
      return dice.pick(['15 %', '3–5 g/L', '2 oz', 'a handful']);
    case 'mass':
      return dice.pick(['50 g', '0.5 kg', '2 oz']);
    case 'hex':
      return '#8a2b2b';
    case 'observer':
      return 10;
    case 'numbers':
      return key === 'point' ? [54.5, 10.25] : [41.2, 38.5, 24.1];
    case 'map':
      return aMap(shape.keys ?? {}, dice, depth + 1);
    default:
      return dice.pick(AWKWARD_WORDS);
  }
}

function aMap(table: KeyTable, dice: Chance, depth: number): { readonly [key: string]: PlainValue } {
  const colourKeys = 'lab' in table ? [dice.pick(['lab', 'hex', 'xyz']), 'illuminant', 'observer', 'by'] : undefined;
  const keys = (colourKeys ?? Object.keys(table)).filter(
    (key) => table[key]?.needed === true || colourKeys || dice.oneIn(depth > 2 ? 4 : 2),
  );
  return Object.fromEntries(keys.flatMap((key) => (table[key] ? [[key, aValue(table[key], key, dice, depth)]] : [])));
}

/** The note a seed stands for. */
export function aNoteFrom(seed: number): MadeNote {
  const dice = chance(seed);
  const kind = dice.pick(NOTE_KINDS);
  const front = { kind, ...aMap(Object.fromEntries(Object.entries(keysOf(kind)).filter(([key]) => key !== 'kind')), dice, 0) };
  const eol = dice.oneIn(3) ? '\r\n' : '\n';
  const body = dice.pick([
    '',
    `# A heading${eol}${eol}Words with [a link](../madder.md).${eol}`,
    `---${eol}after a rule${eol}`,
    `no line end`,
  ]);
  const bom = dice.oneIn(8) ? '\uFEFF' : '';
  return { seed, kind, front, text: `${bom}---${eol}${writeYaml(front, eol, dice)}---${eol}${body}` };
}

/** Notes of every kind and in every style; a failing one is named by its seed. */
export const arbitraryNote: fc.Arbitrary<MadeNote> = fc.integer({ min: 0, max: 2 ** 31 - 1 }).map(aNoteFrom);
