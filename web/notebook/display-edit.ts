import type { Box } from '../domain/display/lay-out.ts';
import type { BoardOrder, DisplayPlace, LightSetting, Sheet } from '../domain/note/display-record.ts';
import type { NoteToSave } from './ports-writing.ts';

/** Words of a caption that rest on a claim (`weld#12`) or a note (`wq24-001`). */
export interface TypedBinding {
  readonly claim: string;
  readonly says: string;
}

/** A caption as its writer has it. */
export interface TypedCaption {
  /** BCP 47. */
  readonly lang: string;
  readonly headline: string;
  readonly text: string;
  readonly claims: readonly TypedBinding[];
}

/** What somebody arranging a board wants written into its note. `nth` counts the captions as they are shown. */
export type DisplayEdit =
  /** Cloths stay where they lie. */
  | { readonly is: 'places'; readonly boxes: readonly { readonly what: string; readonly box: Box }[] }
  /** Places given by hand are given up; the order lays everything out. */
  | { readonly is: 'laid-anew'; readonly order: BoardOrder }
  | { readonly is: 'sheet'; readonly sheet: Sheet }
  | {
      readonly is: 'place';
      readonly what: string;
      readonly change: Partial<Pick<DisplayPlace, 'form' | 'cloth' | 'caption'>>;
    }
  /** Without `nth` a new caption. */
  | { readonly is: 'caption'; readonly what: string; readonly nth?: number; readonly caption: TypedCaption }
  | { readonly is: 'caption-removed'; readonly nth: number }
  /** Somebody read the caption again: it stands on its claims as they are now. */
  | { readonly is: 'held'; readonly nth: number }
  | { readonly is: 'comment'; readonly nth: number; readonly by: string; readonly date: string; readonly says: string }
  | {
      readonly is: 'decision';
      readonly nth: number;
      readonly comment: number;
      readonly decision: 'accepted' | 'declined';
      readonly reason: string;
    }
  /** A cloth on show was measured again: goes into the note of checks of its sample, a new one at the first. */
  | { readonly is: 'measured'; readonly code: string; readonly day: string; readonly lab: string }
  | { readonly is: 'light'; readonly light: Omit<LightSetting, 'from'> & { readonly from?: string } }
  /** The web address the published page will have; '' takes it out. */
  | { readonly is: 'published-at'; readonly address: string }
  /** The board is printed anew: its version number goes up. */
  | { readonly is: 'version' };

/** The note to be saved, or why the edit cannot be made, in words. */
export type DisplayEdited = { readonly is: 'note'; readonly note: NoteToSave } | { readonly is: 'refused'; readonly says: string };
