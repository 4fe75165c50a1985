/** What the index takes; made where the notes are, so that only plain strings cross to a worker. */
export { noteDocument, type NoteDocument } from '../domain/note/note-document.ts';
