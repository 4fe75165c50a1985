import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { SwatchColour } from '../domain/colour/swatch-colour.ts';
import type { DateSpan } from '../domain/date/date-span.ts';
import type { DisplayPlace, DisplayRecord } from '../domain/note/display-record.ts';
import type { NoteRecord, PaletteRecord } from '../domain/note/note.ts';
import { type PaletteColour, paletteOf } from '../domain/palette/palette.ts';
import { usualSamples } from '../domain/palette/mean-colour.ts';
import type { DyedSample } from '../domain/verdict/cloths.ts';
import type { Notebook } from './notebook.ts';
import { type PosedQuestion, poseCircumstances } from './pose-question.ts';
import type { TypedPalette } from './typed-palette.ts';

/** One colour of a display, judged as the notes stand now. */
export interface ShownColour {
  /** As the palette or the display names it; its address inside the display. */
  readonly what: string;
  readonly place?: DisplayPlace;
  /** Absent when the notebook can judge it no more. */
  readonly colour?: PaletteColour;
  /** The sample that hangs there; absent for undyed cloth. */
  readonly sample?: DyedSample;
  /** The colour that is shown: the sample's own where one was chosen, else the recipe's mean. */
  readonly swatch?: SwatchColour;
}

/** A display with the question it answers and its colours. */
export interface Shown {
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly record: DisplayRecord;
  readonly palette?: { readonly id: string; readonly title: string; readonly record: PaletteRecord };
  readonly asked: TypedPalette;
  /** Absent where place or date of the palette cannot be read. */
  readonly question?: PosedQuestion;
  readonly when?: DateSpan;
  /** In the order of the palette, what only the display names behind it. */
  readonly colours: readonly ShownColour[];
  /** Every colour of the notebook for that question. */
  readonly all: readonly PaletteColour[];
}

/** The displays of a notebook. */
export const displayNotes = ({ base }: Notebook): readonly { readonly id: string; readonly title: string }[] =>
  base.ofKind('display').map(({ id, title }) => ({ id: String(id), title }));

/** A display's colours; undefined when there is no display note of that id. */
export function shownColours({ base, colours }: Notebook, id: string): Shown | undefined {
  const note = base.note(id);
  if (note?.record.kind !== 'display') return undefined;
  const { record } = note;
  const palette = paletteNote(base, record);
  const asked = askedOf(base, palette?.record);
  const { question } = poseCircumstances(base, asked);
  const all = question ? paletteOf(base, colours, question.route) : [];
  const keeps = palette?.record.keeps ?? [];
  const more = record.places.filter(({ what }) => !keeps.some((keep) => keep.what.text === what.text));
  const named = [
    ...keeps.map((keep) => ({
      what: keep.what.text,
      trial: keep.trial?.text,
      place: record.places.find(({ what }) => what.text === keep.what.text),
    })),
    ...more.map((place) => ({ what: place.what.text, trial: undefined, place })),
  ];
  return {
    id: String(note.id),
    title: note.title,
    file: note.file,
    record,
    ...(palette && { palette }),
    asked,
    ...(question && { question, when: question.when }),
    colours: named.map(({ what, trial, place }) => shownColour(base, all, what, place?.trial?.text ?? trial, place)),
    all,
  };
}

function paletteNote(base: EvidenceBase, { palette }: DisplayRecord): Shown['palette'] {
  const note = palette && base.note(base.resolve(palette.text, ['palette']));
  return note?.record.kind === 'palette' ? { id: String(note.id), title: note.title, record: note.record } : undefined;
}

function askedOf(base: EvidenceBase, record: Extract<NoteRecord, { kind: 'palette' }> | undefined): TypedPalette {
  return {
    region: (record?.region && base.regionId(record.region.text)) ?? '',
    when: record?.when?.text ?? '',
    ...(record?.fibre && { fibre: base.resolve(record.fibre.text, ['fibre']) }),
    ...(record?.wearer && { wearer: base.resolve(record.wearer.text, ['wearer']) }),
  };
}

function shownColour(
  base: EvidenceBase,
  all: readonly PaletteColour[],
  what: string,
  trial: string | undefined,
  place: DisplayPlace | undefined,
): ShownColour {
  const recipe = base.resolve(what, ['recipe']);
  const trialId = trial === undefined ? undefined : base.resolve(trial, ['trial']);
  const own = all.filter(({ judgement: { route } }) => route.id === recipe || route.id === what);
  const isChosen = (one: DyedSample) =>
    place?.code !== undefined ? one.sample.code === place.code : trialId !== undefined && one.trial === trialId;
  const colour = own.find(({ samples }) => samples.some(isChosen)) ?? own[0];
  const chosen = colour?.samples.find(isChosen);
  const sample = chosen ?? (colour && usualSamples(base, colour.samples)[0]);
  const swatch = chosen?.colour ?? colour?.colour;
  return { what, ...(place && { place }), ...(colour && { colour }), ...(sample && { sample }), ...(swatch && { swatch }) };
}
