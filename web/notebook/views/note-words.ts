import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import type { NoteKind, Ref, WrittenDate } from '../../domain/note/note.ts';
import { sourceText, titleOf } from '../words/claim-line.ts';
import { joinLines, type Line, plain, quiet } from './line.ts';

/** References, dates and lists of a note as lines of words that lead on. */
export class NoteWords {
  constructor(readonly base: EvidenceBase) {}

  /** A reference with the title of the note it means; as written where it means none. */
  ref(ref: Ref | undefined, kinds: readonly NoteKind[]): Line {
    if (!ref) return [];
    const id = this.base.resolve(ref.text, kinds);
    return this.base.note(id) ? [{ text: titleOf(this.base, id), note: id }] : plain(this.#undyed(ref.text));
  }

  refs(refs: readonly Ref[], kinds: readonly NoteKind[]): Line {
    return joinLines(
      refs.map((ref) => this.ref(ref, kinds)),
      ', ',
    );
  }

  region(ref: Ref | undefined): Line {
    if (!ref) return [];
    const id = this.base.regionId(ref.text);
    return id === undefined
      ? plain(ref.text)
      : this.base.note(id)
        ? [{ text: titleOf(this.base, id), note: id }]
        : plain(titleOf(this.base, id));
  }

  /** A date as written, with its reading behind it where that says more. */
  date(when: WrittenDate | undefined): Line {
    if (!when) return [];
    const span = this.base.spanOf(when);
    const reading = span && formatSpan(span);
    const written = when.text.replace(/(\d)-(\d{3,4})$/, '$1–$2');
    return [{ text: when.text }, ...(reading === undefined || reading === written ? [] : [quiet(` read as ${reading}`)])];
  }

  sources(sources: Parameters<typeof sourceText>[0]): Line {
    return sources.length === 0 ? [] : plain(sourceText(sources));
  }

  /** `fibre/undyed name` as "name (Fibre)". */
  #undyed(text: string): string {
    return text.includes('/') ? titleOf(this.base, text) : text;
  }
}
