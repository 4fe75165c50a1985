import type { CaptionView } from '../../notebook/views/caption-view.ts';

/** A run of a caption's text and how it is marked. */
export interface CaptionRun {
  readonly text: string;
  readonly bound: boolean;
  readonly faulty: boolean;
  readonly latin: boolean;
}

/** Where names stand in a text. */
const placesOf = (text: string, names: readonly string[]): readonly (readonly [number, number])[] =>
  names.flatMap((name) => {
    const places: (readonly [number, number])[] = [];
    for (let at = text.indexOf(name); at >= 0 && name !== ''; at = text.indexOf(name, at + name.length))
      places.push([at, at + name.length]);
    return places;
  });

/** A caption's text cut where marks begin and end: what rests on a claim, what something is to be said about, Latin names. */
export function captionRuns(
  { text, bound, notices }: Pick<CaptionView, 'text' | 'bound' | 'notices'>,
  latin: readonly string[] = [],
): readonly CaptionRun[] {
  const ranges = (all: readonly { readonly range?: readonly [number, number] }[]) => all.flatMap(({ range }) => (range ? [range] : []));
  const [resting, faults, names] = [ranges(bound), ranges(notices), placesOf(text, latin)];
  const cuts = [...new Set([0, text.length, ...[...resting, ...faults, ...names].flat()])]
    .filter((at) => at >= 0 && at <= text.length)
    .sort((a, b) => a - b);
  const covered = (all: readonly (readonly [number, number])[], from: number, to: number) =>
    all.some(([start, end]) => start <= from && to <= end);
  return cuts.slice(0, -1).flatMap((from, at) => {
    const to = cuts[at + 1] ?? from;
    return to > from
      ? [
          {
            text: text.slice(from, to),
            bound: covered(resting, from, to),
            faulty: covered(faults, from, to),
            latin: covered(names, from, to),
          },
        ]
      : [];
  });
}
