import { completionsOf } from './completions-of.ts';
import type { FieldView, ItemView } from './views/form-view.ts';
import type { WritingChoices } from './views/writing-choices.ts';
import { choiceWords } from './words/key-words.ts';

/** Parts that are named (our choice: what fits a line). */
const MOST_PARTS = 4;

/** A row of a form in a line to know it by: the first things said in it, notes by their titles. */
export function itemSummary(item: ItemView, choices: WritingChoices | undefined): string {
  if (item.fields.length === 0 || item.isBare) return item.summary;
  const parts = item.fields.map((field) => summaryOfField(field, choices)).filter((part) => part !== '');
  return parts.slice(0, MOST_PARTS).join(', ');
}

function summaryOfField(field: FieldView, choices: WritingChoices | undefined): string {
  if (!field.filled || field.is === 'elsewhere' || field.is === 'yes-no') return '';
  if (field.is === 'group') return field.items.map((item) => itemSummary(item, choices)).join(', ');
  const values = field.list ? field.items.map(({ value }) => value) : [field.value];
  return values.map((value) => said(field, value, choices)).join(' and ');
}

function said(field: FieldView, value: string, choices: WritingChoices | undefined): string {
  if (field.is === 'word') return choiceWords(value, field.key);
  if (field.is !== 'reference' || !choices) return value;
  return completionsOf(field, choices).find((one) => one.value === value)?.label ?? value;
}
