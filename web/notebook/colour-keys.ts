import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { ShownColour } from './shown-colours.ts';
import { stemFrom } from './starters.ts';

/**
 * Addresses of a display's colours on its published page: letters, figures and hyphens, each once.
 * They lie on printed labels, so they follow the colour's own name; that of a private recipe is not told.
 */
export function colourKeys(base: EvidenceBase, colours: readonly ShownColour[]): ReadonlyMap<string, string> {
  const taken = new Set<string>();
  return new Map(
    colours.map(({ what, colour }) => {
      const recipe = colour?.judgement.route.recipe;
      const stem = stemFrom(recipe !== undefined && base.note(recipe)?.private === true ? '' : what, 'colour');
      let key = stem;
      for (let nth = 2; taken.has(key); nth += 1) key = `${stem}-${nth}`;
      taken.add(key);
      return [what, key];
    }),
  );
}
