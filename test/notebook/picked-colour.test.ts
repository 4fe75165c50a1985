import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { attachedPath } from '../../web/notebook/attached-path.ts';
import { clothColour, type ColourToWrite, withPickedColour } from '../../web/notebook/picked-colour.ts';

const TRIAL = '---\r\nkind: trial   # one pot\r\nrecipe: red\r\nsamples:\r\n  - code: A\r\n    fibre: wool\r\n---\r\n\r\nWords.\r\n';
const TEXTILE = '---\nkind: textile\ntitle: Twill\nthreads:\n  - where: warp\n---\nWords.';
const PATH = 'trials/a.md';

const written = (source: string, path: readonly (string | number)[], colour: ColourToWrite, at = PATH): string => {
  const result = withPickedColour(source, path, colour, at);
  if (!result.ok) throw new Error(result.error);
  return result.value;
};
const sampleOf = (text: string) => {
  const { record } = parseNote(PATH, text).value;
  return record.kind === 'trial' ? record.samples[0] : undefined;
};

describe('withPickedColour', () => {
  test.each<[string, ColourToWrite, object]>([
    ['numbers with conditions', { text: '45.1,44.8,27.9 D65/10', by: 'lab' }, { lab: [45.1, 44.8, 27.9], illuminant: 'D65', observer: 10 }],
    ['Lab without conditions stays without', { text: '45, 44, 27' }, { lab: [45, 44, 27] }],
    ['by eye', { text: '45,44,27 D65/2 eye', by: 'eye' }, { lab: [45, 44, 27], illuminant: 'D65', observer: 2, by: 'eye' }],
    ['a photo', { text: '45,44,27 D65/2 photo', by: 'photo' }, { lab: [45, 44, 27], observer: 2, by: 'photo' }],
    ['a hex', { text: '#a63d2b' }, { hex: '#a63d2b', by: 'eye' }],
    ['a cloth of the notebook', clothColour('40,45,28'), { lab: [40, 45, 28], illuminant: 'D65', observer: 10, by: 'eye' }],
  ])('%s', (_, colour, stated) => {
    const text = written(TRIAL, ['samples', 0, 'colour'], colour);
    expect(sampleOf(text)?.colour).toMatchObject(stated);
    expect(parseNote(PATH, text).diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    const [head, tail] = [TRIAL.slice(0, TRIAL.indexOf('    fibre: wool')), TRIAL.slice(TRIAL.indexOf('---\r\n\r\nWords'))];
    expect(text.startsWith(head)).toBe(true);
    expect(text.endsWith(tail)).toBe(true);
  });

  test('a colour of CSS other than hex becomes Lab for the screen (lab(50% 0 0) is L* 50)', () => {
    const colour = sampleOf(written(TRIAL, ['samples', 0, 'colour'], { text: 'lab(50% 0 0)' }))?.colour;
    expect(colour).toMatchObject({ illuminant: 'D65', observer: 2, by: 'eye' });
    expect(colour?.lab?.[0]).toBeCloseTo(50, 1);
  });

  test('a sample of a spectral file is named by its file, and takes the place of numbers; numbers take the place of it', () => {
    const numbers = written(TRIAL, ['samples', 0, 'colour'], { text: '#a63d2b' });
    const spectrum = { file: 'spectra/reds-1.txt', sample: 'A1' };
    const curve = written(numbers, ['samples', 0, 'colour'], { text: '40,45,28 D65/10 spectrum', by: 'spectrum', spectrum });
    expect(sampleOf(curve)).toMatchObject({ spectrum });
    expect(sampleOf(curve)?.colour).toBeUndefined();
    const again = sampleOf(written(curve, ['samples', 0, 'colour'], { text: '#a63d2b' }));
    expect([again?.spectrum, again?.colour?.hex]).toEqual([undefined, '#a63d2b']);
  });

  test('a photo stands beside the value where the note has a place for it', () => {
    const text = written(TRIAL, ['samples', 0, 'colour'], { text: '45,44,27 D65/2 photo', by: 'photo', photo: 'photos/skein-1.jpg' });
    expect(sampleOf(text)).toMatchObject({ photo: 'photos/skein-1.jpg', colour: { by: 'photo' } });
  });

  test('and is a picture under the words where it has none, for a thread of a textile', () => {
    const colour: ColourToWrite = { text: '45,44,27 D65/2 photo', by: 'photo', photo: 'photos/skein-1.jpg' };
    const text = written(TEXTILE, ['threads', 0, 'colour-now'], colour, 'textiles/twill.md');
    const { record } = parseNote('textiles/twill.md', text).value;
    expect(record).toMatchObject({ threads: [{ colourNow: { lab: [45, 44, 27], by: 'photo' } }] });
    expect(text.endsWith('Words.\n\n![The photo its colour was taken from](../photos/skein-1.jpg)\n')).toBe(true);
  });

  test('a word is no colour, and broken front matter is not touched', () => {
    expect(withPickedColour(TRIAL, ['samples', 0, 'colour'], { text: 'murrey' }, PATH)).toEqual({ ok: false, error: 'no-colour' });
    expect(withPickedColour('---\na: [\n---\n', ['colour'], { text: '#a63d2b' }, PATH).ok).toBe(false);
  });
});

describe('attachedPath', () => {
  test('keeps the name, and tells files apart by their bytes (FNV-1a of "foobar" is bf9cf968)', () => {
    const bytes = new TextEncoder().encode('foobar');
    expect(attachedPath('photos', { name: 'My Skein.JPG', type: 'image/jpeg' }, bytes)).toBe('photos/my-skein-bf9cf968.jpg');
    expect(attachedPath('spectra', { name: 'reds.txt', type: 'text/plain' }, bytes)).toBe('spectra/reds-bf9cf968.txt');
    expect(attachedPath('photos', { name: 'image', type: 'image/png' }, bytes)).toBe('photos/image-bf9cf968.png');
  });
});
