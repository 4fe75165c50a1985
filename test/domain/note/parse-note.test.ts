import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { DiagnosticCode } from '../../../web/domain/diagnostic.ts';
import { keysOf } from '../../../web/domain/note/note-keys.ts';
import { NOTE_KINDS } from '../../../web/domain/note/note.ts';
import type { NoteRecord } from '../../../web/domain/note/note.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { aNoteFrom, arbitraryNote } from '../../helpers/arbitrary-note.ts';
import { chance } from '../../helpers/random.ts';
import { fc } from '../../helpers/property.ts';

const aNote = (front: string, body = ''): string => `---\n${front}\n---\n${body}`;
const parse = (front: string) => parseNote('notes/a.md', aNote(front));
/** Findings with the text they stand on. */
const findings = (text: string) =>
  parseNote('notes/a.md', text).diagnostics.map(({ code, severity, range }) => [code, severity, text.slice(...range)]);
const ref = (text: string) => expect.objectContaining({ text }) as unknown;
const cite = (key: string, locator?: string) => expect.objectContaining(locator === undefined ? { key } : { key, locator }) as unknown;

const AVAILABILITY = `
availability:
  - { region: england, when: 1290–1350, status: grown, known-by: text, source: "k, p. 1" }`;

/** One note per kind with every key it may have, and what is read from it. */
const FULL: Readonly<Record<(typeof NOTE_KINDS)[number], readonly [front: string, record: Partial<Record<string, unknown>>]>> = {
  dyestuff: [
    `latin: [Rubia tinctorum, R. tinctorum]
matter: plant
part: root
markers: [alizarin, purpurin]
gather: { months: [10, 11], year-of-growth: third, note: after frost }
lightfast:
  - { on: wool, mordant: alum, grade: 3-4, scale: ISO 105-B02, method: lamp, source: "k, p. 3", note: x }
everyday: false
cautions: wear gloves
availability:
  - region: england
    when: c. 1290–1350
    status: absent
    reason: looked-for
    known-by: remains
    sure: likely
    source: k, p. 1
    sources: [l]
    checked: excerpt
    start: known
    end: known
    extent: somewhere
    use: painting
    on: [wool, silk]
    wearers: noble
    usual: rare
    price: 2 d. the pound
    rests-on: m, fol. 2
    note: so`,
    {
      latin: ['Rubia tinctorum', 'R. tinctorum'],
      matter: 'plant',
      part: 'root',
      markers: ['alizarin', 'purpurin'],
      gather: { months: [10, 11], yearOfGrowth: 'third', note: 'after frost' },
      lightfast: [
        { on: ref('wool'), mordant: ref('alum'), grade: '3-4', scale: 'ISO 105-B02', method: 'lamp', sources: [cite('k', 'p. 3')] },
      ],
      everyday: false,
      cautions: ['wear gloves'],
      availability: [
        expect.objectContaining({
          region: ref('england'),
          when: expect.objectContaining({
            text: 'c. 1290–1350',
            span: expect.objectContaining({ latestStart: 1290, earliestEnd: 1350 }) as unknown,
          }) as unknown,
          status: 'absent',
          reason: 'looked-for',
          knownBy: 'remains',
          sure: 'likely',
          sources: [cite('k', 'p. 1'), cite('l')],
          checked: 'excerpt',
          startKnown: true,
          endKnown: true,
          extent: 'somewhere',
          use: 'painting',
          on: [ref('wool'), ref('silk')],
          wearers: [ref('noble')],
          usual: 'rare',
          price: '2 d. the pound',
          restsOn: cite('m', 'fol. 2'),
          note: 'so',
        }),
      ],
    },
  ],
  mordant: [
    `latin: alumen\nformula: KAl(SO4)2·12H2O\neveryday: true\ncautions: [a, b]${AVAILABILITY}`,
    {
      latin: ['alumen'],
      formula: 'KAl(SO4)2·12H2O',
      everyday: true,
      cautions: ['a', 'b'],
      availability: [expect.objectContaining({ status: 'grown', sure: 'yes', use: 'dyeing', startKnown: false })],
    },
  ],
  assistant: [
    `latin: a\nformula: b\neveryday: yes\ncautions: c${AVAILABILITY}`,
    { latin: ['a'], formula: 'b', everyday: true, cautions: ['c'] },
  ],
  process: [
    `latin: a\nformula: b\neveryday: no\ncautions: c${AVAILABILITY}`,
    { latin: ['a'], formula: 'b', everyday: false, cautions: ['c'] },
  ],
  fibre: [
    `latin: a
is: wool
class: protein
undyed:
  - name: fleece white
    colour: { hex: "#efe8d8", by: eye }
    spectrum: { file: spectra/wool.txt, sample: A1 }
    note: x
    availability: [{ region: england, when: 12XX, status: made, source: k }]
everyday: true
cautions: c${AVAILABILITY}`,
    {
      latin: ['a'],
      isKindOf: ref('wool'),
      fibreClass: 'protein',
      undyed: [
        expect.objectContaining({
          name: 'fleece white',
          colour: expect.objectContaining({ hex: '#efe8d8', by: 'eye' }) as unknown,
          spectrum: expect.objectContaining({ file: 'spectra/wool.txt', sample: 'A1' }) as unknown,
          availability: [expect.objectContaining({ status: 'made' })],
        }),
      ],
      everyday: true,
      cautions: ['c'],
      availability: [expect.objectContaining({ status: 'grown' })],
    },
  ],
  recipe: [
    `fibre: wool
ingredients:
  - { what: alum, role: mordant, amount: 15 %, form: crystals, note: x }
  - { what: american-cochineal, role: dye, amount: 8 %, stands-for: kermes }
liquor: "30:1"
steps: [wet out, mordant]
based-on: innsbruck
as-written: |
  Nym alaun
  und röte
cautions: c
follows: woad-wool`,
    {
      fibre: [ref('wool')],
      ingredients: [
        expect.objectContaining({ what: ref('alum'), role: 'mordant', amount: { text: '15 %', value: 15, unit: '%' }, form: 'crystals' }),
        expect.objectContaining({ what: ref('american-cochineal'), role: 'dye', standsFor: ref('kermes') }),
      ],
      liquor: '30:1',
      steps: ['wet out', 'mordant'],
      basedOn: [ref('innsbruck')],
      asWritten: 'Nym alaun\nund röte',
      cautions: ['c'],
      follows: [ref('woad-wool')],
    },
  ],
  trial: [
    `recipe: madder-alum-wool
date: 2025-05-14
by: Ina
vessel: steel, 10 L
water: { hardness: 18 °dH, pH: 7.4, note: tap }
lots: [madder 12]
bath: { nth: 2, after: t1 }
actual: [{ what: alum, role: mordant, amount: 12 g }]
log: [10.00 lit, 11.20 out]
deviations: too hot
fibre: wool
fibre-mass: 50 g
onto: fleece white
colour: { lab: [41.2, 38.5, 24.1], illuminant: D65, observer: 10, by: instrument }
spectrum: spectra/a.txt
photo: a.jpg
code: WQ25-014-1
samples:
  - { code: B, fibre: silk, fibre-mass: 0.1 kg, onto: tussah, colour: { hex: "#a33" }, spectrum: { file: s.csv, sample: "3" }, photo: b.jpg, note: n }
  - { code: C }`,
    {
      recipe: ref('madder-alum-wool'),
      date: expect.objectContaining({ text: '2025-05-14', span: expect.objectContaining({ latestStart: 2025 }) as unknown }),
      by: 'Ina',
      vessel: 'steel, 10 L',
      water: { hardness: '18 °dH', pH: 7.4, note: 'tap' },
      lots: ['madder 12'],
      bath: { nth: 2, after: ref('t1') },
      actual: [expect.objectContaining({ amount: { text: '12 g', value: 12, unit: 'g' } })],
      log: ['10.00 lit', '11.20 out'],
      deviations: ['too hot'],
      samples: [
        expect.objectContaining({
          code: 'WQ25-014-1',
          fibre: ref('wool'),
          fibreGrams: 50,
          onto: 'fleece white',
          colour: expect.objectContaining({ lab: [41.2, 38.5, 24.1], illuminant: 'D65', observer: 10, by: 'instrument' }) as unknown,
          spectrum: expect.objectContaining({ file: 'spectra/a.txt' }) as unknown,
          photo: 'a.jpg',
        }),
        expect.objectContaining({
          code: 'B',
          fibre: ref('silk'),
          fibreGrams: 100,
          onto: 'tussah',
          colour: expect.objectContaining({ hex: '#a33' }) as unknown,
          spectrum: expect.objectContaining({ file: 's.csv', sample: '3' }) as unknown,
          photo: 'b.jpg',
          note: 'n',
        }),
        expect.objectContaining({ code: 'C', fibre: ref('wool'), onto: 'fleece white', fibreGrams: undefined, colour: undefined }),
      ],
    },
  ],
  textile: [
    `region: york
made-at: flanders
when: late 9th century
context: pit 4
wearer: [noble]
threads:
  - { where: warp, fibre: wool, dyes: [madder, weld], markers: alizarin, colour-now: dull red, note: x }
  - { where: weft, dyes: [], colour-now: { xyz: [10, 9, 4], illuminant: D65, observer: 2 }, tested: none-detected }
  - { where: lining }`,
    {
      region: ref('york'),
      madeAt: ref('flanders'),
      when: expect.objectContaining({ span: expect.objectContaining({ latestStart: 868, earliestEnd: 900 }) as unknown }),
      context: 'pit 4',
      wearer: [ref('noble')],
      threads: [
        expect.objectContaining({
          where: 'warp',
          fibre: ref('wool'),
          dyes: [ref('madder'), ref('weld')],
          markers: ['alizarin'],
          colourNow: 'dull red',
          tested: 'found',
        }),
        expect.objectContaining({
          dyes: [],
          colourNow: expect.objectContaining({ xyz: [10, 9, 4], observer: 2 }) as unknown,
          tested: 'none-detected',
        }),
        expect.objectContaining({ where: 'lining', tested: 'no' }),
      ],
    },
  ],
  text: [
    'region: venice\nwhen: before 1548\ncopied: 1548\ndyes: [kermes]\nfibre: [silk]\nsays: grain for scarlet',
    {
      region: ref('venice'),
      when: expect.objectContaining({ text: 'before 1548' }),
      copied: expect.objectContaining({ text: '1548' }),
      dyes: [ref('kermes')],
      fibre: [ref('silk')],
      says: 'grain for scarlet',
    },
  ],
  'colour-word': [
    `lang: enm
region: england
when: 13XX
means:
  - { colours: [{ hex: "#703" }, { hex: "#603040" }], shade: mulberry, dyes: [madder], cloth: broadcloth, process: over-dyed, rank: burgher, note: x }
doubt: the shade moved`,
    {
      lang: 'enm',
      region: ref('england'),
      when: expect.objectContaining({ text: '13XX' }),
      means: [
        expect.objectContaining({
          colours: [expect.objectContaining({ hex: '#703' }), expect.objectContaining({ hex: '#603040' })],
          shade: 'mulberry',
          dyes: [ref('madder')],
          cloth: 'broadcloth',
          process: 'over-dyed',
          rank: 'burgher',
        }),
      ],
      doubt: 'the shade moved',
    },
  ],
  rule: [
    'region: london\nwhen: 1363\nact: wear\nconcerns: [kermes, scarlet]\nallows: noble\nforbids: [peasant]\nenforced: hardly',
    {
      region: ref('london'),
      act: 'wear',
      concerns: [ref('kermes'), ref('scarlet')],
      allows: [ref('noble')],
      forbids: [ref('peasant')],
      enforced: 'hardly',
    },
  ],
  wearer: ['within: [noble, royal]\nregion: england\nwhen: 13XX', { within: [ref('noble'), ref('royal')], region: ref('england') }],
  region: [
    'within: europe\nnear: [denmark]\npoint: [54.5, 10.25]',
    { within: [ref('europe')], near: [ref('denmark')], point: [54.5, 10.25] },
  ],
  period: [
    'region: england\nwhen: 1485/1603',
    { region: ref('england'), when: expect.objectContaining({ span: expect.objectContaining({ latestStart: 1485 }) as unknown }) },
  ],
  palette: [
    'region: england\nwhen: 1660s\nfibre: wool\nwearer: burgher\nquestion: What reds?\nkeeps: [weld-alum-wool, { what: wool/grey, trial: t1, verdict: attested, note: n }]',
    {
      region: ref('england'),
      fibre: ref('wool'),
      wearer: ref('burgher'),
      question: 'What reds?',
      keeps: [{ what: ref('weld-alum-wool') }, { what: ref('wool/grey'), trial: ref('t1'), verdict: 'attested', note: 'n' }],
    },
  ],
  display: [
    `palette: reds
order: source
version: 2
sheet: { size: A2, orientation: landscape }
places:
  - madder-alum-wool
  - { what: wool/grey, trial: t1, code: T1-1, x: 10, y: 20.5, w: 60, h: 80, form: skein, cloth: real, caption: beside }
captions:
  - for: madder-alum-wool
    headline: Red
    text: Red from madder.
    verdict: feasible
    region: england
    when: c. 1370
    version: 3
    claims:
      - { claim: madder#3, says: from madder, material: madder, status: grown, region: england, when: "1300–1880", known-by: text, sure: yes, source: "book, p. 1" }
    review: [{ by: curator, date: 2026-03-01, says: too long, decision: accepted, reason: it was }]
  - { for: wool/grey, lang: de, text: Grau. }
light: { lux: 50, hours-per-day: 7.5, days-per-year: 250, uv: removed, window: none, from: 2026-04-01 }
swap-sets: [{ what: madder-alum-wool, codes: [A-1, A-2], days: 30 }]
published-at: https://board.example/`,
    {
      palette: ref('reds'),
      order: 'source',
      version: 2,
      publishedAt: 'https://board.example/',
      sheet: { size: 'a2', orientation: 'landscape', widthMm: undefined, heightMm: undefined },
      places: [
        expect.objectContaining({ what: ref('madder-alum-wool'), form: 'swatch', cloth: 'printed', caption: 'below', x: undefined }),
        expect.objectContaining({
          trial: ref('t1'),
          code: 'T1-1',
          x: 10,
          y: 20.5,
          widthMm: 60,
          heightMm: 80,
          form: 'skein',
          cloth: 'real',
        }),
      ],
      captions: [
        expect.objectContaining({
          about: ref('madder-alum-wool'),
          lang: 'en',
          headline: 'Red',
          text: 'Red from madder.',
          verdict: 'feasible',
          region: 'england',
          when: 'c. 1370',
          version: 3,
          claims: [
            expect.objectContaining({
              claim: 'madder#3',
              says: 'from madder',
              material: 'madder',
              status: 'grown',
              region: 'england',
              when: '1300–1880',
              knownBy: 'text',
              sure: 'yes',
              source: 'book, p. 1',
            }),
          ],
          review: [expect.objectContaining({ by: 'curator', says: 'too long', decision: 'accepted', reason: 'it was' })],
        }),
        expect.objectContaining({ lang: 'de', text: 'Grau.', claims: [], review: [] }),
      ],
      light: expect.objectContaining({ lux: 50, hoursPerDay: 7.5, daysPerYear: 250, uv: 'removed', window: 'none' }) as unknown,
      swapSets: [expect.objectContaining({ what: ref('madder-alum-wool'), codes: ['A-1', 'A-2'], days: 30 })],
    },
  ],
  exposure: [
    'sample: WQ25-014-1\nreadings: [{ date: 2025-06-01, dose: 1 Mlx h, colour: { hex: "#a44" }, note: x }, { date: 2025-07, light: 2 weeks of sun }]\nreference: blue wool 3',
    {
      sample: 'WQ25-014-1',
      readings: [
        {
          date: expect.objectContaining({ text: '2025-06-01' }) as unknown,
          dose: '1 Mlx h',
          colour: expect.objectContaining({ hex: '#a44' }) as unknown,
        },
        expect.objectContaining({ dose: '2 weeks of sun' }),
      ],
      reference: 'blue wool 3',
    },
  ],
};

const COMMON = `id: the-id
title: A title
names: [grain, { name: Krapp, lang: de }]
tags: [red, root]
source: a, p. 1
sources: [b, "c, fol. 2, v"]
checked: read-whole
review-by: 2030-01
invented: true
private: true`;

describe('parseNote', () => {
  test.each(NOTE_KINDS)('reads every key of a %s', (kind) => {
    const [own, expected] = FULL[kind];
    const text = aNote(`kind: ${kind}\n${COMMON}\n${own}`);
    const { value: note, diagnostics } = parseNote('x/y.md', text);
    expect(diagnostics).toEqual([]);
    expect(note.record).toMatchObject({ kind, ...expected });
    expect(note).toMatchObject({
      id: 'the-id',
      file: 'x/y.md',
      title: 'A title',
      tags: ['red', 'root'],
      checked: 'read-whole',
      invented: true,
      private: true,
    });
    expect(note.names).toEqual([{ name: 'grain' }, { name: 'Krapp', lang: 'de' }]);
    expect(note.sources).toEqual([cite('a', 'p. 1'), cite('b'), cite('c', 'fol. 2, v')]);
    expect(note.reviewBy?.span?.latestStart).toBe(2030);
    expect(note.source).toBe(text);
  });

  test.each(NOTE_KINDS)('the full %s above leaves no key of the table out', (kind) => {
    const said = new Set([...`kind: x\n${COMMON}\n${FULL[kind][0]}`.matchAll(/^([a-z-]+):/gm)].map(([, key]) => key));
    expect(Object.keys(keysOf(kind)).filter((key) => !said.has(key))).toEqual([]);
  });

  test('keeps where references, dates and sources stand', () => {
    const text = aNote('kind: text\nregion: "venice"\nwhen: 1548\nsource: k, p. 1');
    const { value } = parseNote('a.md', text);
    const record = value.record as Extract<NoteRecord, { kind: 'text' }>;
    expect(text.slice(...(record.region?.range ?? [0, 0]))).toBe('"venice"');
    expect(text.slice(...(record.when?.range ?? [0, 0]))).toBe('1548');
    expect(text.slice(...(value.sources[0]?.range ?? [0, 0]))).toBe('k, p. 1');
  });

  test('takes id and title from the file and the first heading where the note gives none', () => {
    expect(parseNote('dyes/madder.md', 'words\n\n# Red root #\n').value).toMatchObject({
      id: 'madder',
      title: 'Red root',
      record: { kind: 'plain' },
    });
    expect(parseNote('dyes/madder.md', aNote('kind: period\nwhen: 12XX', '# Red\n')).value).toMatchObject({ id: 'madder', title: 'Red' });
    expect(parseNote('dyes/madder.markdown', 'words').value).toMatchObject({ id: 'madder', title: 'madder' });
  });

  test('a file without front matter is a plain note without findings', () => {
    expect(parseNote('a.md', 'Just words: with [marks\n').diagnostics).toEqual([]);
  });

  test('a year keeps its zeros, yes is a word, a date is no number', () => {
    const { value, diagnostics } = parse(
      'kind: dyestuff\navailability:\n  - {region: york, when: 0700, status: grown, sure: yes, source: k}',
    );
    expect(diagnostics).toEqual([]);
    expect(value.record).toMatchObject({ availability: [{ when: { text: '0700', span: { latestStart: 700 } }, sure: 'yes' }] });
  });

  test('words that are no date stay for a period in `when`, without a finding', () => {
    const { value, diagnostics } = parse('kind: textile\nregion: york\nwhen: Viking age\nsource: k');
    expect(diagnostics).toEqual([]);
    expect(value.record).toMatchObject({ when: { text: 'Viking age' } });
    expect(value.record).not.toHaveProperty('when.span');
  });

  test('a trial with keys of its own is one sample; a trial with none has none', () => {
    expect(parse('kind: trial\nrecipe: r\nfibre: wool').value.record).toMatchObject({ samples: [{ fibre: { text: 'wool' } }] });
    expect(parse('kind: trial\nrecipe: r\nby: Ina').value.record).toMatchObject({ samples: [] });
  });

  test('a claim may rest on the source of its note', () => {
    expect(parse('kind: dyestuff\nsource: k\navailability: { region: york, when: 12XX, status: grown }').diagnostics).toEqual([]);
  });

  test('keys named like parts of the language do no harm', () => {
    const { value, diagnostics } = parse(
      '__proto__: { polluted: 1 }\nconstructor: x\nkind: period\nwhen: 12XX\ntoString: y\nhasOwnProperty: z',
    );
    expect(diagnostics.map(({ code }) => code)).toEqual(['key-unknown', 'key-unknown', 'key-unknown', 'key-unknown']);
    expect(value.record.kind).toBe('period');
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });

  test('aliases repeat a value', () => {
    const { value, diagnostics } = parse(
      'kind: dyestuff\navailability:\n  - &a { region: york, when: 12XX, status: grown, source: k }\n  - *a',
    );
    expect(diagnostics).toEqual([]);
    expect(value.record).toMatchObject({ availability: [{ status: 'grown' }, { status: 'grown' }] });
  });

  test('reads around what is broken, and does not call missing what is only broken', () => {
    const { value, diagnostics } = parse('kind: recipe\ntitle: A\nfibre: wool\nsteps: [a, b\nliquor: "30:1"');
    expect(value).toMatchObject({ title: 'A', record: { kind: 'recipe', fibre: [{ text: 'wool' }] } });
    expect(new Set(diagnostics.map(({ code }) => code))).toEqual(new Set(['yaml-broken']));
  });
});

const CLAIM = 'region: york, when: 12XX, status: grown, source: k';

describe('findings', () => {
  test.each<[DiagnosticCode, string, [severity: 'error' | 'warning', at: string]]>([
    ['file-empty', '', ['warning', '']],
    ['file-empty', '\uFEFF \r\n', ['warning', '\uFEFF \r\n']],
    ['front-matter-open', '---\nkind: text\n', ['error', '---']],
    ['front-matter-not-map', aNote('- a\n- b'), ['error', '- a\n- b']],
    ['front-matter-not-map', aNote('words'), ['error', 'words']],
    ['yaml-broken', aNote('kind: period\nwhen: 12XX\ntitle: @at'), ['error', '@']],
    ['yaml-broken', aNote('kind: period\nwhen: 12XX\ntitle: *gone'), ['error', '*gone']],
    ['yaml-broken', aNote('kind: period\nwhen: 12XX\ntitle: !own x'), ['warning', '!own']],
    ['sign-turns-text', aNote('kind: period\nwhen: 12XX\ntitle: a\u202Eb'), ['warning', '\u202E']],
    ['id-mixes-letters', aNote('kind: period\nwhen: 12XX\nid: m\u0430dder'), ['warning', 'm\u0430dder']],
    ['yaml-tab', aNote('kind: period\nwhen: 12XX\nnames:\n\t- a'), ['error', '\t']],
    ['yaml-key-twice', aNote('kind: period\nwhen: 12XX\nwhen: 13XX'), ['error', 'when']],
    ['kind-missing', aNote('title: A'), ['warning', 'title: A']],
    ['kind-missing', aNote('# nothing'), ['warning', '# nothing\n']],
    ['kind-unknown', aNote('kind: dystuff'), ['error', 'dystuff']],
    ['kind-unknown', aNote('kind: [text]'), ['error', '[text]']],
    ['key-unknown', aNote('kind: period\nwhen: 12XX\nregoin: york'), ['warning', 'regoin']],
    ['key-unknown', aNote(`kind: dyestuff\navailability: { ${CLAIM}, prise: 2 }`), ['warning', 'prise']],
    ['key-missing', aNote('kind: period'), ['warning', 'period']],
    ['key-missing', aNote('kind: period\nwhen:'), ['warning', 'period']],
    ['key-missing', aNote('kind: recipe\nfibre: wool\ningredients: [{ what: alum }]'), ['warning', '{ what: alum }']],
    [
      'key-missing',
      aNote('kind: dyestuff\navailability: { when: 12XX, status: grown, source: k }'),
      ['warning', '{ when: 12XX, status: grown, source: k }'],
    ],
    [
      'key-missing',
      aNote('kind: dyestuff\navailability: { region: york, status: grown, source: k }'),
      ['warning', '{ region: york, status: grown, source: k }'],
    ],
    [
      'key-missing',
      aNote('kind: dyestuff\navailability: { region: york, when: 12XX, source: k }'),
      ['warning', '{ region: york, when: 12XX, source: k }'],
    ],
    [
      'key-missing',
      aNote('kind: dyestuff\navailability: { region: york, when: 12XX, status: grown }'),
      ['warning', '{ region: york, when: 12XX, status: grown }'],
    ],
    ['key-missing', aNote('kind: fibre'), ['warning', 'fibre']],
    ['type-wrong', aNote('kind: period\nwhen: [12XX]'), ['error', '[12XX]']],
    ['type-wrong', aNote('kind: dyestuff\nmarkers: [{ a: 1 }]'), ['error', '{ a: 1 }']],
    ['type-wrong', aNote('kind: dyestuff\navailability: [york]'), ['error', 'york']],
    ['type-wrong', aNote('kind: dyestuff\neveryday: perhaps'), ['error', 'perhaps']],
    ['type-wrong', aNote('kind: dyestuff\ngather: { months: [May] }'), ['error', 'May']],
    ['type-wrong', aNote('kind: region\npoint: [1, 2, 3]'), ['error', '[1, 2, 3]']],
    ['type-wrong', aNote('kind: region\nsource: ", p. 3"'), ['error', '", p. 3"']],
    ['type-wrong', aNote('kind: region\n? [a]\n: b'), ['error', '[a]']],
    ['word-unknown', aNote('kind: dyestuff\nmatter: plnt'), ['error', 'plnt']],
    [
      'word-unknown',
      aNote('kind: dyestuff\navailability: { region: york, when: 12XX, status: on-cloth, source: k }'),
      ['error', 'on-cloth'],
    ],
    [
      'word-unknown',
      aNote('kind: fibre\nclass: skin\nundyed: { name: a, colour: { lab: [1, 2, 3], illuminant: D65, observer: 5 } }'),
      ['error', '5'],
    ],
    ['number-out-of-range', aNote('kind: dyestuff\ngather: { months: [13] }'), ['error', '13']],
    ['number-out-of-range', aNote('kind: region\npoint: [91, 0]'), ['error', '91']],
    ['number-out-of-range', aNote('kind: trial\nrecipe: r\nfibre-mass: -5 g'), ['error', '-5 g']],
    ['number-out-of-range', aNote('kind: trial\nrecipe: r\nfibre-mass: 500 kg'), ['error', '500 kg']],
    ['number-out-of-range', aNote('kind: trial\nrecipe: r\nfibre-mass: 0 g'), ['error', '0 g']],
    ['number-out-of-range', aNote('kind: trial\nrecipe: r\ncolour: { lab: [141, 2, 3], illuminant: D65, observer: 10 }'), ['error', '141']],
    ['amount-unreadable', aNote('kind: trial\nrecipe: r\nfibre-mass: 50'), ['error', '50']],
    [
      'amount-unreadable',
      aNote('kind: recipe\nfibre: wool\ningredients: { what: alum, role: mordant, amount: about 15 % }'),
      ['warning', 'about 15 %'],
    ],
    ['colour-unreadable', aNote('kind: trial\nrecipe: r\ncolour: { hex: "#12345g" }'), ['error', '"#12345g"']],
    ['colour-unreadable', aNote('kind: trial\nrecipe: r\ncolour: { by: eye }'), ['error', '{ by: eye }']],
    [
      'colour-unreadable',
      aNote('kind: trial\nrecipe: r\ncolour: { hex: "#123", xyz: [1, 2, 3] }'),
      ['error', '{ hex: "#123", xyz: [1, 2, 3] }'],
    ],
    [
      'colour-conditions-missing',
      aNote('kind: trial\nrecipe: r\ncolour: { lab: [41, 2, 3], illuminant: D65 }'),
      ['warning', '{ lab: [41, 2, 3], illuminant: D65 }'],
    ],
    ['source-missing', aNote('kind: text\nregion: york\nwhen: 12XX'), ['warning', 'text']],
    [
      'thread-untested',
      aNote('kind: textile\nregion: york\nwhen: 12XX\nsource: k\nthreads: { dyes: [madder], tested: no }'),
      ['warning', 'no'],
    ],
    ['date-unreadable', aNote('kind: trial\nrecipe: r\ndate: last summer'), ['error', 'last summer']],
    ['date-unreadable', aNote('kind: region\nreview-by: soon'), ['error', 'soon']],
    ['date-ambiguous', aNote('kind: period\nwhen: 1200s'), ['error', '1200s']],
    ['date-reversed', aNote('kind: period\nwhen: 1350–1290'), ['error', '1350–1290']],
    ['date-impossible', aNote('kind: period\nwhen: 1405-13-01'), ['error', '1405-13-01']],
    [
      'absence-not-evidence',
      aNote('kind: dyestuff\navailability: { region: york, when: 12XX, status: absent, known-by: law, source: k }'),
      ['warning', 'law'],
    ],
    [
      'absence-not-evidence',
      aNote('kind: dyestuff\navailability: { region: york, when: 12XX, status: absent, known-by: analysis, source: k }'),
      ['warning', 'analysis'],
    ],
  ])('%s in %j', (code, text, [severity, at]) => {
    expect(findings(text)).toEqual([[code, severity, at]]);
  });

  test('the nearest known key or word is suggested', () => {
    expect(parse('kind: period\nwhen: 12XX\nregoin: york').diagnostics[0]?.about).toEqual(['regoin', 'period', 'region']);
    expect(parse('kind: dystuff').diagnostics[0]?.about).toEqual(['dystuff', 'kind', 'dyestuff']);
    expect(parse('kind: dyestuff\nmatter: plnt').diagnostics[0]?.about.slice(0, 3)).toEqual(['plnt', 'matter', 'plant']);
  });

  test('ranges count from the beginning of the file, byte order mark and CRLF included', () => {
    const text = '\uFEFF---\r\nkind: period\r\nwhen: 1200s\r\n---\r\n';
    expect(parseNote('a.md', text).diagnostics[0]?.range).toEqual([text.indexOf('1200s'), text.indexOf('1200s') + 5]);
  });

  test('a tab tells its line', () => {
    expect(parseNote('a.md', aNote('kind: period\nwhen: 12XX\nnames:\n\t- a')).diagnostics[0]?.about).toEqual(['5']);
  });
});

describe('hostile and damaged notes', () => {
  test.each([
    ['[', 'yaml-too-deep'],
    ['{a: ', 'yaml-too-deep'],
    ['- ', 'yaml-too-deep'],
  ])(
    'deep nesting of %j is told once',
    (opener, code) => {
      for (const times of [60, 2000, 90_000]) {
        const text = aNote(`title: A\nkind: period\nwhen: 12XX\nx:\n  ${opener.repeat(times)}`);
        const codes = parseNote('a.md', text).diagnostics.map((each) => each.code);
        expect(codes.filter((each) => each === code)).toHaveLength(1);
      }
    },
    20_000,
  );

  test('an alias bomb is not followed, and the rest is read', () => {
    const levels = 'bcdefghij'.split('').map((name, index) => `${name}: &${name} [${Array(9).fill(`*${'abcdefghi'[index]}`).join(', ')}]`);
    const text = aNote(`kind: dyestuff\ntitle: A\na: &a [x, x, x]\n${levels.join('\n')}\nmarkers: *j`);
    const { value, diagnostics } = parseNote('a.md', text);
    expect(diagnostics.filter(({ code }) => code === 'yaml-alias-bomb')).toHaveLength(1);
    expect(value).toMatchObject({ title: 'A', record: { kind: 'dyestuff', markers: [] } });
  });

  test('an alias within itself is not followed', () => {
    const text = aNote('kind: dyestuff\nmarkers: &m [a, *m]');
    expect(findings(text)).toEqual([['yaml-alias-bomb', 'error', '*m']]);
  });

  test('front matter beyond measure is not read', () => {
    const text = aNote(`kind: period\nsays: ${'x'.repeat(500_000)}`);
    const { value, diagnostics } = parseNote('a.md', text);
    expect(diagnostics.map(({ code }) => code)).toEqual(['file-too-large']);
    expect(value.record.kind).toBe('plain');
  });

  test('twenty thousand keys are told apart in good time', () => {
    const text = aNote(`kind: period\nwhen: 12XX\nx:\n${Array.from({ length: 20_000 }, (_, index) => `  k${index}: v`).join('\n')}`);
    expect(parseNote('a.md', text).diagnostics.map(({ code }) => code)).toEqual(['key-unknown']);
  }, 10_000);

  test('a heading of thousands of spaces and signs is read, and its closing signs are no part of it', () => {
    expect(parseNote('a.md', `# a${' '.repeat(3900)}b ##  \n`).value.title).toBe(`a${' '.repeat(3900)}b`);
    expect(parseNote('a.md', `# a${' #'.repeat(1900)}b\n`).value.title).toBe(`a${' #'.repeat(1900)}b`);
  });

  test('no more than twenty faults of the YAML are told', () => {
    const text = aNote(Array.from({ length: 500 }, (_, index) => `k${index}: @x`).join('\n'));
    expect(parseNote('a.md', text).diagnostics.filter(({ code }) => code === 'yaml-broken')).toHaveLength(20);
  });

  test('a body of five million characters is kept as it is', () => {
    const text = aNote('kind: period\nwhen: 12XX', 'Words and more words.\n'.repeat(240_000));
    const { value, diagnostics } = parseNote('a.md', text);
    expect(diagnostics).toEqual([]);
    expect(value.source).toBe(text);
    expect(value.bodyStart).toBe(32);
  });

  const invariants = (text: string): void => {
    const { value, diagnostics } = parseNote('a.md', text);
    expect(value.source).toBe(text);
    expect(value.bodyStart).toBeLessThanOrEqual(text.length);
    for (const { range } of diagnostics) {
      expect(range[0]).toBeGreaterThanOrEqual(0);
      expect(range[1]).toBeGreaterThanOrEqual(range[0]);
      expect(range[1]).toBeLessThanOrEqual(text.length);
    }
  };

  test('never throws, keeps the text and stays inside it, whatever the text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), invariants), { numRuns: 2000, seed: 1 });
    const yamlish = fc.array(
      fc.constantFrom(
        '---\n',
        '- ',
        ': ',
        '\n',
        '  ',
        '[',
        ']',
        '{',
        '}',
        '&a ',
        '*a',
        '|',
        '>',
        '"',
        "'",
        '#',
        ',',
        '?',
        '!t ',
        '%',
        '\t',
        '\r',
        'kind: trial\n',
        'a',
        'samples',
        'colour',
        'lab',
        'when',
        '1',
        '~',
      ),
      { maxLength: 60 },
    );
    fc.assert(
      fc.property(yamlish, (parts) => invariants(`---\n${parts.join('')}\n---\n`)),
      { numRuns: 5000, seed: 2 },
    );
  }, 60_000);

  test('never throws on a note with something cut, doubled or put in', () => {
    fc.assert(
      fc.property(arbitraryNote, fc.integer({ min: 0 }), ({ text }, seed) => {
        const dice = chance(seed);
        let changed = text;
        for (let turn = 0; turn < 4; turn++) {
          const at = dice.below(changed.length + 1);
          const to = at + dice.below(20);
          const put = dice.pick(['', changed.slice(at, to).repeat(2), '[', '}', ':', '\t', '\n', '"', '&x *x', '\u0000', '\uD800', '- ']);
          changed = changed.slice(0, at) + put + changed.slice(to);
        }
        invariants(changed);
      }),
      { numRuns: 2000, seed: 5 },
    );
  }, 60_000);

  test('made-up notes of every kind are read without a fault of the YAML', () => {
    const kinds = new Set<string>();
    for (let seed = 0; seed < 400; seed++) {
      const { text, kind } = aNoteFrom(seed);
      kinds.add(kind);
      const { value, diagnostics } = parseNote('a.md', text);
      expect(value.record.kind).toBe(kind);
      expect(diagnostics.filter(({ code }) => code.startsWith('yaml') || code === 'key-unknown' || code === 'type-wrong')).toEqual([]);
    }
    expect(kinds.size).toBe(NOTE_KINDS.length);
  });
});

describe('the demonstration notebook', () => {
  test('every note has a kind and front matter that is read', () => {
    const root = new URL('../../../corpus-demo/', import.meta.url);
    const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.md'));
    expect(files.length).toBeGreaterThan(50);
    const faults = files.flatMap((file) =>
      parseNote(file, readFileSync(new URL(file, root), 'utf8'))
        .diagnostics.filter(({ code }) => /^(?:yaml|front-matter|kind-unknown|type-wrong|word-unknown)/.test(code))
        .map(({ code, about }) => [file, code, ...about]),
    );
    expect(faults).toEqual([]);
  });
});
