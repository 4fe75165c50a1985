import type { TextRange } from '../../domain/diagnostic.ts';
import { frontMatterTree } from '../../domain/note/front-matter-tree.ts';
import type { ValuePath } from '../../domain/note/locate-value.ts';
import { keysOf } from '../../domain/note/note-keys.ts';
import { NOTE_KINDS, type NoteKind } from '../../domain/note/note.ts';
import type { PlainTree } from '../../domain/note/plain-tree.ts';
import type { Form, KeyTable, Shape } from '../../domain/note/shape.ts';
import { choiceWords, keyWords, oneMoreWords } from '../words/key-words.ts';

/** What a field takes. */
export type FieldIs = Exclude<Form, 'map' | 'anything'> | 'group' | 'elsewhere';

/** One value that can be filled in. */
export interface FieldView {
  readonly key: string;
  readonly path: ValuePath;
  readonly label: string;
  readonly hint: string;
  readonly is: FieldIs;
  /** True where several may stand. */
  readonly list: boolean;
  readonly needed: boolean;
  /** Whether anything stands there. */
  readonly filled: boolean;
  /** The words that may stand there, with what the form calls them. */
  readonly words: readonly (readonly [word: string, label: string])[];
  readonly kinds: readonly NoteKind[];
  /** A single value as it stands; numbers parted by commas; '' for none. */
  readonly value: string;
  /** The values of a list, or the one value of a group. */
  readonly items: readonly ItemView[];
  /** What one more of them is called. */
  readonly oneMore: string;
  /** One more of them, with nothing filled in yet. */
  readonly blank: () => ItemView;
  /** The value that stands there alone and becomes the first of a list when one more comes. */
  readonly alone: string;
  readonly range?: TextRange;
  /** The key a bare value stands for, where a group may be written as one. */
  readonly short?: string;
}

/** One value of a list. */
export interface ItemView {
  readonly path: ValuePath;
  /** The value where it is no group, or a group written as a bare value. */
  readonly value: string;
  readonly isBare: boolean;
  /** The first words of a group, to know it by. */
  readonly summary: string;
  /** Its fields, where it is a group. */
  readonly fields: readonly FieldView[];
  readonly range?: TextRange;
}

/** A note as a form. */
export interface FormView {
  readonly kind: NoteKind;
  /** The word after `kind:` where it is none that is known. */
  readonly unknownKind: string;
  /** True where the front matter must be mended in the text first. */
  readonly broken: boolean;
  readonly own: readonly FieldView[];
  readonly common: readonly FieldView[];
  /** Keys that no form has: they are kept as they stand. */
  readonly kept: readonly { readonly key: string; readonly text: string }[];
  /** The body's own words, as they stand. */
  readonly body: string;
  readonly bodyStart: number;
}

/** Common keys that stand under the kind's own, in this order. */
const LAST_KEYS = ['source', 'sources', 'checked', 'review-by', 'tags', 'invented', 'private', 'id'];
const FIRST_KEYS = ['title', 'names'];

/** The form of a note's text. Nothing is judged here; a value in another shape than the key's is left to the text. */
export function formView(source: string): FormView {
  const { tree, broken, bodyStart, rangeOf } = frontMatterTree(source);
  const values = new Map(tree.pairs);
  const written = textOf(values.get('kind')).toLowerCase();
  const known = [...NOTE_KINDS, 'plain' as const].find((kind) => kind === written);
  const kind = known ?? 'plain';
  const table = keysOf(kind);
  const field = (key: string): readonly FieldView[] => {
    const shape = table[key];
    return shape ? [fieldOf(key, shape, values.get(key), { path: [key], owner: kind, rangeOf })] : [];
  };
  const isCommon = (key: string) => key === 'kind' || FIRST_KEYS.includes(key) || LAST_KEYS.includes(key);
  return {
    kind,
    unknownKind: known === undefined ? textOf(values.get('kind')) : '',
    broken,
    own: [...FIRST_KEYS, ...Object.keys(table).filter((key) => !isCommon(key))].flatMap(field),
    common: LAST_KEYS.filter((key) => !isOtherSource(key, values)).flatMap(field),
    kept: tree.pairs.filter(([key]) => !Object.hasOwn(table, key)).map(([key, value]) => ({ key, text: summaryOf(value) })),
    body: source.slice(bodyStart),
    bodyStart,
  };
}

/** Of the two keys that name sources a form offers the one that is used, or else the shorter. */
const isOtherSource = (key: string, there: ReadonlyMap<string, unknown>): boolean =>
  (key === 'sources' && !there.has('sources')) || (key === 'source' && there.has('sources') && !there.has('source'));

/** Where a value stands, what holds it, and how places are found. */
interface FieldPlace {
  readonly path: ValuePath;
  readonly owner: string;
  readonly rangeOf: (path: ValuePath) => TextRange | undefined;
}

function fieldOf(key: string, shape: Shape<unknown>, value: PlainTree | undefined, place: FieldPlace): FieldView {
  const { path, owner } = place;
  const { label, hint } = keyWords(key, owner);
  const there = value !== undefined && !isNothing(value);
  const is = kindOfField(shape, value);
  const isList = shape.list && !isNumberRow(shape);
  const range = there ? place.rangeOf(path) : undefined;
  return {
    key,
    path,
    label,
    hint: hint ?? '',
    is,
    list: isList,
    needed: shape.needed,
    filled: there,
    words: (shape.words ?? []).map((word) => [word, choiceWords(word, key)] as const),
    kinds: shape.kinds ?? [],
    value: !there || is === 'group' ? '' : isNumberRow(shape) || shape.form === 'numbers' ? numbersText(value) : textOf(value),
    items: there && (is === 'group' || isList) ? itemsOf(key, shape, value, place) : [],
    oneMore: oneMoreWords[key] ?? label.toLowerCase(),
    blank: () => {
      const at = !there ? 0 : value.is === 'list' ? value.items.length : 1;
      return itemOf(key, shape, undefined, { ...place, path: shape.list ? [...path, at] : path });
    },
    alone: isList && there && value.is === 'scalar' ? textOf(value) : '',
    ...(shape.short === undefined ? {} : { short: shape.short }),
    ...(range && { range }),
  };
}

/** Numbers of a list stand in one row. */
const isNumberRow = (shape: Shape<unknown>): boolean => shape.form === 'number' && shape.list;

function kindOfField(shape: Shape<unknown>, value: PlainTree | undefined): FieldIs {
  if (shape.form === 'anything') return 'elsewhere';
  const there = value !== undefined && !isNothing(value);
  const fits =
    !there ||
    (value.is === 'list' ? value.items : [value]).every((one) => one.is === 'scalar' || (shape.form === 'map' && one.is === 'map'));
  const isTooMany = there && value.is === 'list' && !shape.list && shape.form !== 'numbers';
  if (!fits || isTooMany) return 'elsewhere';
  return shape.form === 'map' ? 'group' : shape.form;
}

function itemsOf(key: string, shape: Shape<unknown>, value: PlainTree, place: FieldPlace): readonly ItemView[] {
  const { path } = place;
  if (value.is !== 'list') return [itemOf(key, shape, value, { ...place, path: shape.list ? [...path, 0] : path })];
  return value.items.map((item, at) => itemOf(key, shape, item, { ...place, path: [...path, at] }));
}

function itemOf(key: string, shape: Shape<unknown>, value: PlainTree | undefined, place: FieldPlace): ItemView {
  const isGroup = shape.form === 'map';
  const pairs = new Map(value?.is === 'map' ? value.pairs : []);
  const range = value && place.rangeOf(place.path);
  return {
    path: place.path,
    value: textOf(value),
    isBare: isGroup && value?.is === 'scalar' && !isNothing(value),
    summary: isGroup ? groupSummary(shape.keys ?? {}, value) : textOf(value),
    fields: isGroup
      ? Object.entries(shape.keys ?? {})
          .filter(([inner]) => !isOtherSource(inner, pairs))
          .map(([inner, innerShape]) =>
            fieldOf(inner, innerShape, pairs.get(inner), { ...place, path: [...place.path, inner], owner: key }),
          )
      : [],
    ...(range && { range }),
  };
}

/** Parts of a group's summary (our choice: what fits a line). */
const MOST_PARTS = 4;

function groupSummary(keys: KeyTable, value: PlainTree | undefined): string {
  if (value?.is !== 'map') return textOf(value);
  const pairs = new Map(value.pairs);
  const known = Object.keys(keys).filter((key) => pairs.has(key));
  return [...known, ...[...pairs.keys()].filter((key) => !Object.hasOwn(keys, key))]
    .map((key) => summaryOf(pairs.get(key)))
    .filter((text) => text !== '')
    .slice(0, MOST_PARTS)
    .join(', ');
}

function summaryOf(value: PlainTree | undefined): string {
  if (value === undefined || isNothing(value)) return '';
  if (value.is === 'scalar') return value.text;
  return value.is === 'list'
    ? value.items.map(summaryOf).join(', ')
    : value.pairs.map(([key, inner]) => `${key} ${summaryOf(inner)}`).join(', ');
}

const numbersText = (value: PlainTree | undefined): string => (value?.is === 'list' ? value.items.map(textOf).join(', ') : textOf(value));

const textOf = (value: PlainTree | undefined): string => (value?.is === 'scalar' && !isNothing(value) ? value.text : '');

const isNothing = (value: PlainTree): boolean => value.is === 'scalar' && value.type === 'object';
