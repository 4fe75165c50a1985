import { describe, expect, test } from 'vitest';
import { type CaptionFault, type CaptionSubject, checkCaption } from '../../../web/domain/caption/check-caption.ts';
import { decide, nextVersion, openComments } from '../../../web/domain/caption/review.ts';
import type { BoundClaim, DisplayCaption, ReviewComment } from '../../../web/domain/note/display-record.ts';

const NOWHERE = [0, 0] as const;
const ref = (text: string) => ({ text, range: NOWHERE });
const bound = (claim: string, says: string): BoundClaim => ({ range: NOWHERE, claim, says });

const GOOD =
  'Yellow wool dyed with weld (Reseda luteola). In the Hanse towns, c. 1370, weld came by ship; trade records of 1301–1500 name it. No such cloth is recorded there. Modern sample, dyed 2023.';
const BINDINGS = [
  bound('wq23-007', 'dyed with weld (Reseda luteola)'),
  bound('weld#12', 'In the Hanse towns, c. 1370, weld came by ship; trade records of 1301–1500 name it'),
  bound('wq23-007', 'dyed 2023'),
];

const subject: CaptionSubject = {
  dyes: [{ names: ['Weld', 'Wau'], latin: ['Reseda luteola'] }],
  placeNames: ['Hanse towns', 'Lübeck'],
  factNames: ['Weld', 'Wau', 'Hanse towns', 'England', 'Madder'],
  dyedYear: '2023',
  standIns: [],
};

const caption = (text: string, more: Partial<DisplayCaption> = {}): DisplayCaption => ({
  range: NOWHERE,
  about: ref('weld-alum-wool'),
  lang: 'en',
  text,
  claims: BINDINGS,
  review: [],
  ...more,
});
const faults = (one: DisplayCaption, about = subject): readonly CaptionFault[] => checkCaption(one, about).findings.map(({ code }) => code);

describe('checkCaption', () => {
  test('nothing is wanting in a good caption', () => {
    expect(checkCaption(caption(GOOD), subject)).toMatchObject({ words: 33, sentences: 4, findings: [], unchecked: [] });
  });

  // Each case takes one thing away from the good caption, or puts one in, and only that is told.
  test.each<[string, string, readonly CaptionFault[]]>([
    ['no place', GOOD.replace('In the Hanse towns, c. 1370, weld', 'About 1370 weld'), ['no-place', 'words-gone', 'clause-unbound']],
    ['no Latin', GOOD.replace(' (Reseda luteola)', ''), ['no-latin', 'words-gone', 'clause-unbound']],
    ['no uncertainty', GOOD.replace('No such cloth is recorded there. ', ''), ['no-uncertainty']],
    ['not said to be modern', GOOD.replace('Modern sample, dyed', 'It was dyed'), ['not-said-modern', 'ideas-many']],
    ['no year of dyeing', GOOD.replace(', dyed 2023', ''), ['no-dyed-year', 'words-gone']],
    ['authentic', GOOD.replace('Yellow wool', 'Authentic yellow wool'), ['phrase-questioned']],
    ['an unbound clause', GOOD.replace('No such', 'Madder grew in England. No such'), ['ideas-many', 'clause-unbound']],
  ])('%s', (_, text, expected) => {
    expect(new Set(faults(caption(text)))).toEqual(new Set(expected));
  });

  test('the year of dyeing is no date of the past', () => {
    const text = GOOD.replace(', c. 1370', '').replace(' of 1301–1500', '');
    expect(faults(caption(text))).toContain('no-date');
  });

  test('a caption that names no evidence is told so', () => {
    const text = GOOD.replace('; trade records of 1301–1500 name it', '').replace(
      'No such cloth is recorded there',
      'How common it was is not known',
    );
    expect(faults(caption(text))).toContain('no-source-word');
  });

  test('19 words are too few and 61 too many', () => {
    expect(faults(caption('word '.repeat(19)))).toContain('too-short');
    expect(faults(caption('word '.repeat(20)))).not.toContain('too-short');
    expect(faults(caption('word '.repeat(60)))).not.toContain('too-long');
    expect(faults(caption('word '.repeat(61)))).toContain('too-long');
  });

  test('a headline has seven words at most', () => {
    expect(faults(caption(GOOD, { headline: 'one two three four five six seven' }))).toEqual([]);
    expect(faults(caption(GOOD, { headline: 'one two three four five six seven eight' }))).toEqual(['headline-long']);
  });

  test('a stand-in must be named with what it stands for', () => {
    const kermes = { ...subject, standIns: [{ used: ['American cochineal', 'cochineal'], meant: ['Kermes'] }] };
    expect(faults(caption(GOOD), kermes)).toEqual(['stand-in-unsaid']);
    expect(faults(caption(GOOD.replace('dyed 2023', 'dyed 2023 with cochineal in place of kermes')), kermes)).toEqual([]);
  });

  test('hard reading gives its grade', () => {
    const text = GOOD.replace('came by ship', 'constituted an internationally distributed commercial commodity of considerable importance');
    const found = checkCaption(caption(text), subject);
    expect(found.findings.map(({ code }) => code)).toContain('reading-hard');
    expect(found.grade).toBeGreaterThan(8);
  });

  test('an unbound clause is shown where it stands', () => {
    const text = `${GOOD} Wau was dear in England.`;
    const finding = checkCaption(caption(text), subject).findings.find(({ code }) => code === 'clause-unbound');
    expect(text.slice(...(finding?.range ?? [0, 0]))).toBe('Wau was dear in England.');
  });

  test('a name is a whole word: weldish is no weld, welds are', () => {
    const plain = 'It was a weldish thing.';
    expect(faults(caption(plain, { claims: [] }))).not.toContain('clause-unbound');
    expect(faults(caption('It was like the other welds.', { claims: [] }))).toContain('clause-unbound');
  });

  test('a doubtful statement needs its claim, that nothing is known does not', () => {
    expect(faults(caption('Weld was perhaps dear.', { claims: [] }))).toContain('clause-unbound');
    expect(faults(caption('How dear weld was is not known.', { claims: [] }))).not.toContain('clause-unbound');
  });

  test('what only knows English is left out for other languages, and says so', () => {
    const german = caption('Gelbe Wolle, gefärbt 2023 mit Wau (Reseda luteola), Hanse towns um 1370.', { lang: 'de', claims: [] });
    const found = checkCaption(german, subject);
    expect(found.unchecked).toContain('no-uncertainty');
    expect(found.grade).toBeUndefined();
    expect(found.findings.map(({ code }) => code)).toEqual(['too-short', 'clause-unbound']);
  });

  test('comments stay open until they are decided, a refusal with a reason', () => {
    const comment = (more: Partial<ReviewComment>): ReviewComment => ({ range: NOWHERE, by: 'curator', says: 'too dry', ...more });
    expect(faults(caption(GOOD, { review: [comment({})] }))).toEqual(['comment-open']);
    expect(faults(caption(GOOD, { review: [comment({ decision: 'declined' })] }))).toEqual(['comment-open']);
    expect(
      faults(caption(GOOD, { review: [comment({ decision: 'declined', reason: 'it is dry' }), comment({ decision: 'accepted' })] })),
    ).toEqual([]);
  });
});

describe('questioned phrases', () => {
  test.each([
    ['This would have been worn at court', 'guess-as-fact', 'would have been'],
    ['a blue that never fades', 'denies-fading', 'never fades'],
    ['a lightfast blue', 'denies-fading', 'lightfast'],
    ['All natural, so safe for children', 'natural-as-safe', 'natural, so safe'],
    ['a chemical-free dye', 'natural-as-safe', 'chemical-free'],
    ['This proves it', 'too-sure', 'proves'],
    ['Everyone wore it', 'too-wide', 'Everyone'],
    ['the traditional method', 'undated-past', 'traditional'],
    ['20 % WOF of madder', 'jargon', '% WOF'],
    ['the original colour', 'claims-to-be-real', 'original colour'],
    ['ein authentisches Rot', 'claims-to-be-real', 'authentisches'],
  ])('%s', (text, why, phrase) => {
    const found = checkCaption(caption(text), subject).findings.filter(({ code }) => code === 'phrase-questioned');
    expect(found).toMatchObject([{ why, about: [phrase] }]);
  });

  test.each([
    'It fades in a season',
    'Natural dyes can be poisonous',
    'It was safe in the chest',
    'A proven-red cow'.replace('proven-', ''),
  ])('%s is not asked about', (text) => {
    expect(faults(caption(text))).not.toContain('phrase-questioned');
  });
});

describe('review', () => {
  test('a decision needs a reason', () => {
    expect(decide('declined', '  ')).toEqual({ ok: false, error: 'reason-missing' });
    expect(decide('accepted', ' shorter now ')).toEqual({ ok: true, value: { decision: 'accepted', reason: 'shorter now' } });
  });

  test('the version grows with the words alone', () => {
    expect(nextVersion({ text: 'a', version: 3 }, ' a ')).toBe(3);
    expect(nextVersion({ text: 'a', version: 3 }, 'b')).toBe(4);
    expect(nextVersion({ text: 'a' }, 'b')).toBe(2);
  });

  test('open comments are those without a decision', () => {
    expect(
      openComments({
        review: [
          { range: NOWHERE, says: 'x' },
          { range: NOWHERE, says: 'y', decision: 'accepted' },
        ],
      }),
    ).toHaveLength(1);
  });
});
