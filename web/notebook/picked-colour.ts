import { SCREEN, TEXTILE } from '../domain/colour/conditions.ts';
import type { Lab } from '../domain/colour/lab.ts';
import { parseColourText } from '../domain/colour/parse-colour.ts';
import type { ColourOrigin } from '../domain/colour/swatch-colour.ts';
import type { ValuePath } from '../domain/note/locate-value.ts';
import { keysOf } from '../domain/note/note-keys.ts';
import type { KeyTable } from '../domain/note/shape.ts';
import { removeValue, spliceValue, type SpliceError } from '../domain/note/splice.ts';
import type { PlainValue } from '../domain/note/yaml-text.ts';
import { failed, ok, type Result } from '../domain/result.ts';
import { readCarriedColour } from './typed-colour.ts';
import { formView } from './views/form-view.ts';

/** A colour somebody picked for a note. */
export interface ColourToWrite {
  /** A CSS colour, `L,a,b`, or numbers with their conditions as an address carries them. */
  readonly text: string;
  readonly by?: ColourOrigin;
  /** Where the photo it was taken from will lie, from the notebook's folder. */
  readonly photo?: string;
  /** Where the file of measurements will lie, and the sample in it. */
  readonly spectrum?: { readonly file: string; readonly sample: string };
}

/**
 * The note with the colour written where a form asks for one; every other character stays. A measured spectrum is named by its file
 * where the note has a place for it, a photo stands under `photo`, or else as a picture under the note's words.
 *
 * @param notePath where the note lies, for links out of its words.
 * @error `no-colour`: the text is none that numbers can be made of.
 */
export function withPickedColour(
  source: string,
  path: ValuePath,
  picked: ColourToWrite,
  notePath: string,
): Result<string, SpliceError | 'no-colour'> {
  const holder = path.slice(0, -1);
  const beside = path.at(-1) === 'colour' ? keysAt(source, holder) : {};
  const isMeasured = picked.spectrum !== undefined && Object.hasOwn(beside, 'spectrum');
  const value = isMeasured ? { ...picked.spectrum } : colourValue(picked);
  if (value === undefined) return failed('no-colour');
  const bare = isMeasured ? removed(source, path) : removed(source, Object.hasOwn(beside, 'spectrum') ? [...holder, 'spectrum'] : []);
  const written = spliceValue(bare, isMeasured ? [...holder, 'spectrum'] : path, value);
  if (!written.ok || picked.photo === undefined) return written;
  if (Object.hasOwn(beside, 'photo')) return spliceValue(written.value, [...holder, 'photo'], picked.photo);
  return ok(withPicture(written.value, picked.photo, notePath));
}

/** A colour is stated once: by numbers or by a measured curve. */
function removed(source: string, path: ValuePath): string {
  const without = path.length === 0 ? undefined : removeValue(source, path);
  return without?.ok === true ? without.value : source;
}

/** The colour as a note states it. Without conditions it stays without: nothing is made up. */
function colourValue({ text, by }: ColourToWrite): PlainValue | undefined {
  const carried = readCarriedColour(text);
  if (carried) {
    const { lab, illuminant, observer } = carried;
    return { lab: rounded(lab), illuminant, observer, ...byWord(by ?? carried.by) };
  }
  const typed = parseColourText(text);
  if (typed === undefined) return undefined;
  if (typed.kind === 'lab') return { lab: rounded(typed.lab), ...byWord(by) };
  const hex = /^#?([\da-f]{6}|[\da-f]{3})$/i.exec(text.trim())?.[1];
  return hex === undefined ? { lab: rounded(typed.lab2), ...SCREEN, by: 'eye' } : { hex: `#${hex}`, by: 'eye' };
}

/** Two decimals are finer than any instrument. */
const rounded = (lab: Lab): readonly number[] => [lab[0], lab[1], lab[2]].map((value) => Math.round(value * 100) / 100 + 0);

/** Lab that somebody typed says by itself that it was measured. */
const byWord = (by: ColourOrigin | undefined): { readonly [key: string]: PlainValue } => (by === undefined || by === 'lab' ? {} : { by });

/** A colour of the notebook's own cloth, taken by holding it beside. */
export const clothColour = (lab: string): ColourToWrite => ({ text: `${lab} ${TEXTILE.illuminant}/${TEXTILE.observer}`, by: 'eye' });

/** The keys that can stand where a path leads. */
function keysAt(source: string, path: ValuePath): KeyTable {
  return path.reduce<KeyTable>((keys, step) => (typeof step === 'number' ? keys : (keys[step]?.keys ?? {})), keysOf(formView(source).kind));
}

function withPicture(source: string, photo: string, notePath: string): string {
  const end = source.includes('\r\n') ? '\r\n' : '\n';
  const up = '../'.repeat(notePath.split('/').length - 1);
  return `${source}${source.endsWith('\n') ? '' : end}${end}![The photo its colour was taken from](${up}${photo})${end}`;
}
