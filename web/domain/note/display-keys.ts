import { date } from './date-shape.ts';
import {
  BOARD_ORDERS,
  type BoundClaim,
  CAPTION_SPOTS,
  DECISIONS,
  type DisplayCaption,
  type DisplayPlace,
  type LightSetting,
  ORIENTATIONS,
  PLACE_CLOTHS,
  PLACE_FORMS,
  type ReviewComment,
  type Sheet,
  SHEET_SIZES,
  type SwapSet,
  ULTRAVIOLETS,
  WINDOWS,
} from './display-record.ts';
import { group } from './group-shape.ts';
import { number, reference, text, word } from './plain-shapes.ts';
import { listOf, needed } from './shape.ts';

/** The longest side of a sheet read, in mm. Our choice: what a hall's wall holds. */
const LONGEST_MM = 10_000;
const millimetres = number(0, LONGEST_MM);
const COUNT = number(1, 100_000, true);
const what = needed(reference('recipe', 'fibre'));

const sheet = group(
  { size: word(SHEET_SIZES), orientation: word(ORIENTATIONS), width: millimetres, height: millimetres },
  (v): Sheet => ({
    size: v.size ?? (v.width !== undefined && v.height !== undefined ? 'free' : 'a3'),
    orientation: v.orientation ?? 'portrait',
    widthMm: v.width,
    heightMm: v.height,
  }),
  'size',
);

const place = group(
  {
    what,
    trial: reference('trial'),
    code: text,
    x: millimetres,
    y: millimetres,
    w: millimetres,
    h: millimetres,
    form: word(PLACE_FORMS),
    cloth: word(PLACE_CLOTHS),
    caption: word(CAPTION_SPOTS),
  },
  (v, { range }): DisplayPlace | undefined =>
    v.what && {
      range,
      what: v.what,
      trial: v.trial,
      code: v.code,
      x: v.x,
      y: v.y,
      widthMm: v.w,
      heightMm: v.h,
      form: v.form ?? 'swatch',
      cloth: v.cloth ?? 'printed',
      caption: v.caption ?? 'below',
    },
  'what',
);

const boundClaim = group(
  {
    claim: needed(text),
    says: text,
    material: text,
    status: text,
    region: text,
    when: text,
    'known-by': text,
    sure: text,
    source: text,
  },
  ({ claim, 'known-by': knownBy, ...v }, { range }): BoundClaim | undefined =>
    claim === undefined ? undefined : { range, claim, knownBy, ...v },
  'claim',
);

const reviewComment = group(
  { by: text, date, says: needed(text), decision: word(DECISIONS), reason: text },
  (v, { range }): ReviewComment => ({ range, ...v }),
  'says',
);

const caption = group(
  {
    for: what,
    lang: text,
    headline: text,
    text: needed(text),
    verdict: text,
    region: text,
    when: text,
    claims: listOf(boundClaim),
    version: COUNT,
    review: listOf(reviewComment),
  },
  ({ for: about, lang, text: words, ...v }, { range }): DisplayCaption | undefined =>
    about && { range, about, lang: lang ?? 'en', text: words ?? '', ...v },
);

const light = group(
  {
    lux: number(0, 200_000),
    'hours-per-day': number(0, 24),
    'days-per-year': number(0, 366),
    uv: word(ULTRAVIOLETS),
    window: word(WINDOWS),
    from: date,
  },
  ({ 'hours-per-day': hoursPerDay, 'days-per-year': daysPerYear, ...v }): LightSetting => ({ hoursPerDay, daysPerYear, ...v }),
);

const swapSet = group(
  { what, codes: listOf(text), days: number(1, 36_500, true) },
  (v, { range }): SwapSet | undefined => v.what && { range, what: v.what, codes: v.codes, days: v.days },
);

/** The own keys of a display. */
export const DISPLAY_KEYS = {
  palette: needed(reference('palette')),
  order: word(BOARD_ORDERS),
  sheet,
  places: listOf(place),
  captions: listOf(caption),
  light,
  'swap-sets': listOf(swapSet),
  'published-at': text,
  version: COUNT,
};
