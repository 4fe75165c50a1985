import { describe, expect, test } from 'vitest';
import { claimKey } from '../../../web/domain/claim/claim.ts';
import { claimsAt } from '../../../web/domain/claim/claims-at.ts';
import { EvidenceBase, MATERIAL_KINDS } from '../../../web/domain/claim/evidence-base.ts';
import { NOTE_KINDS, type Note, noteId, type NoteKind } from '../../../web/domain/note/note.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { withoutDoses } from '../../../web/domain/pot/without-doses.ts';
import { askDye } from '../../../web/domain/verdict/ask-dye.ts';
import { judgeRoute } from '../../../web/domain/verdict/judge-route.ts';
import { routeOf } from '../../../web/domain/verdict/route.ts';
import { aDyestuff, aNote } from '../../helpers/a-notebook.ts';
import { type Chance, chance } from '../../helpers/random.ts';

const REGIONS = ['europe', 'england', 'york', 'ireland', 'Albion', 'world', 'atlantis'] as const;
const YEARS = ['1200–1300', 'c. 1250', 'viking age', 'long ago', '1280'] as const;
const DYES = ['weld', 'madder', 'Luteolin plant', 'Krapp', 'woad'] as const;
const FIBRES = ['wool', 'fine-wool', 'silk'] as const;
const STATUS = ['grown', 'wild', 'imported', 'cloth-only', 'absent'] as const;

const names = ({ pick, oneIn }: Chance, from: readonly string[]): string => `names: [${oneIn(2) ? pick(from) : ''}]`;
const placed = ({ pick }: Chance): string => `region: ${pick(REGIONS)}\nwhen: ${pick(YEARS)}`;
const row = ({ pick }: Chance): string =>
  `region: ${pick(REGIONS)}, when: ${JSON.stringify(pick(YEARS))}, status: ${pick(STATUS)}, known-by: text, on: [${pick(FIBRES)}], source: b`;
const rows = (draw: Chance): readonly string[] => Array.from({ length: draw.below(4) }, () => row(draw));

/** Files of a small notebook, each written anew by chance: names fit several, ids clash, regions move and close circles. */
const WRITTEN: Readonly<Record<string, (draw: Chance) => string>> = {
  'regions/europe.md': () => aNote('kind: region\ntitle: Europe'),
  'regions/england.md': (draw) =>
    aNote(
      `kind: region\ntitle: England\nwithin: [${draw.pick(['europe', '', 'york', 'nowhere'])}]\nnear: [${draw.pick(['ireland', ''])}]\n${names(draw, ['Albion'])}`,
    ),
  'regions/york.md': (draw) =>
    aNote(`kind: region\ntitle: York\nwithin: [${draw.pick(['england', 'Albion', 'europe', ''])}]\n${names(draw, ['Albion', 'atlantis'])}`),
  'regions/ireland.md': (draw) => aNote(`kind: region\ntitle: ${draw.pick(['Ireland', 'Albion'])}\nwithin: europe`),
  'periods/viking.md': (draw) => aNote(`kind: period\ntitle: ${draw.pick(['Viking age', 'long ago'])}\nwhen: ${draw.pick(YEARS)}`),
  'fibres/wool.md': (draw) =>
    aNote(
      `kind: fibre\ntitle: Wool\nclass: protein\nundyed: [{name: white, availability: [{${row(draw)}}]}]\navailability: [{${row(draw)}}]`,
    ),
  'fibres/fine.md': (draw) => aNote(`kind: fibre\nid: fine-wool\ntitle: Fine\nis: ${draw.pick(['wool', 'silk'])}`),
  'dyestuffs/weld.md': (draw) => aDyestuff('Weld', ...rows(draw)).replace('\n---\n', `\n${names(draw, ['Luteolin plant', 'woad'])}\n---\n`),
  'dyestuffs/madder.md': (draw) => aDyestuff(draw.pick(['Madder', 'Krapp']), ...rows(draw)),
  'other/weld.md': (draw) => aDyestuff('Other weld', ...rows(draw)),
  'other/madder.md': (draw) => aNote(`kind: ${draw.pick(['mordant', 'colour-word', 'dyestuff'])}\nid: woad\ntitle: Krapp`),
  'textiles/hood.md': (draw) =>
    aNote(
      `kind: textile\n${placed(draw)}\nthreads: [{fibre: ${draw.pick(FIBRES)}, dyes: [${draw.pick(DYES)}], tested: found}, {where: hem, dyes: [weld, madder], tested: found}]`,
    ),
  'texts/book.md': (draw) => aNote(`kind: text\n${placed(draw)}\ndyes: [${draw.pick(DYES)}]\nfibre: [${draw.pick(FIBRES)}]`),
  'rules/law.md': (draw) =>
    aNote(`kind: rule\n${placed(draw)}\nact: wear\nconcerns: [${draw.pick(DYES)}, ${draw.pick(['gaude', ...DYES])}]\nforbids: [noble]`),
  'words/gaude.md': (draw) => aNote(`kind: colour-word\ntitle: Gaude\nmeans: [{dyes: [${draw.pick(DYES)}], shade: yellow}]`),
  'recipes/yellow.md': (draw) =>
    aNote(
      `kind: recipe\ntitle: Yellow\nfibre: ${draw.pick(FIBRES)}\ningredients: [{what: ${draw.pick(DYES)}, role: dye, amount: 50 %}, {what: salt}]`,
    ),
  'mordants/salt.md': (draw) =>
    aNote(`kind: mordant\nid: salt\ntitle: ${draw.pick(['Salt', 'Krapp'])}\nformula: ${draw.pick(['K2Cr2O7', 'NaCl'])}`),
};
const FILES = Object.keys(WRITTEN);
/** A period moves claims without any name changing: often, so that it is met. */
const DRAWN = [...FILES, ...Array.from({ length: 4 }, () => 'periods/viking.md')];
const KINDS: readonly (readonly NoteKind[])[] = [['region'], ['dyestuff'], ['period'], ['fibre'], MATERIAL_KINDS];

/** Everything a base answers that may hang on several notes. */
function answersOf(base: EvidenceBase) {
  const ids = ['weld', 'madder', 'woad', 'salt', 'wool', 'wool/white', 'fine-wool', 'Luteolin plant', 'Krapp'];
  const question = {
    region: base.regions.has('york') ? 'york' : 'world',
    span: { from: 1240, to: 1290 },
    wearer: 'noble',
    dyedHere: false,
  };
  return {
    notes: [...base.notes()].map(({ file }) => file).sort(),
    ofKind: NOTE_KINDS.map((kind) => base.ofKind(kind).map(({ file, source }) => [file, source])),
    held: ids.map((id) => base.note(id)?.file),
    claimsIn: FILES.map((file) => base.claimsIn(file)),
    claims: ids.map((id) => base.claimsOf(id)),
    claimsAt: base.regions.ids.flatMap((region) =>
      [undefined, { from: 1240, to: 1260 }].map((span) =>
        claimsAt(base, { region, ...(span && { span }) })
          .map(({ claim }) => claimKey(claim))
          .sort(),
      ),
    ),
    regions: base.regions.ids.map((id) => [
      id,
      base.regions.parentsOf(id),
      base.regions.inCircle.has(id),
      base.regions.ids.map((other) => base.regions.relation(id, other)),
    ]),
    found: [...REGIONS, ...YEARS, ...DYES, 'ALBIÓN', 'fine wool', 'kravp'].map((text) =>
      KINDS.map((kinds) => ({ ...base.find(text, kinds) })),
    ),
    lines: FIBRES.map((fibre) => [base.fibreLine(fibre), base.fibreClassOf(fibre)]),
    asked: ids.map((dye) => askDye(base, { ...question, dye })),
    judged: judgeRoute(base, routeOf(base, noteId('yellow'), 'wool'), { ...question, fibre: 'wool' }),
    doses: withoutDoses(base, 'Take 3 g of Krapp and 2 g of salt.'),
  };
}

/** A base made at once from what lies in another, the notes in an order of chance. */
function madeAtOnce(notes: Iterable<Note>, draw: Chance): EvidenceBase {
  const base = new EvidenceBase();
  const keyed = [...notes].map((note) => [draw.next(), note] as const).sort(([a], [b]) => a - b);
  for (const [, note] of keyed) base.put(note);
  return base;
}

describe('EvidenceBase, whatever is put in, edited and taken out', () => {
  test.each([
    [1, 1],
    [2, 1],
    [3, 4],
    [4, 9],
  ])('answers as one that is made at once: seed %i, up to %i changes between questions', (seed, most) => {
    const draw = chance(seed);
    const base = new EvidenceBase();
    for (let step = 0; step < 45; step += 1) {
      for (let change = draw.below(most); change >= 0; change -= 1) {
        const file = draw.pick(DRAWN);
        if (draw.oneIn(6)) base.remove(file);
        else base.put(parseNote(file, WRITTEN[file]?.(draw) ?? '').value);
      }
      expect(answersOf(base), `step ${step}`).toEqual(answersOf(madeAtOnce(base.notes(), draw)));
    }
  });
  test('answers rightly when so much has changed that it starts again', () => {
    const draw = chance(5);
    const base = new EvidenceBase();
    for (const file of FILES) base.put(parseNote(file, WRITTEN[file]?.(draw) ?? '').value);
    answersOf(base);
    const weld = 'dyestuffs/weld.md';
    const versions = Array.from({ length: 7 }, () => parseNote(weld, WRITTEN[weld]?.(draw) ?? '').value);
    base.remove('regions/york.md');
    for (let n = 0; n < 5000; n += 1) base.put(versions[n % 7] ?? draw.pick(versions));
    expect(answersOf(base)).toEqual(answersOf(madeAtOnce(base.notes(), draw)));
  });
});

describe('EvidenceBase, what an edit leaves alone', () => {
  const files = () => {
    const draw = chance(6);
    return FILES.map((file) => parseNote(file, WRITTEN[file]?.(draw) ?? '').value);
  };
  test('a trial, or claims alone, move no region and no other material’s claims', () => {
    const base = madeAtOnce(files(), chance(7));
    const weld = (region: string) =>
      parseNote('dyestuffs/weld.md', aDyestuff('Weld', `region: ${region}, when: 1250, status: grown`)).value;
    base.put(parseNote('dyestuffs/madder.md', aDyestuff('Madder', 'region: europe, when: 1250, status: grown')).value);
    base.put(weld('europe'));
    const [regions, madder] = [base.regions, base.claimsOf('madder')];
    expect(madder).not.toEqual([]);
    base.put(parseNote('trials/one.md', aNote('kind: trial\nrecipe: yellow')).value);
    base.put(weld('world'));
    expect(base.claimsOf('weld').map(({ region }) => region)).toContain('world');
    expect(base.regions).toBe(regions);
    expect(base.claimsOf('madder')).toBe(madder);
  });
  test('what something depends on is all that tells it to be made again', () => {
    const base = madeAtOnce(files(), chance(8));
    const on = { notes: ['recipe'], names: ['dyestuff'] } as const;
    base.put(parseNote('dyestuffs/madder.md', aDyestuff('Madder', 'region: europe, when: 1250, status: grown')).value);
    const named = base.versionOf(on);
    base.put(parseNote('dyestuffs/madder.md', aDyestuff('Madder', 'region: york, when: 1250, status: wild')).value);
    base.put(parseNote('textiles/hood.md', aNote('kind: textile')).value);
    expect(base.versionOf(on)).toBe(named);
    base.put(parseNote('dyestuffs/madder.md', aDyestuff('Rubia', 'region: york, when: 1250, status: wild')).value);
    const renamed = base.versionOf(on);
    base.put(parseNote('recipes/yellow.md', aNote('kind: recipe\ntitle: Yellow')).value);
    expect(renamed).not.toBe(named);
    expect(base.versionOf(on)).not.toBe(renamed);
  });
});
