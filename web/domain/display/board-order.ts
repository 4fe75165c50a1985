import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { BoardOrder } from '../note/display-record.ts';
import { HUE_FAMILIES } from '../palette/hue-family.ts';
import type { PaletteColour } from '../palette/palette.ts';
import { sortPalette } from '../palette/palette.ts';
import { ORIGINS } from '../verdict/standing-words.ts';

/** Colours that hang together, with what they have in common: a family, dyestuff ids, an origin, or regions a dyestuff came from. */
export interface BoardGroup {
  readonly key: string;
  /** Ids the key is made of; empty where it is a word. */
  readonly ids: readonly string[];
  readonly colours: readonly PaletteColour[];
}

/**
 * The colours of a board in groups, in order.
 *
 * `hue`: by family. `source`: by dyestuffs. `origin`: to hand there, imported, as cloth, undyed. `route`: where the notes have the
 * dyestuff growing or made at that time, when it was not to hand there. `as-placed`: one group, as given.
 */
export function boardGroups(base: EvidenceBase, colours: readonly PaletteColour[], order: BoardOrder): readonly BoardGroup[] {
  if (order === 'as-placed') return colours.length === 0 ? [] : [{ key: '', ids: [], colours }];
  const groups = new Map<string, { ids: readonly string[]; colours: PaletteColour[] }>();
  for (const colour of sortPalette(colours, order === 'source' ? 'dyestuff' : 'hue')) {
    const ids = order === 'source' ? colour.judgement.route.dyes : order === 'route' ? sourceRegions(base, colour) : [];
    const key = ids.length > 0 ? ids.join(' ') : wordOf(colour, order);
    const group = groups.get(key);
    if (group) group.colours.push(colour);
    else groups.set(key, { ids, colours: [colour] });
  }
  const rank = ([key, { ids }]: readonly [string, { ids: readonly string[] }]): number => {
    if (order === 'hue') return HUE_FAMILIES.findIndex((family) => family === key);
    if (ids.length > 0) return ORIGINS.length;
    return key === 'undyed' ? 99 : key === '' ? 98 : ORIGINS.findIndex((origin) => origin === key);
  };
  return [...groups]
    .sort((a, b) => rank(a) - rank(b) || (order === 'source' ? 0 : a[0] < b[0] ? -1 : 1))
    .map(([key, group]) => ({ key, ...group }));
}

const wordOf = ({ family, origin }: PaletteColour, order: BoardOrder): string => (order === 'hue' ? family : (origin ?? ''));

/** Where the dyestuffs that were not to hand are recorded as growing or made in those years; three regions at most, by how many claims name them. */
function sourceRegions(base: EvidenceBase, { judgement }: PaletteColour): readonly string[] {
  const counts = new Map<string, number>();
  for (const { material, standing, claims } of judgement.materials) {
    if (material.role !== 'dye' || standing === 'local') continue;
    for (const { placed, time, place, hard } of claims) {
      const made = ['wild', 'grown', 'made'].includes(placed.claim.status);
      if (!made || !hard || place === 'here' || place === 'within' || (time !== 'throughout' && time !== 'part')) continue;
      if (base.regions.parentsOf(placed.region).length === 0) continue;
      counts.set(placed.region, (counts.get(placed.region) ?? 0) + 1);
    }
  }
  return [...counts]
    .sort(([a, many], [b, few]) => few - many || (a < b ? -1 : 1))
    .slice(0, 3)
    .map(([region]) => region);
}
