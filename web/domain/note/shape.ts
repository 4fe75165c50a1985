import { isMap, isScalar, isSeq } from 'yaml';
import type { Node, Scalar } from 'yaml';
import type { DiagnosticCode, Report, TextRange } from '../diagnostic.ts';
import type { NoteKind } from './note.ts';

/** What a key's value looks like: what forms draw a field from, and what a wrong value is measured against. */
export type Form =
  | 'text'
  | 'word'
  | 'yes-no'
  | 'number'
  | 'reference'
  | 'date'
  | 'citation'
  | 'amount'
  | 'mass'
  | 'numbers'
  | 'hex'
  | 'observer'
  | 'map'
  | 'anything';

/** What reading a value needs: where it stands and whom to tell. */
export interface ReadContext {
  readonly range: (node: Node) => TextRange;
  readonly resolve: (node: unknown) => Node | undefined;
  readonly report: Report;
}

/** How the value of one key is read. */
export interface Shape<T> {
  readonly form: Form;
  /** True where a list may stand as well as a single value. */
  readonly list: boolean;
  /** True where a note is of little use without the key. */
  readonly needed: boolean;
  /** The words that may stand there. */
  readonly words?: readonly string[];
  /** The kinds a reference may lead to. */
  readonly kinds?: readonly NoteKind[];
  /** The keys of a map. */
  readonly keys?: KeyTable;
  /** The key that a bare value stands for where a map may stand. */
  readonly short?: string;
  /** What an absent key is read as. */
  readonly absent: T;
  /** Reads the value of `key`, telling what is wrong; gives what `absent` holds where nothing can be read. */
  readonly read: (node: Node, key: string, context: ReadContext) => T;
}

/** Keys with the shape of their values. */
export type KeyTable = Readonly<Record<string, Shape<unknown>>>;

/** A shape whose absence is told. */
export const needed = <T>(shape: Shape<T>): Shape<T> => ({ ...shape, needed: true });

/** A shape for one value. */
export const single = <T>(
  form: Form,
  read: (node: Node, key: string, context: ReadContext) => T | undefined,
  more: Pick<Shape<unknown>, 'words' | 'kinds' | 'keys' | 'short'> = {},
): Shape<T | undefined> => ({ form, list: false, needed: false, absent: undefined, ...more, read });

/** A shape for a list; a single value is a list of one, and what cannot be read is left out. */
export function listOf<T>(item: Shape<T | undefined>): Shape<readonly T[]> {
  const read = (node: Node, key: string, context: ReadContext): readonly T[] => {
    const values: T[] = [];
    for (const each of isSeq(node) ? node.items : [node]) {
      const resolved = context.resolve(each);
      const value = resolved === undefined || isNothing(resolved) ? undefined : item.read(resolved, key, context);
      if (value !== undefined) values.push(value);
    }
    return values;
  };
  return { ...item, list: true, absent: [], read };
}

/** True for a key with nothing beside it, or with YAML's null. */
export const isNothing = (node: unknown): boolean => isScalar(node) && node.value === null && node.type === 'PLAIN';

/** A scalar's own characters (`0700` stays `0700`), ends trimmed. */
export const wordsOf = (node: Scalar): string => (node.source ?? String(node.value)).trim();

/** Tells a finding about a node. */
export const tell = (
  code: DiagnosticCode,
  node: Node,
  about: readonly string[],
  context: ReadContext,
  severity: 'error' | 'warning' = 'error',
): void => context.report({ code, severity, range: context.range(node), about });

/** Tells that a value has the wrong form; `about`: what was found, the key, what belongs there. */
export const tellWrongType = (node: Node, key: string, wanted: string, context: ReadContext): void =>
  tell('type-wrong', node, [formFound(node), key, wanted], context);

function formFound(node: Node): string {
  if (isMap(node)) return 'map';
  if (isSeq(node)) return 'list';
  if (!isScalar(node)) return 'nothing';
  if (typeof node.value === 'boolean') return 'yes-no';
  return typeof node.value === 'number' ? 'number' : 'text';
}
