import type { ValuePath } from '../../domain/note/locate-value.ts';
import type { FieldView, FormView, ItemView } from './form-view.ts';
import type { ProblemView } from './problem-view.ts';

/** Findings by the place of a form they belong to. */
export interface PlacedProblems {
  /** Those of a field or row, by its path. */
  readonly of: (path: ValuePath) => readonly ProblemView[];
  /** How many stand at or below a path. */
  readonly within: (path: ValuePath) => number;
  /** Those that belong to no field: about the note as a whole, its body, or keys no form has. */
  readonly others: readonly ProblemView[];
}

/** Puts each finding beside the innermost value it lies in. */
export function placedProblems({ own, common }: FormView, problems: readonly ProblemView[]): PlacedProblems {
  const places = [...own, ...common].flatMap(placesOf);
  const byPath = new Map<string, ProblemView[]>();
  const others: ProblemView[] = [];
  for (const problem of problems) {
    // Places come outer before inner, so the last that fits is the innermost.
    const place = places.filter(({ range }) => range !== undefined && range[0] <= problem.from && problem.to <= range[1]).at(-1);
    const key = place && keyOf(place.path);
    if (key === undefined) others.push(problem);
    else byPath.set(key, [...(byPath.get(key) ?? []), problem]);
  }
  return {
    of: (path) => byPath.get(keyOf(path)) ?? [],
    within: (path) =>
      [...byPath].filter(([key]) => `${key}/`.startsWith(`${keyOf(path)}/`)).reduce((sum, [, found]) => sum + found.length, 0),
    others,
  };
}

type Place = Pick<ItemView, 'path' | 'range'>;

const placesOf = (field: FieldView): readonly Place[] => [
  field,
  ...field.items.flatMap((item) => [item, ...item.fields.flatMap(placesOf)]),
];

const keyOf = (path: ValuePath): string => path.join('/');
