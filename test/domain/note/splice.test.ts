import { readFileSync, readdirSync } from 'node:fs';
import { isCollection, isMap, isNode, isScalar, isSeq, parseDocument } from 'yaml';
import type { Document, Node } from 'yaml';
import { describe, expect, test } from 'vitest';
import { removeValue, spliceValue } from '../../../web/domain/note/splice.ts';
import { splitFrontMatter } from '../../../web/domain/note/split-front-matter.ts';
import { RawYaml } from '../../../web/domain/note/yaml-text.ts';
import type { PlainValue } from '../../../web/domain/note/yaml-text.ts';
import { AWKWARD_WORDS, arbitraryNote } from '../../helpers/arbitrary-note.ts';
import { chance } from '../../helpers/random.ts';
import type { Chance } from '../../helpers/random.ts';
import { fc } from '../../helpers/property.ts';

type Path = readonly (string | number)[];

/** The library's own reading, as a yardstick beside the code under test. */
function read(source: string): { readonly doc: Document; readonly base: number; readonly says: unknown } {
  const { yaml } = splitFrontMatter(source, () => undefined);
  const [start, end] = yaml ?? [0, 0];
  const doc = parseDocument(source.slice(start, end), { logLevel: 'silent' });
  expect(doc.errors.map(({ message }) => message)).toEqual([]);
  return { doc, base: start, says: doc.toJS() };
}

/** Every path there is, and for each map one key more and for each list one item more. */
function pathsOf(doc: Document): { readonly there: Path[]; readonly open: Path[] } {
  const there: Path[] = [];
  const open: Path[] = [];
  const walk = (node: unknown, path: Path): void => {
    if (path.length > 0) there.push(path);
    if (isMap(node)) {
      for (const { key, value } of node.items) walk(value, [...path, String(isScalar(key) ? key.value : key)]);
      open.push([...path, 'zusatz']);
    } else if (isSeq(node)) {
      node.items.forEach((item, index) => walk(item, [...path, index]));
      open.push([...path, node.items.length]);
    }
  };
  walk(doc.contents, []);
  return { there, open };
}

/** The value with another at a path; `undefined` takes it away. */
function withValue(says: unknown, [step, ...rest]: Path, value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(says)) {
    const at = Number(step);
    return rest.length === 0 && value === undefined ? says.toSpliced(at, 1) : says.toSpliced(at, 1, withValue(says[at], rest, value));
  }
  const map = new Map(Object.entries((says ?? {}) as Record<string, unknown>));
  if (rest.length === 0 && value === undefined) map.delete(String(step));
  else map.set(String(step), withValue(map.get(String(step)), rest, value));
  return Object.fromEntries(map);
}

/** True where `after` is `before` with something put in at one place. */
function isInsertion(before: string, after: string): boolean {
  let head = 0;
  while (head < before.length && before[head] === after[head]) head++;
  let tail = 0;
  while (tail < before.length && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
  return head + tail >= before.length;
}

const aNewValue = (dice: Chance): PlainValue =>
  dice.oneIn(4)
    ? dice.pick<PlainValue>([
        12,
        0.5,
        true,
        [],
        ['a', 'b: c'],
        [{ region: 'york', when: '12XX' }],
        { name: 'x, y', lang: 'de' },
        { a: { b: ['c'] } },
      ])
    : dice.pick(AWKWARD_WORDS);

/** Sets a value and holds the result against the yardstick; false where the edit was refused. */
function tryOut(source: string, path: Path, value: PlainValue, node: Node | undefined, before: ReturnType<typeof read>): boolean {
  const result = spliceValue(source, path, value);
  if (!result.ok) return false;
  if (node?.range) {
    // The library's range of a node runs on over the space behind it; nothing beyond may change.
    const [head, tail] = [source.slice(0, before.base + node.range[0]), source.slice(before.base + node.range[2])];
    expect(result.value.length).toBeGreaterThanOrEqual(head.length + tail.length);
    expect(result.value.startsWith(head) && result.value.endsWith(tail)).toBe(true);
  } else expect(isInsertion(source, result.value)).toBe(true);
  expect(read(result.value).says).toEqual(withValue(before.says, path, value));
  return true;
}

describe('spliceValue over made-up notes', () => {
  test('changes nothing but the value, and the value reads as asked, in 1,000 notes', () => {
    let done = 0;
    let refused = 0;
    fc.assert(
      fc.property(arbitraryNote, ({ text, seed }) => {
        const dice = chance(seed ^ 0x5bd1e995);
        const before = read(text);
        const { there, open } = pathsOf(before.doc);
        for (let turn = 0; turn < 3; turn++) {
          const isNew = dice.oneIn(3);
          const path = dice.pick(isNew ? open : there);
          const node: unknown = isNew ? undefined : before.doc.getIn(path, true);
          const empty = isScalar(node) && node.range?.[0] === node.range?.[1];
          if (tryOut(text, path, aNewValue(dice), isNode(node) && !empty ? node : undefined, before)) done++;
          else refused++;
        }
      }),
      { numRuns: 1000, seed: 20250514 },
    );
    expect(done).toBeGreaterThan(2980);
    // Refusing is right where no safe way is known, but must stay rare.
    expect(refused).toBeLessThanOrEqual(20);
  }, 300_000);

  test('takes away one key or item and nothing else, in 1,000 notes', () => {
    let done = 0;
    let refused = 0;
    fc.assert(
      fc.property(arbitraryNote, ({ text, seed }) => {
        const dice = chance(seed ^ 0x1b873593);
        const before = read(text);
        const path = dice.pick(
          pathsOf(before.doc)
            .there.filter(([key]) => key !== 'kind')
            .concat([['kind']]),
        );
        const result = removeValue(text, path);
        if (!result.ok) {
          refused++;
          return;
        }
        done++;
        const says = read(result.value).says;
        expect(says ?? {}).toEqual(withValue(before.says, path, undefined));
        expect(bodyOf(result.value)).toBe(bodyOf(text));
      }),
      { numRuns: 1000, seed: 7 },
    );
    expect(done).toBeGreaterThan(980);
    expect(refused).toBeLessThan(20);
  }, 300_000);
});

const bodyOf = (source: string): string => source.slice(splitFrontMatter(source, () => undefined).bodyStart);

describe('spliceValue over the demonstration notebook', () => {
  const root = new URL('../../../corpus-demo/', import.meta.url);
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.md'));

  test('every note takes new values without a change elsewhere', () => {
    expect(files.length).toBeGreaterThan(50);
    for (const file of files) {
      const source = readFileSync(new URL(file, root), 'utf8');
      if (splitFrontMatter(source, () => undefined).yaml === undefined) continue;
      const dice = chance(file.length * 7919 + source.length);
      const before = read(source);
      const { there, open } = pathsOf(before.doc);
      const scalars = there.filter((path) => isScalar(before.doc.getIn(path, true)));
      for (let turn = 0; turn < 3; turn++) {
        const path = dice.pick(scalars);
        const node: unknown = before.doc.getIn(path, true);
        expect([file, path, tryOut(source, path, dice.pick(AWKWARD_WORDS), isNode(node) ? node : undefined, before)]).toEqual([
          file,
          path,
          true,
        ]);
      }
      const more = dice.pick(open);
      expect([file, more, tryOut(source, more, 'one more: yes', undefined, before)]).toEqual([file, more, true]);
    }
  }, 300_000);
});

const set = (front: string, path: Path, value: PlainValue | RawYaml): string => {
  const result = spliceValue(`---\n${front}---\nbody\n`, path, value);
  return result.ok ? result.value.slice(4, -9) : result.error;
};
const remove = (front: string, path: Path): string => {
  const result = removeValue(`---\n${front}---\nbody\n`, path);
  return result.ok ? result.value.slice(4, -9) : result.error;
};

describe('spliceValue', () => {
  test.each<[string, string, Path, PlainValue | RawYaml, string]>([
    ['a plain word', 'title: Madder # so\n', ['title'], 'Weld', 'title: Weld # so\n'],
    ['text that needs quotes', 'title: Madder\n', ['title'], 'Weld: a dye', 'title: "Weld: a dye"\n'],
    ['single quotes stay', "title: 'Madder'\n", ['title'], "Dyer's weld", "title: 'Dyer''s weld'\n"],
    ['double quotes stay', 'title: "Madder"\n', ['title'], 'Weld', 'title: "Weld"\n'],
    ['a year as text', 'when: 0700\n', ['when'], '0800', 'when: "0800"\n'],
    ['YAML as typed', 'when: 0700\n', ['when'], new RawYaml('0800'), 'when: 0800\n'],
    ['yes is a word', 'sure: likely\n', ['sure'], 'yes', 'sure: yes\n'],
    ['an empty key', 'a:\nb: 1\n', ['a'], 'x', 'a: x\nb: 1\n'],
    ['an empty key with a remark', 'a: # why\nb: 1\n', ['a'], 'x', 'a: x # why\nb: 1\n'],
    ['an empty item', 'a:\n  -\n  - y\n', ['a', 0], 'x', 'a:\n  - x\n  - y\n'],
    ['several lines', 'a: x\nb: 1\n', ['a'], 'one\ntwo', 'a: |-\n  one\n  two\nb: 1\n'],
    ['several lines before a remark', 'a: x # why\n', ['a'], 'one\ntwo', 'a: "one\\ntwo" # why\n'],
    ['a block text becomes a word', 'a: |\n  one\n  two\nb: 1\n', ['a'], 'x', 'a: x\nb: 1\n'],
    ['inside brackets', 'a: [x, y, z]\n', ['a', 1], 'p, q', 'a: [x, "p, q", z]\n'],
    ['inside braces', 'a: { k: v } # so\n', ['a', 'k'], '{', 'a: { k: "{" } # so\n'],
    ['a single value as item 0', 'fibre: wool\n', ['fibre', 0], 'silk', 'fibre: silk\n'],
    ['a new key', 'a: 1\n# end\n', ['b'], 'x', 'a: 1\n# end\nb: x\n'],
    ['a new key in a group', 'a:\n  b: 1 # so\n\nc: 2\n', ['a', 'd'], 'x', 'a:\n  b: 1 # so\n  d: x\n\nc: 2\n'],
    ['a new group', 'a: 1\n', ['b', 'c'], 'x', 'a: 1\nb: { c: x }\n'],
    ['a new list', 'a: 1\n', ['b', 0], 'x', 'a: 1\nb: [x]\n'],
    ['a new list of groups', 'a: 1\n', ['b', 0, 'c'], 'x', 'a: 1\nb:\n  - c: x\n'],
    ['a new item', 'a:\n  - x # one\nb: 1\n', ['a', 1], 'y', 'a:\n  - x # one\n  - y\nb: 1\n'],
    ['a new item in brackets', 'a: [x,]\n', ['a', 1], 'y', 'a: [x, y,]\n'],
    ['a new item in empty brackets', 'a: []\n', ['a', 0], 'y', 'a: [y]\n'],
    ['a new item like its neighbour', 'a:\n- k: 1\n  l: 2\n', ['a', 1], { k: 3, l: 4 }, 'a:\n- k: 1\n  l: 2\n- k: 3\n  l: 4\n'],
    ['a list of lines by a list', 'a:\n- x\n- y\nb: 1\n', ['a'], ['p', 'q'], 'a:\n- p\n- q\nb: 1\n'],
    ['a list of lines by a word', 'a:\n- x\n- y\nb: 1\n', ['a'], 'p', 'a:\n p\nb: 1\n'],
  ])('%s', (_, front, path, value, expected) => {
    expect(set(front, path, value)).toBe(expected);
  });

  test.each<[string, string, Path, string]>([
    ['a key with its line', 'a: 1 # so\nb: 2\n', ['a'], 'b: 2\n'],
    ['a key with its lines', 'a:\n  - x\n  - y\nb: 2\n', ['a'], 'b: 2\n'],
    ['an item', 'a:\n  - x\n  - y\nb: 2\n', ['a', 0], 'a:\n  - y\nb: 2\n'],
    ['the first key of an item', 'a:\n  - k: 1\n    l: 2\n', ['a', 0, 'k'], 'a:\n  - l: 2\n'],
    ['the last item leaves an empty list', 'a:\n  - x\nb: 2\n', ['a', 0], 'a:\n  []\nb: 2\n'],
    ['the last item of a list in its key’s column', 'a:\n- x\nb: 2\n', ['a', 0], 'a:\n []\nb: 2\n'],
    ['item 0 of a single value', 'a: x\nb: 2\n', ['a', 0], 'b: 2\n'],
    ['the only key of a group', 'a: { k: 1 }\n', ['a', 'k'], 'a: {}\n'],
    ['from brackets', 'a: [x, y, z]\n', ['a', 1], 'a: [x, z]\n'],
    ['the last in brackets', 'a: [x, y ]\n', ['a', 1], 'a: [x ]\n'],
    ['a key from braces', 'a: { k: 1, l: 2 }\n', ['a', 'l'], 'a: { k: 1 }\n'],
  ])('removes %s', (_, front, path, expected) => {
    expect(remove(front, path)).toBe(expected);
  });

  test('keeps CRLF and a byte order mark', () => {
    expect(spliceValue('\uFEFF---\r\na: 1\r\n---\r\nbody\r\n', ['b'], 'x')).toEqual({
      ok: true,
      value: '\uFEFF---\r\na: 1\r\nb: x\r\n---\r\nbody\r\n',
    });
    expect(spliceValue('---\r\na: 1\r\n---\r\n', ['a'], 'x\ny')).toEqual({ ok: true, value: '---\r\na: |-\r\n  x\r\n  y\r\n---\r\n' });
  });

  test('gives a plain note its first key between fences', () => {
    expect(spliceValue('\uFEFFwords\n', ['title'], 'A')).toEqual({ ok: true, value: '\uFEFF---\ntitle: A\n---\nwords\n' });
    expect(spliceValue('---\n---\nwords\n', ['title'], 'A')).toEqual({ ok: true, value: '---\ntitle: A\n---\nwords\n' });
  });

  test.each<[string, string, Path, PlainValue | RawYaml, string]>([
    ['broken front matter', 'a: [\n', ['a'], 'x', 'front-matter-broken'],
    ['an item beyond the end', 'a: [x]\n', ['a', 2], 'x', 'path-unknown'],
    ['a key of a word', 'a: x\n', ['a', 'b'], 'x', 'path-unknown'],
    ['a value through an alias', 'a: &n { k: 1 }\nb: *n\n', ['b', 'k'], 2, 'path-unknown'],
    ['a value that others repeat', 'a: &n x\nb: *n\n', ['a'], 'y', 'not-safe'],
    ['a value under a tag that changes it', 'a: !!int 3\n', ['a'], 'x', 'not-safe'],
    ['a number that is none', 'a: 1\n', ['a'], NaN, 'value-unwritable'],
    ['YAML that is broken', 'a: 1\n', ['a'], new RawYaml('[x'), 'value-unwritable'],
    ['YAML that spills over', 'a: 1\n', ['a'], new RawYaml('x\nb: 2'), 'value-unwritable'],
    ['YAML with a remark inside brackets', 'a: [x, y]\n', ['a', 0], new RawYaml('z # w'), 'not-safe'],
  ])('refuses %s', (_, front, path, value, expected) => {
    expect(set(front, path, value)).toBe(expected);
  });

  test('an alias itself may be replaced', () => {
    expect(set('a: &n x\nb: *n\n', ['b'], 'y')).toBe('a: &n x\nb: y\n');
  });

  test('refuses a file whose front matter never ends', () => {
    expect(spliceValue('---\na: 1\n', ['a'], 2)).toEqual({ ok: false, error: 'front-matter-broken' });
  });

  test('made-up notes say what they were made to say', () => {
    fc.assert(
      fc.property(arbitraryNote, ({ text, front }) => {
        const { doc, says } = read(text);
        expect(says).toEqual(JSON.parse(JSON.stringify(front)));
        expect(isCollection(doc.contents)).toBe(true);
      }),
      { numRuns: 500, seed: 3 },
    );
  });
});
