import { strToU8 } from 'fflate';
import type { CheckContext } from '../domain/claim/check-note.ts';
import { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { Diagnostic } from '../domain/diagnostic.ts';
import { decodeNote } from '../domain/note/decode-note.ts';
import type { Note, SpectrumRef } from '../domain/note/note.ts';
import { resolveLink } from '../domain/note/resolve-link.ts';
import { parseNote } from '../domain/note/parse-note.ts';
import type { Version } from '../domain/ports.ts';
import type { Spectrum } from '../domain/colour/spectrum.ts';
import { SampleColours } from '../domain/verdict/sample-colours.ts';
import { type BibliographyEntry, fullBibliography, readBibliography } from './bibliography.ts';
import type { Reference } from './references/reference.ts';
import type { KeptReading } from './kept-readings.ts';
import { isNotePath } from './note-path.ts';
import { FOREIGN_FILE, type ForeignReaders, REFERENCE_FILE } from './references/read-references.ts';
import { SpectralShelf } from './read-spectra.ts';

/** One file of a notebook's folder as it lies there. */
export interface NotebookFile {
  /** Path inside the folder, `/` between parts. */
  readonly path: string;
  readonly bytes: Uint8Array;
  /** Under which version the store keeps just these bytes; absent where it keeps none, or nobody knows. */
  readonly version?: Version;
}

/** A finding with the file it is about and that file's text, so that a line can be named. */
export interface FileFinding {
  readonly file: string;
  /** The note's id, where the file was read as a note. */
  readonly id?: string;
  readonly text: string;
  readonly diagnostic: Diagnostic;
}

/** A folder of notes, read: what the notes say together, their colours, and what was found wrong. */
export class Notebook {
  readonly base = new EvidenceBase();
  readonly colours = new SampleColours((ref, noteFile) => this.#findSpectrum(ref, noteFile));
  readonly #read = new Map<string, readonly Diagnostic[]>();
  readonly #readOnly = new Set<string>();
  readonly #versions = new Map<string, Version>();
  /** Where the texts will lie of notes that were put in without. */
  readonly #awaited = new Map<string, { text?: string }>();
  readonly #others = new Map<string, Uint8Array>();
  readonly #elsewhere = new Set<string>();
  readonly #spectra = new SpectralShelf();
  #bibliography: ReadonlyMap<string, BibliographyEntry> | undefined;
  #references: ReadonlyMap<string, Reference> | undefined;
  #foreign: ForeignReaders | undefined;

  /** Reads files in; a file with a path already there takes its place. */
  putAll(files: Iterable<NotebookFile>): void {
    for (const file of files) this.put(file);
  }

  /** Reads one file in: a note is parsed and its own claims derived, nothing else is touched. */
  put({ path, bytes, version }: NotebookFile): Note | undefined {
    if (!isNotePath(path)) {
      this.#others.set(path, bytes);
      this.#elsewhere.delete(path);
      this.#bibliography = undefined;
      this.#references = undefined;
      this.#spectra.forget(path);
      return undefined;
    }
    this.#awaited.delete(path);
    const decoded = decodeNote(bytes);
    const { value, diagnostics } = parseNote(path, decoded.value.text);
    this.#read.set(path, [...decoded.diagnostics, ...diagnostics]);
    if (decoded.value.readOnly) this.#readOnly.add(path);
    else this.#readOnly.delete(path);
    if (version === undefined) this.#versions.delete(path);
    else this.#versions.set(path, version);
    this.base.put(value);
    return value;
  }

  /** Puts in a note as it was read before. Its text comes later: until then, asking for it is a fault. */
  putReading({ version, note, diagnostics, readOnly }: KeptReading): void {
    const { file } = note;
    this.remove(file);
    const place: { text?: string } = {};
    const source = () => {
      if (place.text === undefined) throw new Error(`the text of ${file} is not here yet`);
      return place.text;
    };
    this.#awaited.set(file, place);
    this.#read.set(file, diagnostics);
    if (readOnly) this.#readOnly.add(file);
    this.#versions.set(file, version);
    // A property like any other for whoever copies or compares notes.
    this.base.put(Object.defineProperty({ ...note, source: '' }, 'source', { get: source, enumerable: true }));
  }

  /** Brings the text of a note that was put in without. Where it is of another version, the note is read from it. */
  putText(file: NotebookFile): void {
    const place = this.#awaited.get(file.path);
    if (!place) return;
    if (file.version !== this.#versions.get(file.path)) {
      this.put(file);
      return;
    }
    place.text = decodeNote(file.bytes).value.text;
    this.#awaited.delete(file.path);
  }

  /** Notes whose texts have not come yet. */
  awaited(): readonly string[] {
    return [...this.#awaited.keys()];
  }

  /** What reading the notes gave, of those whose version is known. */
  *readings(): Generator<KeptReading> {
    for (const { source: _, ...note } of this.#whole()) {
      const version = this.#versions.get(note.file);
      if (version === undefined) continue;
      yield { version, note, diagnostics: this.foundInText(note.file), readOnly: this.#readOnly.has(note.file) };
    }
  }

  /** Says that a file is part of the notebook although its bytes are kept elsewhere. */
  mention(path: string): void {
    if (!this.#others.has(path)) this.#elsewhere.add(path);
  }

  /** Takes a file out. */
  remove(path: string): void {
    this.#elsewhere.delete(path);
    this.#awaited.delete(path);
    if (this.#others.delete(path)) {
      this.#bibliography = undefined;
      this.#references = undefined;
    }
    this.#spectra.forget(path);
    this.#read.delete(path);
    this.#readOnly.delete(path);
    this.#versions.delete(path);
    this.base.remove(path);
  }

  /** Under which version a note is kept as it is at hand; undefined where nobody knows. */
  versionOf(path: string): Version | undefined {
    return this.#versions.get(path);
  }

  /** Whether a note may not be written back until it is converted. */
  isReadOnly(path: string): boolean {
    return this.#readOnly.has(path);
  }

  /** The bytes of a file that is no note: photo, spectrum, bibliography. */
  attachment(path: string): Uint8Array | undefined {
    return this.#others.get(path);
  }

  /** Whether there is such a file that is no note, here or only named because its bytes stay where they are kept. */
  hasFile(path: string): boolean {
    return this.#others.has(path) || this.#elsewhere.has(path);
  }

  size(): { readonly notes: number; readonly others: number } {
    return { notes: [...this.base.notes()].length, others: this.#others.size + this.#elsewhere.size };
  }

  /** Every file whose bytes are here, as it came, in order of path. */
  files(): readonly NotebookFile[] {
    const notes = this.#whole().map(({ file, source }) => ({ path: file, bytes: strToU8(source, this.#readOnly.has(file)) }));
    const others = [...this.#others].map(([path, bytes]) => ({ path, bytes }));
    return [...notes, ...others].sort((a, b) => (a.path < b.path ? -1 : 1));
  }

  /** What was found in a note's own text when it was read. */
  foundInText(path: string): readonly Diagnostic[] {
    return this.#read.get(path) ?? [];
  }

  /** Loads what reads its BibTeX and RIS files, where it holds any: until then their sources are not among its own. */
  async ready(): Promise<void> {
    if (this.#foreign || !this.#holdsForeign()) return;
    this.#foreign = await import('./references/foreign-items.ts');
    this.#bibliography = undefined;
    this.#references = undefined;
  }

  /** The sources of the notebook's bibliographies by key. */
  bibliography(): ReadonlyMap<string, BibliographyEntry> {
    return (this.#bibliography ??= readBibliography(this.#bibliographies(), this.#foreign));
  }

  /** The same sources in full, for printing. */
  references(): ReadonlyMap<string, Reference> {
    return (this.#references ??= fullBibliography(this.#bibliographies(), this.#foreign));
  }

  /** Every file that is no note. */
  attachmentPaths(): readonly string[] {
    return [...this.#others.keys()];
  }

  /** What checking a note needs beside the notes. */
  checkContext(): CheckContext {
    const citations = this.#citations();
    return {
      ...(citations && { citationKeys: citations }),
      hasFile: (path: string, noteFile: string) => this.#locate(path, noteFile) !== undefined,
    };
  }

  /** The notes whose texts are here. */
  #whole(): readonly Note[] {
    return [...this.base.notes()].filter(({ file }) => !this.#awaited.has(file));
  }

  #holdsForeign(): boolean {
    return [...this.#others.keys()].some((path) => FOREIGN_FILE.test(path));
  }

  #bibliographies(): readonly { readonly path: string; readonly text: string }[] {
    return [...this.#others]
      .filter(([path]) => REFERENCE_FILE.test(path))
      .map(([path, bytes]) => ({ path, text: decodeNote(bytes).value.text }));
  }

  /** Undefined where no source can be called unknown: there is no bibliography, or part of it is not read yet. */
  #citations(): ReadonlySet<string> | undefined {
    if (this.#bibliographies().length === 0 || (!this.#foreign && this.#holdsForeign())) return undefined;
    return new Set(this.bibliography().keys());
  }

  /** A file named from a note: from the notebook's folder first, then from beside the note. */
  #locate(path: string, noteFile: string): string | undefined {
    return [path, resolveLink(noteFile, path)].find((one) => one !== undefined && (this.#others.has(one) || this.#elsewhere.has(one)));
  }

  #findSpectrum(ref: SpectrumRef, noteFile: string): Spectrum | undefined {
    const path = this.#locate(ref.file, noteFile);
    const bytes = path === undefined ? undefined : this.#others.get(path);
    if (path === undefined || !bytes) return undefined;
    return this.#spectra.spectrum(path, () => decodeNote(bytes).value.text, ref.sample);
  }
}
