import { weighClaims } from '../../domain/verdict/weigh-claims.ts';
import type { TypedCaption } from '../display-edit.ts';
import type { Notebook } from '../notebook.ts';
import { type ShownColour, shownColours } from '../shown-colours.ts';
import { claimLine, titleOf } from '../words/claim-line.ts';
import { type CaptionView, captionView } from './caption-view.ts';

/** Something a clause can rest on. */
export interface Backing {
  /** As a binding names it: `weld#12`, `wq24-001`. */
  readonly claim: string;
  /** "Weld grew wild, German lands, 1301–1700 (ploss-1962)". */
  readonly title: string;
}

/** A caption that is being written: weighed as it stands, and what its clauses can rest on. */
export interface CaptionDeskView {
  readonly caption: CaptionView;
  /** Clauses that state a fact and rest on nothing yet. */
  readonly unbound: readonly string[];
  readonly backings: readonly Backing[];
}

/**
 * Weighs a caption while it is written.
 *
 * @param nth which caption of the display it is; a new one without.
 * @returns undefined where the display has no such colour.
 */
export function captionDeskView(
  notebook: Notebook,
  id: string,
  what: string,
  nth: number | undefined,
  typed: TypedCaption,
): CaptionDeskView | undefined {
  const shown = shownColours(notebook, id);
  const one = shown?.colours.find((colour) => colour.what === what);
  if (!shown || !one) return undefined;
  const kept = nth === undefined ? undefined : shown.record.captions[nth];
  const range = [0, 0] as const;
  const claims = typed.claims.map(
    ({ claim, says }) => kept?.claims.find((bound) => bound.claim === claim && (bound.says ?? '') === says) ?? { range, claim, says },
  );
  const base = kept ?? { range, about: { text: what, range }, review: [] };
  const caption = captionView(notebook, shown, one, { ...base, ...typed, claims }, nth ?? -1);
  return {
    caption,
    unbound: caption.notices.flatMap(({ code, range: at }) =>
      code === 'clause-unbound' && at ? [typed.text.slice(at[0], at[1]).replace(/(?<![.;:,])[.;:,]+$/, '')] : [],
    ),
    backings: backingsOf(notebook, one),
  };
}

/** The claims that weigh for and against a colour, its trial, and the textiles and texts that show it; each once. */
function backingsOf({ base }: Notebook, { colour, sample }: ShownColour): readonly Backing[] {
  if (!colour) return [];
  const { judgement } = colour;
  const { speaksFor, speaksAgainst, nearest } = weighClaims(judgement);
  const claims = [...speaksFor, ...speaksAgainst, ...nearest].map((judged): Backing => {
    const { says, region, years, source } = claimLine(base, judged);
    const { note, nth } = judged.placed.claim;
    return { claim: `${note}#${nth}`, title: `${says}, ${region}, ${years}${source === '' ? '' : ` (${source})`}` };
  });
  const notes = [...(sample ? [sample.trial] : []), ...judgement.witnesses.map(({ note }) => note)];
  const all = [...notes.map((note): Backing => ({ claim: note, title: `${titleOf(base, note)} (${note})` })), ...claims];
  return all.filter((backing, at) => all.findIndex(({ claim }) => claim === backing.claim) === at);
}
