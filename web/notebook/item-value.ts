import type { PlainValue } from '../domain/note/yaml-text.ts';
import type { FieldView, ItemView } from './views/form-view.ts';

/** A row of a form as a plain value, for writing it once more; undefined where nothing stands in it. */
export function itemValue(item: ItemView): PlainValue | undefined {
  if (item.fields.length === 0 || item.isBare) return item.value === '' ? undefined : item.value;
  const pairs = item.fields.flatMap((field): readonly (readonly [string, PlainValue])[] => {
    const value = field.filled ? valueOfField(field) : undefined;
    return value === undefined ? [] : [[field.key, value]];
  });
  return pairs.length === 0 ? undefined : Object.fromEntries(pairs);
}

function valueOfField(field: FieldView): PlainValue | undefined {
  switch (field.is) {
    case 'elsewhere':
      return undefined;
    case 'numbers':
      return numbersOf(field.value);
    case 'yes-no':
      return field.value === 'true' || field.value === 'yes';
    default:
  }
  if (field.is === 'group' || field.list) {
    const values = field.items.map(itemValue).filter((value) => value !== undefined);
    return values.length > 1 ? values : values[0];
  }
  if (field.is === 'number' && field.value.includes(',')) return numbersOf(field.value);
  // A year with zeros before it must stay as it is written.
  return FIGURES.has(field.is) && /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/.test(field.value) ? Number(field.value) : field.value;
}

const FIGURES: ReadonlySet<string> = new Set(['number', 'observer', 'date']);

const numbersOf = (text: string): readonly number[] => text.split(/[\s,;]+/).map(Number);
