import { type EvidenceBase, MATERIAL_KINDS } from '../claim/evidence-base.ts';
import type { NoteId, TrialRecord } from '../note/note.ts';
import { routeOf } from './route.ts';

/** Roles that make the colour: with another of these in the pot it is another dyeing. Assistants are not counted. Our choice. */
const TELLING: ReadonlySet<string> = new Set(['dye', 'mordant', 'modifier', 'process']);

/**
 * Materials a trial used that its recipe does not ask for and that it does not declare, ingredient by ingredient, to stand for
 * one that it does. Words among the deviations declare nothing: what was used could not be judged as anything historic.
 * What a trial does not list is silence and no deviation; amounts, times and assistants are not looked at.
 *
 * @returns ids, in the order the trial lists them; empty where its recipe is not in the notebook.
 */
export function undeclaredIn(base: EvidenceBase, trial: TrialRecord, recipe: string): readonly string[] {
  if (trial.actual.length === 0 || base.note(recipe)?.record.kind !== 'recipe') return [];
  const asked = new Set(
    routeOf(base, recipe as NoteId, undefined).materials.flatMap(({ id, usedInstead }) =>
      usedInstead === undefined ? [id] : [id, usedInstead],
    ),
  );
  return trial.actual.flatMap(({ what, standsFor, role }) => {
    if (!what) return [];
    const id = base.resolve(what.text, MATERIAL_KINDS);
    const note = base.note(id);
    const does = role ?? (note?.record.kind === 'dyestuff' ? 'dye' : note?.record.kind);
    if (does === undefined || !TELLING.has(does) || asked.has(id)) return [];
    return standsFor && asked.has(base.resolve(standsFor.text, MATERIAL_KINDS)) ? [] : [id];
  });
}
