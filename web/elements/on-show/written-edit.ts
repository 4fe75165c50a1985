import type { DisplayEdit } from '../../notebook/display-edit.ts';
import type { Engine } from '../../notebook/engine.ts';
import { editOutcomeText } from '../../notebook/words/edit-words.ts';
import { NoteSaveRequestEvent } from '../write/write-events.ts';

/**
 * Has an edit made in a display's note and the note saved.
 *
 * @param element sends the wish to save, `tg-note-save-request`.
 * @returns '' once it is saved, else why not.
 */
export async function writtenEdit(element: HTMLElement, engine: Engine | undefined, id: string, edit: DisplayEdit): Promise<string> {
  const edited = await engine?.displayEdit(id, edit);
  if (edited?.is !== 'note') return edited?.says ?? 'This display is no longer in the notebook.';
  const request = new NoteSaveRequestEvent(edited.note);
  element.dispatchEvent(request);
  return editOutcomeText(await request.answer);
}
