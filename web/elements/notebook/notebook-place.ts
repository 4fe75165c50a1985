import { NOTE_KINDS, type NoteKind } from '../../domain/note/note.ts';
import { type DrawerBy, DRAWERS } from '../../notebook/views/drawer-view.ts';
import type { WriteMode } from '../write/tg-note-write.ts';

/** What the notebook's address asks to see. */
export type NotebookPlace =
  | { readonly is: 'drawer'; readonly by: DrawerBy; readonly card: string }
  | { readonly is: 'read'; readonly id: string }
  | {
      readonly is: 'write';
      readonly id: string;
      readonly mode: WriteMode;
      readonly place?: { readonly line: number; readonly column: number };
    }
  | { readonly is: 'versions'; readonly id: string }
  | { readonly is: 'choose' }
  | { readonly is: 'new'; readonly kind: NoteKind; readonly mode: WriteMode }
  | { readonly is: 'copy'; readonly of: string; readonly mode: WriteMode; readonly repeats?: true }
  | { readonly is: 'capture' }
  | { readonly is: 'find' };

const MODES: readonly WriteMode[] = ['form', 'text', 'both'];

/** Reads the part of an address behind `#/notebook`. */
export function notebookPlace(id: string | undefined, settings: Readonly<Record<string, string>>): NotebookPlace {
  const asked = settings['write'];
  const mode = MODES.find((one) => one === asked) ?? 'form';
  if (id !== undefined) {
    if (settings['versions'] !== undefined) return { is: 'versions', id };
    if (asked === undefined) return { is: 'read', id };
    const [line, column] = [Number(settings['line']), Number(settings['column'] ?? '1')];
    const place =
      Number.isInteger(line) && line > 0 ? { place: { line, column: Number.isInteger(column) && column > 0 ? column : 1 } } : {};
    return { is: 'write', id, mode, ...place };
  }
  if (settings['capture'] !== undefined) return { is: 'capture' };
  if (settings['find'] !== undefined) return { is: 'find' };
  const wanted = settings['new'];
  if (wanted === 'copy' && settings['of'] !== undefined) return { is: 'copy', of: settings['of'], mode };
  if (wanted === 'repeat' && settings['of'] !== undefined) return { is: 'copy', of: settings['of'], mode, repeats: true };
  if (wanted !== undefined) {
    const kind = [...NOTE_KINDS, 'plain' as const].find((one) => one === wanted);
    return kind ? { is: 'new', kind, mode } : { is: 'choose' };
  }
  return { is: 'drawer', by: DRAWERS.find((one) => one === settings['by']) ?? 'kind', card: settings['card'] ?? '' };
}

/** Where a place that is for writing leads in a notebook that can only be read. */
export function readingPlace(place: NotebookPlace): NotebookPlace {
  if (place.is === 'read' || place.is === 'drawer' || place.is === 'find') return place;
  return 'id' in place ? { is: 'read', id: place.id } : { is: 'drawer', by: 'kind', card: '' };
}
