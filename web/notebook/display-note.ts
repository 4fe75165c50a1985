import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { blockYaml } from '../domain/note/yaml-text.ts';
import { type DraftNote, freeId } from './lab-note.ts';
import { stemFrom } from './starters.ts';

/** A display of a palette as a note to be written: its board at A3, nothing placed yet. Undefined when there is no such palette. */
export function displayNote(base: EvidenceBase, palette: string): DraftNote | undefined {
  const note = base.note(palette);
  if (note?.record.kind !== 'palette') return undefined;
  const title = `${note.title}: the board`;
  const id = freeId(base, stemFrom(title, 'board'));
  const front = { kind: 'display', title, palette, order: 'hue', sheet: { size: 'a3', orientation: 'portrait' }, version: 1 };
  return { id, path: `displays/${id}.md`, text: `---\n${blockYaml(front, 0, '\n')}\n---\n` };
}
