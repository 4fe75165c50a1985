import { describe, expect, test } from 'vitest';
import { EvidenceBase } from '../../../web/domain/claim/evidence-base.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { paletteOf } from '../../../web/domain/palette/palette.ts';
import { groundsByFibre } from '../../../web/domain/verdict/predicted-cloths.ts';
import { SampleColours } from '../../../web/domain/verdict/sample-colours.ts';
import { aDyestuff, aNote, aWorld } from '../../helpers/a-notebook.ts';
import { type Chance, chance } from '../../helpers/random.ts';

const FIBRES = ['wool', 'fine-wool', 'linen', 'Flax'] as const;
const DYES = ['weld', 'madder', 'Krapp'] as const;

const lab = ({ below }: Chance): string => `{lab: [${40 + below(30)}, ${below(40)}, ${below(40)}], illuminant: D65, observer: 10}`;
const sample = (draw: Chance): string =>
  `{fibre: ${draw.pick([...FIBRES, ''])}, colour: ${lab(draw)}${draw.oneIn(4) ? `, onto: ${draw.pick(['one', 'linen'])}` : ''}}`;
const claim = ({ pick, below }: Chance): string =>
  `region: ${pick(['england', 'york', 'europe'])}, when: ${1240 + below(40)}–1300, status: ${pick(['grown', 'imported', 'cloth-only'])}, known-by: text, on: [${pick(['', 'wool'])}], source: b`;
const trial = (draw: Chance): string =>
  aNote(
    `kind: trial\nrecipe: ${draw.pick(['yellow', 'Red'])}\nactual: [{what: ${draw.pick(DYES)}, role: dye}]\nbath: {nth: ${1 + draw.below(2)}}\nsamples: [${sample(draw)}, ${sample(draw)}]`,
  );
const recipe = (draw: Chance, title: string): string =>
  aNote(
    `kind: recipe\ntitle: ${title}\nfibre: ${draw.pick(FIBRES)}\ningredients: [{what: ${draw.pick(DYES)}, role: dye}, {what: alum}]\nfollows: [${draw.pick(['', 'yellow'])}]`,
  );

const WRITTEN: Readonly<Record<string, (draw: Chance) => string>> = {
  'dyestuffs/weld.md': (draw) => aDyestuff('Weld', claim(draw), claim(draw)),
  'dyestuffs/madder.md': (draw) => aDyestuff(draw.pick(['Madder', 'Krapp']), claim(draw)),
  'mordants/alum.md': ({ pick }) => aNote(`kind: ${pick(['mordant', 'assistant'])}\ntitle: Alum\neveryday: ${pick(['true', 'false'])}`),
  'fibres/wool.md': (draw) =>
    aNote(`kind: fibre\ntitle: Wool\nclass: protein\neveryday: true\nundyed: [{name: white, colour: ${lab(draw)}}, {name: grey}]`),
  'fibres/linen.md': ({ pick }) => aNote(`kind: fibre\ntitle: ${pick(['Linen', 'Flax'])}\nis: ${pick(['', 'wool'])}`),
  'recipes/yellow.md': (draw) => recipe(draw, 'Yellow'),
  'recipes/red.md': (draw) => recipe(draw, draw.pick(['Red', 'Yellow'])),
  'trials/one.md': trial,
  'trials/two.md': trial,
  'trials/three.md': trial,
  'textiles/hood.md': ({ pick }) =>
    aNote(`kind: textile\nregion: york\nwhen: 1250\nthreads: [{fibre: wool, dyes: [${pick(DYES)}], tested: found}]`),
  'rules/law.md': ({ pick }) => aNote(`kind: rule\nregion: england\nwhen: 1200–1400\nconcerns: [${pick(DYES)}]\nforbids: [noble]`),
};
const FILES = Object.keys(WRITTEN);

/** Every palette of some years and fibres, and the grounds behind it, without the curves. */
const answersOf = (base: EvidenceBase, colours: SampleColours) => ({
  palettes: [1245, 1290].flatMap((year) =>
    [undefined, 'wool'].map((fibre) =>
      paletteOf(base, colours, {
        region: 'england',
        span: { from: year, to: year },
        wearer: 'noble',
        dyedHere: year === 1290,
        ...(fibre === undefined ? {} : { fibre }),
      }).map(({ colour, samples, ...rest }) => ({
        ...rest,
        lab10: colour.lab10,
        samples: samples.map(({ trial: of, nth, fibre: on }) => [of, nth, on]),
      })),
    ),
  ),
  grounds: [...groundsByFibre(base, colours)],
});

const newColours = () => new SampleColours(() => undefined);
const put = (base: EvidenceBase, file: string, text: string) => {
  base.put(parseNote(file, text).value);
};
const aWorldBase = (): EvidenceBase => {
  const base = new EvidenceBase();
  for (const [file, text] of Object.entries(aWorld)) put(base, file, text);
  return base;
};

describe('paletteOf, whatever was edited between two palettes', () => {
  test.each([11, 12, 13])('is that of a notebook made at once: seed %i', (seed) => {
    const draw = chance(seed);
    const [base, colours] = [aWorldBase(), newColours()];
    for (const file of FILES) put(base, file, WRITTEN[file]?.(draw) ?? '');
    let seen = 0;
    for (let step = 0; step < 25; step += 1) {
      const file = draw.pick(FILES);
      if (draw.oneIn(8)) base.remove(file);
      else put(base, file, WRITTEN[file]?.(draw) ?? '');
      const fresh = new EvidenceBase();
      for (const note of base.notes()) fresh.put(note);
      const answers = answersOf(base, colours);
      expect(answers, `step ${step}: ${file}`).toEqual(answersOf(fresh, newColours()));
      seen += answers.palettes.flat().length;
    }
    expect(seen).toBeGreaterThan(100);
  });
  test('the grounds are found once for a board of many cloths, and again once a fibre changes', () => {
    const [base, colours] = [aWorldBase(), newColours()];
    const before = groundsByFibre(base, colours);
    put(base, 'trials/one.md', trial(chance(1)));
    expect(groundsByFibre(base, colours)).toBe(before);
    expect(groundsByFibre(base, newColours())).not.toBe(before);
    put(base, 'fibres/wool.md', aNote(`kind: fibre\ntitle: Wool\nundyed: [{name: white, colour: ${lab(chance(2))}}]`));
    expect(groundsByFibre(base, colours).get('wool')).not.toEqual(before.get('wool'));
    expect(groundsByFibre(base, colours).get('fine-wool')).toBe(groundsByFibre(base, colours).get('wool'));
  });
});
