import { addDays, isoDay, type IsoDay } from '../../domain/light/iso-day.ts';
import type { WrittenDate } from '../../domain/note/note.ts';
import { measuredAgain } from '../measured-again.ts';
import type { Notebook } from '../notebook.ts';
import { displayNotes, type Shown, shownColours } from '../shown-colours.ts';
import { dayWords } from '../words/day-words.ts';
import { captionsOf } from './caption-view.ts';
import { plannedLight } from './light-plan-view.ts';

/** What has to be done. */
export type DueKind = 'reprint' | 'swap' | 'rotate' | 'measure' | 'comment' | 'review';

/** One thing that is due, or soon will be. */
export interface DueItem {
  readonly kind: DueKind;
  /** Absent: now. */
  readonly day?: IsoDay;
  readonly overdue: boolean;
  readonly says: string;
  /** The note to open. */
  readonly note: string;
}

/** Days looked ahead. Our choice: a season's notice. */
const AHEAD_DAYS = 90;
/** Days after which a cloth on show is measured again. @source common practice: a yearly check against the master sample. */
const YEAR_DAYS = 365;

/**
 * What is due over all displays and notes, the longest overdue first.
 *
 * @param now UTC, ISO 8601.
 */
export function dueListView(notebook: Notebook, now: string): readonly DueItem[] {
  const today = isoDay(now.slice(0, 10));
  const horizon = today && addDays(today, AHEAD_DAYS);
  if (!today || !horizon) return [];
  const dated = (kind: DueKind, day: IsoDay, says: string, note: string): readonly DueItem[] =>
    day > horizon ? [] : [{ kind, day, overdue: day < today, says, note }];
  const items = [
    ...displayNotes(notebook).flatMap(({ id }) => {
      const shown = shownColours(notebook, id);
      return shown ? dueOf(notebook, shown, now, today, dated) : [];
    }),
    ...[...notebook.base.notes()].flatMap((note): readonly DueItem[] => {
      const day = lastDayOf(note.reviewBy);
      return day ? dated('review', day, `${note.title}: read its sources again.`, note.id) : [];
    }),
  ];
  const keyOf = (item: DueItem) => `${item.day ?? today} ${item.says}`;
  return items.sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
}

function dueOf(
  notebook: Notebook,
  shown: Shown,
  now: string,
  today: IsoDay,
  dated: (kind: DueKind, day: IsoDay, says: string, note: string) => readonly DueItem[],
): readonly DueItem[] {
  const { title, id, record } = shown;
  const captions = shown.colours.flatMap((one) => captionsOf(notebook, shown, one).map((caption) => ({ one, caption })));
  const stale = captions.filter(({ caption }) => caption.stale.length > 0);
  const open = captions.flatMap(({ caption }) => caption.notices.filter(({ code }) => code === 'comment-open'));
  const hung = isoDay(record.light?.from?.text ?? '');
  const plan = hung && plannedLight(notebook, shown, {}, now);
  return [
    ...stale.map(({ caption }): DueItem => ({
      kind: 'reprint',
      overdue: true,
      says: `${title}: reprint “${caption.headline}”. ${caption.stale.join(' ')}`,
      note: id,
    })),
    ...open.map(({ says }): DueItem => ({ kind: 'comment', overdue: false, says: `${title}: ${says}`, note: id })),
    ...(plan?.colours ?? []).flatMap((colour) => {
      const next = colour.turns.find(({ until }, at) => until >= today && at < colour.turns.length - 1);
      if (next && colour.corrected === '') {
        const after = colour.turns[colour.turns.indexOf(next) + 1];
        return dated('swap', next.until, `${title}: swap ${colour.title}, ${next.code} down, ${after?.code ?? ''} up.`, id);
      }
      return colour.rotateBy ? dated('rotate', colour.rotateBy, `${title}: take down ${colour.title}; ${colour.rotateBecause}.`, id) : [];
    }),
    ...(hung
      ? shown.colours.flatMap(({ sample, colour }) => {
          const code = sample?.sample.code ?? '';
          if (code === '' || !colour) return [];
          const last = measuredAgain(notebook.base, code, sample?.colour.lab10);
          const since = last && last.day > hung ? last.day : hung;
          const due = addDays(since, YEAR_DAYS);
          const was = last ? ` Last on ${dayWords(last.day)}: grade ${last.change.step}, ΔE00 ${last.deltaE00.toFixed(1)}.` : '';
          return due ? dated('measure', due, `${title}: measure ${code} against its master sample.${was}`, id) : [];
        })
      : []),
  ];
}

/** The last day of a date: of a day itself, of a year its end. */
function lastDayOf(when: WrittenDate | undefined): IsoDay | undefined {
  if (!when) return undefined;
  const end = when.span?.latestEnd;
  return isoDay(when.text) ?? (typeof end === 'number' ? isoDay(`${String(end).padStart(4, '0')}-12-31`) : undefined);
}
