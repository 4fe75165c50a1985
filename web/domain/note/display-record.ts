import type { TextRange } from '../diagnostic.ts';
import type { Ref, WrittenDate } from './note.ts';

export const SHEET_SIZES = ['a4', 'a3', 'a2', 'a1', 'free'] as const;
export const ORIENTATIONS = ['portrait', 'landscape'] as const;
export const PLACE_FORMS = ['swatch', 'skein'] as const;
export const PLACE_CLOTHS = ['printed', 'real'] as const;
export const CAPTION_SPOTS = ['below', 'beside', 'none'] as const;
export const BOARD_ORDERS = ['hue', 'source', 'origin', 'route', 'as-placed'] as const;
export const DECISIONS = ['accepted', 'declined'] as const;
export const ULTRAVIOLETS = ['removed', 'rich'] as const;
export const WINDOWS = ['none', 'north', 'sunny'] as const;

/** How the colours of a board are grouped and ordered. */
export type BoardOrder = (typeof BOARD_ORDERS)[number];

/** The paper or board, in millimetres where it is `free`. */
export interface Sheet {
  readonly size: (typeof SHEET_SIZES)[number];
  readonly orientation: (typeof ORIENTATIONS)[number];
  readonly widthMm?: number;
  readonly heightMm?: number;
}

/** Where one colour lies on the sheet; without numbers it is laid out by the board's order. */
export interface DisplayPlace {
  readonly range: TextRange;
  /** A recipe, or `fibre/undyed name`. */
  readonly what: Ref;
  readonly trial?: Ref;
  /** The sample that hangs there. */
  readonly code?: string;
  /** Millimetres from the left and from the top of the sheet. */
  readonly x?: number;
  readonly y?: number;
  readonly widthMm?: number;
  readonly heightMm?: number;
  readonly form: (typeof PLACE_FORMS)[number];
  /** `real`: a window in the print, for the cloth itself. */
  readonly cloth: (typeof PLACE_CLOTHS)[number];
  readonly caption: (typeof CAPTION_SPOTS)[number];
}

/** A claim, or a note's own date and source, as it stood when the caption was last held to it. Every value as words. */
export interface BoundClaim {
  readonly range: TextRange;
  /** `note#nth` for a claim, or a note's id: a trial, a textile, a text. */
  readonly claim: string;
  /** The words of the caption that rest on it. */
  readonly says?: string;
  readonly material?: string;
  readonly status?: string;
  readonly region?: string;
  readonly when?: string;
  readonly knownBy?: string;
  readonly sure?: string;
  readonly source?: string;
}

/** What a reviewer said, and what was done about it. */
export interface ReviewComment {
  readonly range: TextRange;
  readonly by?: string;
  readonly date?: WrittenDate;
  readonly says?: string;
  readonly decision?: (typeof DECISIONS)[number];
  readonly reason?: string;
}

/** What the public reads beside one colour, in one language. */
export interface DisplayCaption {
  readonly range: TextRange;
  /** The recipe, or `fibre/undyed name`, it stands beside. */
  readonly about: Ref;
  /** BCP 47; `en` where nothing is said. */
  readonly lang: string;
  readonly headline?: string;
  readonly text: string;
  /** The verdict, place and date it was written for. */
  readonly verdict?: string;
  readonly region?: string;
  readonly when?: string;
  readonly claims: readonly BoundClaim[];
  /** Counts from 1. */
  readonly version?: number;
  readonly review: readonly ReviewComment[];
}

/** How the board is lit. */
export interface LightSetting {
  readonly lux?: number;
  readonly hoursPerDay?: number;
  readonly daysPerYear?: number;
  readonly uv?: (typeof ULTRAVIOLETS)[number];
  readonly window?: (typeof WINDOWS)[number];
  /** The day it goes up. */
  readonly from?: WrittenDate;
}

/** Samples of one colour that hang in turn, the first one first. */
export interface SwapSet {
  readonly range: TextRange;
  readonly what: Ref;
  readonly codes: readonly string[];
  /** Days each of them hangs; absent: as the light allows. */
  readonly days?: number;
}

/** How a palette is shown. */
export interface DisplayRecord {
  readonly kind: 'display';
  readonly palette?: Ref;
  readonly order?: BoardOrder;
  readonly sheet?: Sheet;
  readonly places: readonly DisplayPlace[];
  readonly captions: readonly DisplayCaption[];
  readonly light?: LightSetting;
  readonly swapSets: readonly SwapSet[];
  /** The web address its published page will have; QR codes on labels lead there. */
  readonly publishedAt?: string;
  /** Printed on the board; counts from 1. */
  readonly version?: number;
}
