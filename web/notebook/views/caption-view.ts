import { captionSubject } from '../../domain/caption/caption-subject.ts';
import { checkCaption } from '../../domain/caption/check-caption.ts';
import { staleness } from '../../domain/caption/stale.ts';
import { withoutDoses } from '../../domain/pot/without-doses.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import type { DisplayCaption } from '../../domain/note/display-record.ts';
import type { Notebook } from '../notebook.ts';
import type { Shown, ShownColour } from '../shown-colours.ts';
import { captionChangeText, captionFindingText } from '../words/caption-words.ts';
import { type CaptionDraft, draftCaption } from '../words/draft-caption.ts';

/** A finding about a caption and where in its text it is. */
export interface CaptionNotice {
  readonly code: string;
  readonly says: string;
  readonly range?: readonly [start: number, end: number];
}

/** A caption as it stands in the note, weighed. */
export interface CaptionView {
  /** Its number among the captions of the note. */
  readonly nth: number;
  readonly lang: string;
  /** Headline and text as anybody may read them: where an amount is never shown, a blank. */
  readonly headline: string;
  readonly text: string;
  /** As the note has them, for the form alone in which they are written. */
  readonly written: { readonly headline: string; readonly text: string };
  readonly version: number;
  readonly words: number;
  /** "grade 6.2"; empty where it is not read. */
  readonly grade: string;
  readonly notices: readonly CaptionNotice[];
  /** What changed behind it; empty when it is fresh. */
  readonly stale: readonly string[];
  /** The words of the text that rest on a claim or note, with where they stand. */
  readonly bound: readonly { readonly claim: string; readonly says: string; readonly range?: readonly [start: number, end: number] }[];
  readonly review: readonly CaptionComment[];
  /** Set where a check knows only English and was left out. */
  readonly onlyPartlyChecked: boolean;
}

/** A comment on a caption. */
export interface CaptionComment {
  readonly by: string;
  readonly date: string;
  readonly says: string;
  readonly decision: 'open' | 'accepted' | 'declined';
  readonly reason: string;
}

/** The captions of one colour, one for each language. */
export function captionsOf(notebook: Notebook, shown: Shown, one: ShownColour): readonly CaptionView[] {
  return shown.record.captions.flatMap((caption, nth) =>
    caption.about.text === one.what ? [captionView(notebook, shown, one, caption, nth)] : [],
  );
}

/** A caption weighed as it stands. */
export function captionView({ base }: Notebook, shown: Shown, one: ShownColour, caption: DisplayCaption, nth: number): CaptionView {
  const region = shown.question?.route.region;
  const subject =
    one.colour && region !== undefined
      ? captionSubject(base, one.colour.judgement, one.sample, region)
      : { dyes: [], placeNames: [], factNames: [], standIns: [] };
  const say = (text: string) => withoutDoses(base, text);
  const check = checkCaption(caption, { ...subject, shown: say });
  const stale = staleness(base, caption, todayOf(shown, one));
  const written = { headline: caption.headline ?? '', text: caption.text };
  const text = say(written.text);
  // Places in a text that is not shown as it stands would mark other words.
  const placed = text === written.text;
  return {
    nth,
    lang: caption.lang,
    headline: say(written.headline),
    text,
    written,
    version: caption.version ?? 1,
    words: check.words,
    grade: check.grade === undefined ? '' : `grade ${Math.max(0, check.grade).toFixed(1)}`,
    notices: check.findings.map((finding) => ({
      code: finding.code,
      says: say(captionFindingText(finding)),
      ...(placed && finding.range && { range: finding.range }),
    })),
    stale: stale.map((change) => captionChangeText(base, change)),
    bound: caption.claims.map(({ claim, says = '' }) => {
      const at = says === '' ? -1 : caption.text.indexOf(says);
      return { claim, says, ...(at < 0 || !placed ? {} : { range: [at, at + says.length] as const }) };
    }),
    review: caption.review.map(({ by = '', date, says = '', decision, reason = '' }) => ({
      by,
      date: date?.text ?? '',
      says: say(says),
      decision: decision ?? 'open',
      reason: say(reason),
    })),
    onlyPartlyChecked: check.unchecked.length > 0,
  };
}

/** How a colour is judged today, as a caption keeps it. */
export const todayOf = ({ question, when }: Shown, { colour }: ShownColour) => ({
  ...(colour && { verdict: colour.judgement.verdict }),
  ...(question && { region: question.route.region }),
  ...(when && { when: formatSpan(when) }),
});

/** A caption drafted for a colour; undefined where it cannot be judged. */
export function draftOf({ base }: Notebook, shown: Shown, one: ShownColour): CaptionDraft | undefined {
  if (!one.colour || !shown.question || !shown.when) return undefined;
  const { judgement, family, fibre } = one.colour;
  return draftCaption(base, {
    judgement,
    family,
    region: shown.question.route.region,
    when: shown.when.text,
    ...(fibre === undefined ? {} : { fibre }),
    ...(one.sample && { sample: one.sample }),
  });
}
