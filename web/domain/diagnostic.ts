/** Where in a note's source: half-open [start, end), UTF-16 code units. */
export type TextRange = readonly [start: number, end: number];

/** Every finding a reader can be shown. Codes are API: each has a sentence in DEVELOPERS.md. */
export type DiagnosticCode =
  // the file
  | 'file-empty'
  | 'sign-turns-text'
  | 'file-not-utf8'
  | 'file-too-large'
  | 'file-unreadable'
  | 'file-name-not-utf8'
  | 'file-outside'
  | 'file-link-broken'
  | 'folder-loop'
  // front matter
  | 'yaml-broken'
  | 'yaml-tab'
  | 'yaml-key-twice'
  | 'yaml-too-deep'
  | 'yaml-alias-bomb'
  | 'front-matter-open'
  | 'front-matter-not-map'
  // keys and values
  | 'kind-missing'
  | 'kind-unknown'
  | 'key-unknown'
  | 'key-missing'
  | 'type-wrong'
  | 'word-unknown'
  | 'number-out-of-range'
  | 'amount-unreadable'
  | 'colour-unreadable'
  | 'colour-conditions-missing'
  | 'source-missing'
  | 'thread-untested'
  // dates
  | 'date-unreadable'
  | 'date-ambiguous'
  | 'date-reversed'
  | 'date-impossible'
  // references
  | 'id-clash'
  | 'id-mixes-letters'
  | 'reference-unknown'
  | 'reference-wrong-kind'
  | 'reference-loop'
  | 'name-ambiguous'
  | 'region-unknown'
  | 'region-loop'
  | 'source-unknown'
  | 'claim-takes-no-part'
  | 'material-unrecorded'
  | 'absence-not-evidence'
  | 'link-broken'
  | 'spectrum-missing'
  | 'dosing-refused'
  | 'review-overdue';

/** A finding about the text of a note. Never thrown, never fatal. */
export interface Diagnostic {
  readonly code: DiagnosticCode;
  readonly severity: 'error' | 'warning';
  readonly range: TextRange;
  /** What the words need: the value read, the key, the suggestions. Plain strings, in reading order. */
  readonly about: readonly string[];
}

/** Takes findings as they are made. */
export type Report = (diagnostic: Diagnostic) => void;

/** What could be read, beside what could not. */
export interface Reading<T> {
  readonly value: T;
  readonly diagnostics: readonly Diagnostic[];
}
