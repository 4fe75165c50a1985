import { backingAddress, bindingOf, fingerprintAt, FINGERPRINT_PARTS, keptFingerprint } from '../domain/caption/fingerprint.ts';
import { decide, nextVersion } from '../domain/caption/review.ts';
import { nearestBacking } from '../domain/caption/stale.ts';
import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { Box } from '../domain/display/lay-out.ts';
import type { DisplayCaption } from '../domain/note/display-record.ts';
import { itemCount, itemNumber } from '../domain/note/item-number.ts';
import type { ValuePath } from '../domain/note/locate-value.ts';
import type { PlainValue } from '../domain/note/yaml-text.ts';
import type { DisplayEdit, DisplayEdited, TypedBinding, TypedCaption } from './display-edit.ts';
import type { Notebook } from './notebook.ts';
import { checkWritten } from './check-written.ts';
import { type NoteSplice, spliced } from './note-splices.ts';
import { webAddress } from './web-address.ts';
import { type Shown, shownColours } from './shown-colours.ts';
import { todayOf } from './views/caption-view.ts';
import { spliceErrorWords } from './words/save-words.ts';

/** A display note with an edit made in it; nothing else of its text changes. Undefined when there is no display of that id. */
export function editDisplay(notebook: Notebook, id: string, edit: DisplayEdit): DisplayEdited | undefined {
  const shown = shownColours(notebook, id);
  const note = notebook.base.note(id);
  if (!shown || !note) return undefined;
  if (edit.is === 'measured') return checkWritten(notebook.base, edit);
  const splices = splicesOf({ base: notebook.base, shown, source: note.source }, edit);
  if (typeof splices === 'string') return { is: 'refused', says: splices };
  const text = spliced(note.source, splices);
  return text.ok
    ? { is: 'note', note: { path: note.file, text: text.value, basedOn: note.source } }
    : { is: 'refused', says: spliceErrorWords[text.error] };
}

interface Desk {
  readonly base: EvidenceBase;
  readonly shown: Shown;
  readonly source: string;
}

const ADDRESS_UNREADABLE = 'This is no web address. Write it whole, with “https://” first, such as museum.example/board/ behind it.';
const CAPTION_GONE = 'This caption is no longer in the note as it was. Look at the page again.';
const REASON_MISSING = 'Give a reason: a comment is closed with one, whichever way it went.';

function splicesOf(desk: Desk, edit: Exclude<DisplayEdit, { readonly is: 'measured' }>): readonly NoteSplice[] | string {
  const { record } = desk.shown;
  switch (edit.is) {
    case 'places':
      return placeSplices(desk, edit.boxes);
    case 'laid-anew':
      return [[['order'], edit.order], ...looseSplices(desk)];
    case 'sheet': {
      const { size, orientation, widthMm, heightMm } = edit.sheet;
      return [[['sheet'], size === 'free' ? { size, ...sized({ width: widthMm, height: heightMm }) } : { size, orientation }]];
    }
    case 'place':
      return wordSplices(desk, edit.what, edit.change);
    case 'light': {
      const { lux, hoursPerDay, daysPerYear, uv, window, from } = edit.light;
      const values = { lux, 'hours-per-day': hoursPerDay, 'days-per-year': daysPerYear, uv, window, from };
      return Object.entries(values).flatMap(([key, value]): NoteSplice[] => (value === undefined ? [] : [[['light', key], value]]));
    }
    case 'published-at': {
      const address = edit.address.trim();
      if (address === '') return record.publishedAt === undefined ? [] : [[['published-at'], undefined]];
      return webAddress(address) === undefined ? ADDRESS_UNREADABLE : [[['published-at'], address]];
    }
    case 'version':
      return [[['version'], (record.version ?? 1) + 1]];
    case 'caption':
      return edit.nth === undefined ? newCaption(desk, edit.what, edit.caption) : captionSplices(desk, edit.nth, edit.caption);
    default:
      return reviewSplices(desk, edit);
  }
}

function reviewSplices(
  desk: Desk,
  edit: Extract<DisplayEdit, { readonly is: 'caption-removed' | 'held' | 'comment' | 'decision' }>,
): readonly NoteSplice[] | string {
  const caption = desk.shown.record.captions[edit.nth];
  const at = caption && itemNumber(desk.source, ['captions'], caption.range);
  if (!caption || at === undefined) return CAPTION_GONE;
  const path: ValuePath = ['captions', at];
  switch (edit.is) {
    case 'caption-removed':
      return [[path, undefined]];
    case 'held':
      return [...bindingSplices(desk, path, caption), ...questionSplices(desk, path, caption)];
    case 'comment': {
      const says = edit.says.trim();
      if (says === '') return 'The comment is empty.';
      const by = edit.by.trim();
      const comment = { ...(by === '' ? {} : { by }), date: edit.date, says };
      return [[[...path, 'review', itemCount(desk.source, [...path, 'review'])], comment]];
    }
    case 'decision': {
      const comment = caption.review[edit.comment];
      const nth = comment && itemNumber(desk.source, [...path, 'review'], comment.range);
      const decided = decide(edit.decision, edit.reason);
      if (nth === undefined) return CAPTION_GONE;
      if (!decided.ok) return REASON_MISSING;
      return (['decision', 'reason'] as const).map((key) => [[...path, 'review', nth, key], decided.value[key]]);
    }
  }
}

/** Only what has a number. */
const sized = (values: Readonly<Record<string, number | undefined>>): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(values).flatMap(([key, value]) => (value === undefined ? [] : [[key, value]])));

const tenth = (mm: number): number => Math.round(mm * 10) / 10;

function placeSplices(desk: Desk, boxes: readonly { readonly what: string; readonly box: Box }[]): readonly NoteSplice[] {
  const { places } = desk.shown.record;
  let next = itemCount(desk.source, ['places']);
  return boxes.flatMap(({ what, box: { x, y, widthMm, heightMm } }): readonly NoteSplice[] => {
    const box = { x: tenth(x), y: tenth(y), w: tenth(widthMm), h: tenth(heightMm) };
    const place = places.find((one) => one.what.text === what);
    const at = place && itemNumber(desk.source, ['places'], place.range);
    if (!place || at === undefined) return [[['places', next++], { what, ...box }]];
    const was = { x: place.x, y: place.y, w: place.widthMm, h: place.heightMm };
    return (['x', 'y', 'w', 'h'] as const).flatMap((key): NoteSplice[] => (was[key] === box[key] ? [] : [[['places', at, key], box[key]]]));
  });
}

/** The places without what was given by hand; one that then only names its colour goes. */
function looseSplices({ shown, source }: Desk): readonly NoteSplice[] {
  const numbers = (['x', 'y', 'widthMm', 'heightMm'] as const).map((key) => [key, KEY_OF[key]] as const);
  return shown.record.places.toReversed().flatMap((place): readonly NoteSplice[] => {
    const at = itemNumber(source, ['places'], place.range);
    if (at === undefined) return [];
    return numbers.flatMap(([key, written]): NoteSplice[] => (place[key] === undefined ? [] : [[['places', at, written], undefined]]));
  });
}

const KEY_OF = { x: 'x', y: 'y', widthMm: 'w', heightMm: 'h' } as const;

function wordSplices(desk: Desk, what: string, change: Readonly<Record<string, string | undefined>>): readonly NoteSplice[] {
  const place = desk.shown.record.places.find((one) => one.what.text === what);
  const at = place && itemNumber(desk.source, ['places'], place.range);
  const words = Object.entries(change).flatMap(([key, word]): [string, string][] => (word === undefined ? [] : [[key, word]]));
  if (at === undefined) return [[['places', itemCount(desk.source, ['places'])], { what, ...Object.fromEntries(words) }]];
  return words.map(([key, word]) => [['places', at, key], word]);
}

const isEmpty = ({ lang, text }: TypedCaption): boolean => text.trim() === '' || lang.trim() === '';
const EMPTY = 'A caption needs its language and its text.';

/** Whether another caption of the same colour is in this language already: each has one text. */
const isSpoken = ({ shown }: Desk, what: string, { lang }: TypedCaption, nth?: number): boolean =>
  shown.record.captions.some((one, at) => at !== nth && one.about.text === what && one.lang.toLowerCase() === lang.trim().toLowerCase());

const spoken = ({ lang }: TypedCaption): string =>
  `This colour has a caption in “${lang.trim()}” already: edit that one, or give this one another language.`;

function newCaption(desk: Desk, what: string, typed: TypedCaption): readonly NoteSplice[] | string {
  if (isEmpty(typed)) return EMPTY;
  if (isSpoken(desk, what, typed)) return spoken(typed);
  const headline = typed.headline.trim();
  const claims = bindingsOf(desk.base, typed.claims);
  const value = {
    for: what,
    lang: typed.lang.trim(),
    ...(headline === '' ? {} : { headline }),
    text: oneLine(typed.text),
    ...questionNow(desk, what),
    ...(claims.length === 0 ? {} : { claims }),
    version: 1,
  };
  return [[['captions', itemCount(desk.source, ['captions'])], value]];
}

/** Bindings as they are written; a claim that is nowhere is none. */
const bindingsOf = (base: EvidenceBase, typed: readonly TypedBinding[]): readonly PlainValue[] =>
  typed.flatMap(({ claim, says }) => {
    const binding = bindingOf(base, backingAddress(claim), says);
    return binding ? [binding] : [];
  });

/** A caption is one paragraph, however it was typed. */
const oneLine = (text: string): string =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join(' ');

function captionSplices(desk: Desk, nth: number, typed: TypedCaption): readonly NoteSplice[] | string {
  const caption = desk.shown.record.captions[nth];
  const at = caption && itemNumber(desk.source, ['captions'], caption.range);
  if (!caption || at === undefined) return CAPTION_GONE;
  if (isEmpty(typed)) return EMPTY;
  if (isSpoken(desk, caption.about.text, typed, nth)) return spoken(typed);
  const path: ValuePath = ['captions', at];
  const words = { lang: typed.lang.trim(), headline: typed.headline.trim(), text: oneLine(typed.text) };
  const was = { lang: caption.lang, headline: caption.headline ?? '', text: caption.text };
  const version = nextVersion({ version: caption.version, text: `${was.headline}\n${was.text}` }, `${words.headline}\n${words.text}`);
  return [
    ...(['lang', 'headline', 'text'] as const).flatMap((key): NoteSplice[] =>
      words[key] === was[key] ? [] : [[[...path, key], words[key]]],
    ),
    ...claimSplices(desk, path, caption, typed),
    ...(version === (caption.version ?? 1) ? [] : [[[...path, 'version'], version] as const]),
  ];
}

/** Bindings that stay are left alone; those let go are taken out from the end, new ones are added with their claim as it is now. */
function claimSplices(desk: Desk, path: ValuePath, caption: DisplayCaption, typed: TypedCaption): readonly NoteSplice[] {
  const stays = caption.claims.map((bound) => typed.claims.some((one) => one.claim === bound.claim && one.says === (bound.says ?? '')));
  const list: ValuePath = [...path, 'claims'];
  const gone = caption.claims.flatMap((bound, at): NoteSplice[] => {
    const nth = stays[at] ? undefined : itemNumber(desk.source, list, bound.range);
    return nth === undefined ? [] : [[[...list, nth], undefined]];
  });
  const left = itemCount(desk.source, list) - gone.length;
  const isNew = (one: TypedBinding) => !caption.claims.some((bound) => one.claim === bound.claim && one.says === (bound.says ?? ''));
  const added = bindingsOf(desk.base, typed.claims.filter(isNew));
  return [...gone.reverse(), ...added.map((binding, at): NoteSplice => [[...list, left + at], binding])];
}

/** What each binding kept brought to what its claim says now; a claim that is gone stays as it was kept. */
function bindingSplices(desk: Desk, path: ValuePath, caption: DisplayCaption): readonly NoteSplice[] {
  return caption.claims.flatMap((bound): readonly NoteSplice[] => {
    const nth = itemNumber(desk.source, [...path, 'claims'], bound.range);
    const address = nearestBacking(desk.base, bound);
    const now = address && fingerprintAt(desk.base, address);
    if (nth === undefined || !now) return [];
    const at: ValuePath = [...path, 'claims', nth];
    const kept = keptFingerprint(desk.base, bound);
    const claim = address.nth === undefined ? address.note : `${address.note}#${address.nth}`;
    return [
      ...(claim === bound.claim ? [] : [[[...at, 'claim'], claim] as const]),
      ...FINGERPRINT_PARTS.filter((part) => kept[part] !== undefined && kept[part] !== now[part]).map((part): NoteSplice => [
        [...at, part === 'knownBy' ? 'known-by' : part],
        now[part],
      ]),
    ];
  });
}

/** Verdict, place and date that a caption is written for, as they are now. */
function questionNow({ shown }: Desk, what: string): Readonly<Record<string, string>> {
  const one = shown.colours.find((colour) => colour.what === what);
  const { verdict, region } = one ? todayOf(shown, one) : {};
  return {
    ...(verdict === undefined ? {} : { verdict }),
    ...(region === undefined ? {} : { region }),
    ...(shown.asked.when === '' ? {} : { when: shown.asked.when }),
  };
}

function questionSplices(desk: Desk, path: ValuePath, caption: DisplayCaption): readonly NoteSplice[] {
  const now = questionNow(desk, caption.about.text);
  return (['verdict', 'region', 'when'] as const).flatMap((key): NoteSplice[] => {
    const value = now[key];
    return value === undefined || value === caption[key] ? [] : [[[...path, key], value]];
  });
}
