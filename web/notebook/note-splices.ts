import type { ValuePath } from '../domain/note/locate-value.ts';
import { removeValue, spliceValue, type SpliceError } from '../domain/note/splice.ts';
import type { PlainValue } from '../domain/note/yaml-text.ts';
import { ok, type Result } from '../domain/result.ts';

/** One value to be set; without a value it is taken out. */
export type NoteSplice = readonly [path: ValuePath, value: PlainValue | undefined];

/** A note's text after several edits, one after the other; all or none. */
export function spliced(source: string, splices: readonly NoteSplice[]): Result<string, SpliceError> {
  let text = source;
  for (const [path, value] of splices) {
    const done = value === undefined ? removeValue(text, path) : spliceValue(text, path, value);
    if (!done.ok) return done;
    text = done.value;
  }
  return ok(text);
}
