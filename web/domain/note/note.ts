import type { DateSpan } from '../date/date-span.ts';
import type { TextRange } from '../diagnostic.ts';
import type { DisplayRecord } from './display-record.ts';

/** A note's id: its file's stem unless the front matter gives one. */
export type NoteId = string & { readonly __brand: 'NoteId' };

/** Marks a string as a note id; accents taken apart, as some systems do in the names of files, make no other id. */
export const noteId = (text: string): NoteId => text.normalize('NFC') as NoteId;

export const NOTE_KINDS = [
  'dyestuff',
  'mordant',
  'assistant',
  'process',
  'fibre',
  'recipe',
  'trial',
  'textile',
  'text',
  'colour-word',
  'rule',
  'wearer',
  'region',
  'period',
  'palette',
  'display',
  'exposure',
] as const;
/** What a note records; `plain` is a file without front matter or without a kind. */
export type NoteKind = (typeof NOTE_KINDS)[number] | 'plain';

export const CHECKED = ['read-whole', 'excerpt', 'quoted-elsewhere', 'from-memory'] as const;
/** How far the source was read. */
export type Checked = (typeof CHECKED)[number];

export const STATUSES = ['wild', 'grown', 'made', 'imported', 'cloth-only', 'absent'] as const;
/** What an availability claim says; `on-cloth` comes only from textiles. */
export type Status = (typeof STATUSES)[number] | 'on-cloth';

export const KNOWN_BY = ['analysis', 'remains', 'text', 'trade', 'law', 'image', 'trial', 'practice', 'inference'] as const;
export type KnownBy = (typeof KNOWN_BY)[number];

export const SURE = ['yes', 'likely', 'doubtful'] as const;
export type Sure = (typeof SURE)[number];

export const ROLES = ['mordant', 'dye', 'assistant', 'modifier', 'process'] as const;
export type Role = (typeof ROLES)[number];

export const MATTERS = ['plant', 'insect', 'mollusc', 'lichen', 'fungus', 'mineral', 'synthetic'] as const;
export const ABSENCE_REASONS = ['not-yet-known', 'other-continent', 'looked-for', 'stated'] as const;
export const USES = ['dyeing', 'painting', 'medicine', 'food', 'not-said'] as const;
export const USUAL = ['common', 'known', 'rare', 'one-example'] as const;
export const FIBRE_CLASSES = ['protein', 'cellulose', 'skin'] as const;
export type FibreClass = (typeof FIBRE_CLASSES)[number];
export const ACTS = ['wear', 'dye', 'import', 'sell'] as const;
export const TESTED = ['no', 'none-detected', 'found'] as const;

/** `citation-key, locator`. */
export interface Citation {
  readonly key: string;
  readonly locator?: string;
  /** Where it stands in the note; absent where it was not read from one. */
  readonly range?: TextRange;
}

/** Another name, with its language where the note gives one (BCP 47). */
export interface Name {
  readonly name: string;
  readonly lang?: string;
}

/** A reference as it stands in the note: an id, a title or a name, and where it stands. */
export interface Ref {
  readonly text: string;
  readonly range: TextRange;
}

/** A date as it stands in the note: read, or undefined with a diagnostic; it may also name a period. */
export interface WrittenDate {
  readonly text: string;
  readonly range: TextRange;
  /** Absent where the text is no date; then it may be a period's id or name. */
  readonly span?: DateSpan;
}

/** A colour as the note states it, with its conditions; nothing converted. */
export interface StatedColour {
  readonly range: TextRange;
  /** CIELAB, L* 0–100. */
  readonly lab?: readonly [number, number, number];
  /** CSS hex, with `#`. */
  readonly hex?: string;
  /** XYZ, Y of white = 100. */
  readonly xyz?: readonly [number, number, number];
  /** As written, such as `D65`; absent when not stated. */
  readonly illuminant?: string;
  /** Degrees: 2 or 10; absent when not stated. */
  readonly observer?: 2 | 10;
  /** How it was got: spectrum, instrument, photo-with-chart, photo, eye, or other words. */
  readonly by?: string;
}

/** A spectrum held in a file of the notebook. */
export interface SpectrumRef {
  readonly file: string;
  /** Which sample of the file, where it holds several. */
  readonly sample?: string;
  readonly range: TextRange;
}

/** Where and when a material was to hand, as one note says on one evidence. */
export interface AvailabilityEntry {
  readonly range: TextRange;
  readonly region?: Ref;
  readonly when?: WrittenDate;
  readonly status?: Exclude<Status, 'on-cloth'>;
  readonly reason?: (typeof ABSENCE_REASONS)[number];
  readonly knownBy?: KnownBy;
  readonly sure: Sure;
  readonly sources: readonly Citation[];
  readonly checked?: Checked;
  readonly startKnown: boolean;
  readonly endKnown: boolean;
  /** As written; the default depends on the region and is settled when the notebook is put together. */
  readonly extent?: 'whole' | 'somewhere';
  readonly use: (typeof USES)[number];
  readonly on: readonly Ref[];
  readonly wearers: readonly Ref[];
  readonly usual?: (typeof USUAL)[number];
  readonly price?: string;
  readonly restsOn?: Citation;
  readonly note?: string;
}

/** An amount as written and, where it could be read, as number and unit (`%` is % WOF). */
export interface Amount {
  readonly text: string;
  readonly value?: number;
  readonly upTo?: number;
  readonly unit?: string;
}

export interface Ingredient {
  readonly range: TextRange;
  readonly what?: Ref;
  readonly role?: Role;
  readonly amount?: Amount;
  readonly form?: string;
  readonly standsFor?: Ref;
}

export interface LightGrade {
  readonly on?: Ref;
  readonly mordant?: Ref;
  readonly grade?: string;
  readonly scale?: string;
  readonly method?: string;
  readonly sources: readonly Citation[];
}

export interface Gather {
  /** 1–12. */
  readonly months: readonly number[];
  readonly yearOfGrowth?: string;
  readonly note?: string;
}

export interface UndyedColour {
  readonly range: TextRange;
  readonly name: string;
  readonly colour?: StatedColour;
  readonly spectrum?: SpectrumRef;
  readonly availability: readonly AvailabilityEntry[];
}

export interface Sample {
  readonly range: TextRange;
  readonly code?: string;
  readonly fibre?: Ref;
  readonly fibreGrams?: number;
  /** What it was dyed onto: an undyed colour's name, or an earlier trial. */
  readonly onto?: string;
  readonly colour?: StatedColour;
  readonly spectrum?: SpectrumRef;
  readonly photo?: string;
  readonly note?: string;
}

export interface Thread {
  readonly range: TextRange;
  readonly where?: string;
  readonly fibre?: Ref;
  readonly dyes: readonly Ref[];
  readonly markers: readonly string[];
  readonly colourNow?: StatedColour | string;
  readonly tested: (typeof TESTED)[number];
}

export interface DyestuffRecord {
  readonly kind: 'dyestuff';
  readonly latin: readonly string[];
  readonly matter?: (typeof MATTERS)[number];
  readonly part?: string;
  readonly markers: readonly string[];
  readonly gather?: Gather;
  readonly lightfast: readonly LightGrade[];
  readonly availability: readonly AvailabilityEntry[];
  readonly everyday: boolean;
  readonly cautions: readonly string[];
}
/** A mordant, an assistant or a process. */
export interface HelperRecord {
  readonly kind: 'mordant' | 'assistant' | 'process';
  readonly latin: readonly string[];
  readonly formula?: string;
  readonly everyday: boolean;
  readonly cautions: readonly string[];
  readonly availability: readonly AvailabilityEntry[];
}
export interface FibreRecord {
  readonly kind: 'fibre';
  readonly latin: readonly string[];
  readonly isKindOf?: Ref;
  readonly fibreClass?: FibreClass;
  readonly undyed: readonly UndyedColour[];
  readonly everyday: boolean;
  readonly cautions: readonly string[];
  readonly availability: readonly AvailabilityEntry[];
}
export interface RecipeRecord {
  readonly kind: 'recipe';
  readonly fibre: readonly Ref[];
  readonly ingredients: readonly Ingredient[];
  readonly liquor?: string;
  readonly steps: readonly string[];
  readonly basedOn: readonly Ref[];
  readonly asWritten?: string;
  readonly cautions: readonly string[];
  readonly follows: readonly Ref[];
}
export interface TrialRecord {
  readonly kind: 'trial';
  readonly recipe?: Ref;
  readonly date?: WrittenDate;
  readonly by?: string;
  readonly vessel?: string;
  readonly water?: { readonly hardness?: string; readonly pH?: number; readonly note?: string };
  readonly lots: readonly string[];
  readonly bath?: { readonly nth?: number; readonly after?: Ref };
  readonly actual: readonly Ingredient[];
  readonly log: readonly string[];
  readonly deviations: readonly string[];
  /** One at least where a colour was stated; a trial without `samples` is its own single sample. */
  readonly samples: readonly Sample[];
}
export interface TextileRecord {
  readonly kind: 'textile';
  readonly region?: Ref;
  readonly madeAt?: Ref;
  readonly when?: WrittenDate;
  readonly context?: string;
  readonly wearer: readonly Ref[];
  readonly threads: readonly Thread[];
}
export interface TextRecord {
  readonly kind: 'text';
  readonly region?: Ref;
  readonly when?: WrittenDate;
  readonly copied?: WrittenDate;
  readonly dyes: readonly Ref[];
  readonly fibre: readonly Ref[];
  readonly says?: string;
}
export interface Meaning {
  readonly range: TextRange;
  /** The colours it covers, each a middle of a family. */
  readonly colours: readonly StatedColour[];
  /** Words for the colour. */
  readonly shade?: string;
  readonly dyes: readonly Ref[];
  readonly cloth?: string;
  readonly process?: string;
  readonly rank?: string;
}
export interface ColourWordRecord {
  readonly kind: 'colour-word';
  readonly lang?: string;
  readonly region?: Ref;
  readonly when?: WrittenDate;
  readonly means: readonly Meaning[];
  readonly doubt?: string;
}
export interface RuleRecord {
  readonly kind: 'rule';
  readonly region?: Ref;
  readonly when?: WrittenDate;
  readonly act?: (typeof ACTS)[number];
  readonly concerns: readonly Ref[];
  readonly allows: readonly Ref[];
  readonly forbids: readonly Ref[];
  readonly enforced?: string;
}
export interface WearerRecord {
  readonly kind: 'wearer';
  readonly within: readonly Ref[];
  readonly region?: Ref;
  readonly when?: WrittenDate;
}
export interface RegionRecord {
  readonly kind: 'region';
  readonly within: readonly Ref[];
  readonly near: readonly Ref[];
  /** Latitude, longitude in degrees. */
  readonly point?: readonly [latitude: number, longitude: number];
}
export interface PeriodRecord {
  readonly kind: 'period';
  readonly region?: Ref;
  readonly when?: WrittenDate;
}
export interface PaletteRecord {
  readonly kind: 'palette';
  readonly region?: Ref;
  readonly when?: WrittenDate;
  readonly fibre?: Ref;
  readonly wearer?: Ref;
  readonly question?: string;
  /** The kept colours: recipes, or `fibre/undyed name`, with the verdict they had when kept. */
  readonly keeps: readonly { readonly what: Ref; readonly verdict?: string; readonly trial?: Ref; readonly note?: string }[];
}
export interface ExposureRecord {
  readonly kind: 'exposure';
  readonly sample?: string;
  readonly readings: readonly { readonly date?: WrittenDate; readonly dose?: string; readonly colour?: StatedColour }[];
  readonly reference?: string;
}
export interface PlainRecord {
  readonly kind: 'plain';
}

export type NoteRecord =
  | DyestuffRecord
  | HelperRecord
  | FibreRecord
  | RecipeRecord
  | TrialRecord
  | TextileRecord
  | TextRecord
  | ColourWordRecord
  | RuleRecord
  | WearerRecord
  | RegionRecord
  | PeriodRecord
  | PaletteRecord
  | DisplayRecord
  | ExposureRecord
  | PlainRecord;

/** One file of the notebook, read. The source is the truth; everything here is derived from it. */
export interface Note {
  readonly id: NoteId;
  /** Path inside the notebook's folder, `/` between parts. */
  readonly file: string;
  readonly title: string;
  readonly names: readonly Name[];
  readonly tags: readonly string[];
  readonly sources: readonly Citation[];
  readonly checked?: Checked;
  readonly reviewBy?: WrittenDate;
  readonly invented: boolean;
  /** Never published, also where a display uses it. */
  readonly private: boolean;
  readonly record: NoteRecord;
  /** The whole file as text, exactly. */
  readonly source: string;
  /** Where the Markdown body begins in `source`. */
  readonly bodyStart: number;
}
