import { fold } from '../../domain/text/fold.ts';

/** Which column of a table holds what; undefined for what no column holds, -1 for what a reader says none holds. */
export type Columns<C extends string> = Readonly<Partial<Record<C, number>>>;

/** A heading for comparing: case, accents, separators and a unit in brackets behind it aside. */
const bare = (heading: string): string =>
  fold(heading)
    .trim()
    .replace(/[([][^()[\]]*[)\]]$/, '')
    .replace(/[_\s-]+/g, ' ')
    .trim();

/** The unit a heading gives in brackets behind it, such as `Fibre (g)`; '' for none. */
export const unitOfHeading = (heading: string): string =>
  /[^\s([][([]([^()[\]]*)[)\]]$/
    .exec(
      heading
        .replace(/\s+/g, ' ')
        .replace(/ ?([([]) ?/g, '$1')
        .trim(),
    )?.[1]
    ?.trim() ?? '';

/**
 * Finds the columns of a table by their headings: under the column's own name first, then under any other name given.
 * A heading serves one column only.
 *
 * @returns the places found, and the headings nobody wanted.
 */
export function matchColumns<C extends string>(
  headings: readonly string[],
  names: Readonly<Record<C, readonly string[]>>,
): { readonly columns: Columns<C>; readonly unmatched: readonly string[] } {
  const folded = headings.map(bare);
  const columns: Partial<Record<C, number>> = {};
  const used = new Set<number>();
  for (const pass of [0, 1]) {
    for (const [column, others] of Object.entries(names) as [C, readonly string[]][]) {
      if (columns[column] !== undefined) continue;
      const wanted = pass === 0 ? [column] : others;
      const at = folded.findIndex((heading, i) => !used.has(i) && wanted.some((name) => bare(name) === heading));
      if (at < 0) continue;
      columns[column] = at;
      used.add(at);
    }
  }
  return { columns, unmatched: headings.filter((heading, i) => !used.has(i) && heading.trim() !== '') };
}
