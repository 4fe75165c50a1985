import { fold } from './fold.ts';

/** Edit distance with swaps of neighbours (optimal string alignment), in characters. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, (before[j - 2] ?? 0) + 1);
      row.push(best);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/**
 * The known names nearest to what was typed, best first: a shared beginning counts as near.
 *
 * @param known names as they should be shown.
 * @param most how many to give.
 */
export function nearestNames(typed: string, known: readonly string[], most = 3): readonly string[] {
  const wanted = fold(typed).slice(0, 60);
  return [...new Set(known)]
    .flatMap((name) => {
      const folded = fold(name).slice(0, 60);
      const starts = wanted.length > 1 && (folded.startsWith(wanted) || wanted.startsWith(folded));
      if (starts) return [{ name, distance: 0.5 }];
      const farthest = Math.max(2, Math.ceil(Math.max(wanted.length, name.length) * 0.5));
      // No two texts are nearer than their lengths: most of a large notebook's names need no comparing.
      if (Math.abs(folded.length - wanted.length) > farthest) return [];
      const distance = editDistance(wanted, folded);
      return distance <= farthest ? [{ name, distance }] : [];
    })
    .sort((a, b) => a.distance - b.distance || a.name.localeCompare(b.name, 'en'))
    .slice(0, most)
    .map(({ name }) => name);
}
