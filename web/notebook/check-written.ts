import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { labTriple } from '../domain/colour/parse-lab-text.ts';
import { isoDay } from '../domain/light/iso-day.ts';
import { itemCount } from '../domain/note/item-number.ts';
import type { DisplayEdit, DisplayEdited } from './display-edit.ts';
import { spliced } from './note-splices.ts';
import { folderOf, stemFrom } from './starters.ts';
import { spliceErrorWords } from './words/save-words.ts';

/** A reading of a cloth on show, as a note of the checks of its sample: the reading is added, nothing else is touched. */
export function checkWritten(base: EvidenceBase, edit: Extract<DisplayEdit, { readonly is: 'measured' }>): DisplayEdited {
  const day = isoDay(edit.day);
  const typed = labTriple(edit.lab.trim().replace(/\s+/g, ' '));
  if (edit.code === '') return { is: 'refused', says: 'This cloth has no code, so a reading of it could not be found again.' };
  if (!day) return { is: 'refused', says: `“${edit.day}” is no day. Write for example: 2027-04-01` };
  if (!typed?.isPossible) return { is: 'refused', says: `“${edit.lab}” is no Lab. Write three numbers, for example: 44.8, 47.1, 10.2` };
  const id = `checks-${stemFrom(edit.code, 'sample')}`;
  const note = base.note(id);
  const start = note?.source ?? EMPTY;
  const reading = { date: day, colour: { lab: [...typed.lab], illuminant: 'D65', observer: 10, by: 'instrument' } };
  const text = spliced(start, [
    ...(note
      ? []
      : ([
          [['title'], `${edit.code} on show, measured again`],
          [['sample'], edit.code],
        ] as const)),
    [['readings', itemCount(start, ['readings'])], reading],
  ]);
  if (!text.ok) return { is: 'refused', says: spliceErrorWords[text.error] };
  const path = note?.file ?? `${folderOf('exposure')}/${id}.md`;
  return { is: 'note', note: { path, text: text.value, ...(note ? { basedOn: note.source } : {}) } };
}

const EMPTY = '---\nkind: exposure\n---\n\nReadings of the cloth on the board, to be held against its master sample.\n';
