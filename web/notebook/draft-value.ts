import type { ValuePath } from '../domain/note/locate-value.ts';
import { removeValue, spliceValue, type SpliceError } from '../domain/note/splice.ts';
import type { PlainValue, RawYaml } from '../domain/note/yaml-text.ts';
import { ok, type Result } from '../domain/result.ts';
import { type Draft, withText } from './draft.ts';

/** One value of the front matter set; every character outside it stays. */
export function withValue(draft: Draft, path: ValuePath, value: PlainValue | RawYaml): Result<Draft, SpliceError> {
  const spliced = spliceValue(draft.text, path, value);
  return spliced.ok ? ok(withText(draft, spliced.value, stepLabel(path, draft))) : spliced;
}

/** One value of the front matter taken out. */
export function withoutValue(draft: Draft, path: ValuePath): Result<Draft, SpliceError> {
  const spliced = removeValue(draft.text, path);
  return spliced.ok ? ok(withText(draft, spliced.value, stepLabel(path, draft))) : spliced;
}

/** A value set in a form is a step of its own, also when the same field is changed twice. */
const stepLabel = (path: ValuePath, { past }: Draft): string => `${past.length} ${path.join('/')}`;
