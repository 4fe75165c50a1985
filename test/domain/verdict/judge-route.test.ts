import { describe, expect, test } from 'vitest';
import { judgeRoute, type RouteQuestion } from '../../../web/domain/verdict/judge-route.ts';
import { KnownMaterials } from '../../../web/domain/verdict/known-materials.ts';
import { routeOf, UNNAMED, undyedRoute } from '../../../web/domain/verdict/route.ts';
import { noteId } from '../../../web/domain/note/note.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const claim = (status: string, { when = '1250–1350', region = 'england', more = '', source = 'book', by = 'text' } = {}) =>
  `region: ${region}, when: "${when}", status: ${status}, known-by: ${by}, source: "${source}"${more && `, ${more}`}`;

const mordant = (title: string, ...rows: string[]) =>
  aNote(`kind: mordant\ntitle: ${title}\navailability:\n${rows.map((one) => `  - {${one}}`).join('\n')}`);

const RED = aNote(
  'kind: recipe\ntitle: Madder red\nfibre: wool\ningredients:\n  - {what: alum, role: mordant}\n  - {what: madder, role: dye}\n  - {what: water, role: assistant}',
);
const base = {
  ...aWorld,
  'assistants/water.md': aNote('kind: assistant\ntitle: Water\neveryday: true'),
  'mordants/alum.md': mordant('Alum', claim('imported')),
  'recipes/red.md': RED,
};
const aRed = (madderRows: string[], more: Record<string, string> = {}, question: Partial<RouteQuestion> = {}, recipe = 'red') => {
  const { base: evidence } = aNotebook({ ...base, 'dyestuffs/madder.md': aDyestuff('Madder', ...madderRows), ...more });
  const asked: RouteQuestion = { region: 'england', span: { from: 1300, to: 1300 }, fibre: 'wool', dyedHere: false, ...question };
  return judgeRoute(evidence, routeOf(evidence, noteId(recipe), 'wool'), asked);
};
const hood = (fields: string) => ({ 'textiles/hood.md': aNote(`kind: textile\nsource: dig\n${fields}`) });
const thread = (dyes: string, fibre = 'wool') => `threads: [{where: weft, fibre: ${fibre}, dyes: [${dyes}], tested: found}]`;

describe('routeOf', () => {
  test('takes the materials of every recipe it follows, each once, judged as what they stand for', () => {
    const { base: evidence } = aNotebook({
      ...base,
      'dyestuffs/madder.md': aDyestuff('Madder'),
      'dyestuffs/woad.md': aDyestuff('Woad'),
      'dyestuffs/indigo.md': aDyestuff('Indigo'),
      'recipes/blue.md': aNote(
        'kind: recipe\nfibre: wool\ningredients: [{what: indigo, role: dye, stands-for: woad}, {what: water, role: assistant}]',
      ),
      'recipes/violet.md': aNote(
        'kind: recipe\nfibre: wool\nfollows: blue\ningredients: [{what: madder, role: dye}, {what: alum, role: mordant}]',
      ),
    });
    const route = routeOf(evidence, noteId('violet'), 'wool');
    expect(route.materials.map(({ id, role }) => [id, role])).toEqual([
      ['woad', 'dye'],
      ['water', 'assistant'],
      ['madder', 'dye'],
      ['alum', 'mordant'],
      ['wool', 'fibre'],
    ]);
    expect(route.materials[0]?.usedInstead).toBe('indigo');
    expect(route.dyes).toEqual(['madder', 'woad']);
  });
  test('cuts a chain of recipes that follow each other', () => {
    const { base: evidence } = aNotebook({
      'recipes/a.md': aNote('kind: recipe\nfollows: b\ningredients: [{what: weld, role: dye}]'),
      'recipes/b.md': aNote('kind: recipe\nfollows: a\ningredients: [{what: woad, role: dye}]'),
    });
    const route = routeOf(evidence, noteId('a'), undefined);
    expect(route.dyes).toEqual(['weld', 'woad']);
    expect(route.inCircle).toEqual(['a']);
  });
  test('an ingredient without a name stays, so that nothing is passed over in silence', () => {
    const { base: evidence } = aNotebook({ 'recipes/a.md': aNote('kind: recipe\ningredients: [{role: dye}]') });
    expect(routeOf(evidence, noteId('a'), undefined).materials[0]?.id).toBe(UNNAMED);
  });
});

describe('judgeRoute verdicts', () => {
  test('attested: local or imported, with a witness', () => {
    const judged = aRed([claim('grown')], hood(`region: york\nwhen: 1290–1310\n${thread('madder')}`));
    expect([judged.verdict, judged.standing]).toEqual(['attested', 'imported']);
    expect(judged.weakest).toEqual(['alum']);
  });
  test('attested: a text is a witness too', () => {
    const judged = aRed([claim('grown')], {
      'texts/t.md': aNote('kind: text\nregion: england\nwhen: 1200–1400\ndyes: madder\nfibre: wool\nsource: t'),
    });
    expect(judged.verdict).toBe('attested');
  });
  test('attested: on-cloth, with the find itself for witness', () => {
    const judged = aRed([], hood(`region: england\nwhen: 1290–1310\n${thread('madder')}`));
    expect([judged.verdict, judged.standing, judged.dyeingPlaceUnknown]).toEqual(['attested', 'on-cloth', true]);
  });
  test.each([
    ['other dyes beside it', `region: york\nwhen: 1290–1310\n${thread('madder, weld')}`],
    ['another fibre', `region: york\nwhen: 1290–1310\n${thread('madder', 'linen')}`],
    ['another place', `region: scotland\nwhen: 1290–1310\n${thread('madder')}`],
    ['a neighbouring place', `region: ireland\nwhen: 1290–1310\n${thread('madder')}`],
    ['another time', `region: york\nwhen: 1400\n${thread('madder')}`],
    ['doubtful time', `region: york\nwhen: c. 1310\n${thread('madder')}`],
  ])('no witness with %s: feasible', (_why, fields) => {
    expect(aRed([claim('grown')], hood(fields)).verdict).toBe('feasible');
  });
  test('a witness on a kind of the fibre, or on the fibre it is a kind of, serves', () => {
    expect(aRed([claim('grown')], hood(`region: york\nwhen: 1300\n${thread('madder', 'fine-wool')}`)).verdict).toBe('attested');
    expect(aRed([claim('grown')], hood(`region: york\nwhen: 1300\n${thread('madder')}`), { fibre: 'fine-wool' }).verdict).toBe('attested');
  });
  test('attested-as-cloth: cloth-only, and the rest judged for the world', () => {
    const elsewhere = { 'mordants/alum.md': mordant('Alum', claim('made', { region: 'scotland' })) };
    const judged = aRed([claim('cloth-only')], elsewhere);
    expect([judged.verdict, judged.standing, judged.dyeingPlaceUnknown]).toEqual(['attested-as-cloth', 'cloth-only', true]);
    expect(judged.materials.find(({ material }) => material.id === 'alum')?.judgedFor).toBe('world');
    expect(judged.materials.find(({ material }) => material.id === 'madder')?.judgedFor).toBe('england');
  });
  test('other dyes keep their own standing when one came on cloth', () => {
    const judged = aRed([claim('cloth-only')], {
      'dyestuffs/weld.md': aDyestuff('Weld', claim('grown', { region: 'scotland' })),
      'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: madder, role: dye}, {what: weld, role: dye}]'),
    });
    expect([judged.verdict, judged.standing]).toEqual(['unsupported', 'unrecorded']);
  });
  test.each([
    ['plausible', 'perhaps', [claim('grown', { more: 'sure: likely' })]],
    ['plausible', 'nearby', [claim('grown', { region: 'ireland' })]],
    ['disputed', 'contested', [claim('grown'), claim('absent')]],
    ['unsupported', 'unrecorded', []],
    ['out-of-period', 'not-yet', [claim('grown', { when: '1600–1700', more: 'start: known' })]],
    ['out-of-period', 'no-longer', [claim('grown', { when: '900–1000', more: 'end: known' })]],
    ['contradicted', 'absent', [claim('absent')]],
  ])('%s from %s', (verdict, standing, rows) => {
    const judged = aRed(rows);
    expect([judged.verdict, judged.standing]).toEqual([verdict, standing]);
  });
  test('the worst material decides, in the order of standings', () => {
    const judged = aRed([claim('grown')], {
      'mordants/alum.md': mordant('Alum', claim('made', { when: '1607–1700', more: 'start: known' })),
    });
    expect([judged.verdict, judged.weakest]).toEqual(['out-of-period', ['alum']]);
  });
  test('a cap holds the verdict at plausible and never raises one', () => {
    const { base: evidence } = aNotebook({ ...base, 'dyestuffs/madder.md': aDyestuff('Madder', claim('grown')) });
    const question: RouteQuestion = { region: 'england', span: { from: 1300, to: 1300 }, fibre: 'wool', dyedHere: false };
    const judge = (at: number) =>
      judgeRoute(
        evidence,
        routeOf(evidence, noteId('red'), 'wool'),
        { ...question, span: { from: at, to: at } },
        { cap: 'on-another-fibre' },
      );
    expect([judge(1300).verdict, judge(1300).cappedBy]).toEqual(['plausible', 'on-another-fibre']);
    expect([judge(500).verdict, judge(500).cappedBy]).toEqual(['unsupported', undefined]);
  });
});

describe('judgeRoute dyed here', () => {
  test('what came only as cloth is contradicted', () => {
    const judged = aRed([claim('cloth-only')], {}, { dyedHere: true });
    expect([judged.verdict, judged.standing]).toEqual(['contradicted', 'absent']);
  });
  test('a find is left out', () => {
    expect(aRed([], hood(`region: england\nwhen: 1300\n${thread('madder')}`), { dyedHere: true }).standing).toBe('unrecorded');
  });
});

describe('judgeRoute undyed', () => {
  test('a fibre colour is a route of the fibre and its own claims, never attested by silence', () => {
    const { base: evidence } = aNotebook({
      ...aWorld,
      ...hood('region: england\nwhen: 1300\nthreads: [{fibre: wool, dyes: [], tested: none-detected}]'),
    });
    const route = undyedRoute(evidence, noteId('wool'), 'white');
    expect(
      route && judgeRoute(evidence, route, { region: 'england', span: { from: 1300, to: 1300 }, fibre: 'wool', dyedHere: false }).verdict,
    ).toBe('feasible');
  });
  test('its own claims can rule it out', () => {
    const { base: evidence } = aNotebook({
      ...aWorld,
      'fibres/wool.md': aNote(
        `kind: fibre\neveryday: true\nundyed: [{name: moorit, availability: [{${claim('made', { when: '1900–1950', more: 'start: known' })}}]}]`,
      ),
    });
    const route = undyedRoute(evidence, noteId('wool'), 'moorit');
    expect(route && judgeRoute(evidence, route, { region: 'england', span: { from: 1300, to: 1300 }, dyedHere: false }).verdict).toBe(
      'out-of-period',
    );
  });
});

describe('judgeRoute classes', () => {
  test('counts independent classes behind the weakest material, one root once', () => {
    const weak = (rows: string[]) => aRed(rows).classes;
    const likely = { more: 'sure: likely' };
    expect(weak([claim('grown', { ...likely, source: 'a' }), claim('grown', { ...likely, source: 'b' })])).toEqual(['documentary']);
    expect(weak([claim('grown', { ...likely, source: 'a' }), claim('grown', { ...likely, by: 'analysis', source: 'b' })])).toEqual([
      'physical',
      'documentary',
    ]);
    expect(
      weak([claim('grown', { ...likely, source: 'a' }), claim('grown', { ...likely, by: 'analysis', source: 'a, p. 9' })]),
    ).toHaveLength(1);
    expect(
      weak([
        claim('grown', { more: 'sure: likely, rests-on: root', source: 'a' }),
        claim('grown', { more: 'sure: likely, rests-on: root', by: 'analysis', source: 'b' }),
      ]),
    ).toHaveLength(1);
  });
});

describe('judgeRoute rules', () => {
  const rule = (fields: string) => ({
    'rules/r.md': aNote(`kind: rule\nregion: england\nwhen: 1250–1350\nact: wear\nconcerns: madder\nsource: law\n${fields}`),
  });
  const touches = (fields: string, wearer?: string) =>
    aRed([claim('grown')], rule(fields), wearer === undefined ? {} : { wearer }).rules.map((one) => one.touches);
  test.each([
    ['forbids: peasant', 'peasant', ['forbidden']],
    ['forbids: noble', 'lady', ['forbidden']],
    ['forbids: lady', 'noble', ['others']],
    ['allows: noble', 'peasant', ['not-among-allowed']],
    ['allows: noble', 'lady', ['others']],
    ['forbids: peasant', undefined, ['others']],
  ])('%s, worn by %s: %s', (fields, wearer, expected) => expect(touches(fields, wearer)).toEqual(expected));
  test('never change the verdict', () => {
    expect(aRed([claim('grown')], rule('forbids: peasant'), { wearer: 'peasant' }).verdict).toBe('feasible');
  });
  test('speak only where place and time meet', () => {
    expect(touches('forbids: peasant\nnote-of-none: x', 'peasant')).toHaveLength(1);
    const far = aRed(
      [claim('grown')],
      { 'rules/r.md': aNote('kind: rule\nregion: scotland\nwhen: 1250–1350\nconcerns: madder\nforbids: peasant') },
      { wearer: 'peasant' },
    );
    expect(far.rules).toEqual([]);
  });
  test('a colour-word that names a dye of the route is concerned', () => {
    const judged = aRed(
      [claim('grown')],
      {
        'words/scarlet.md': aNote('kind: colour-word\nmeans: [{dyes: [madder]}]'),
        'rules/r.md': aNote('kind: rule\nregion: england\nwhen: 1300\nconcerns: scarlet\nforbids: peasant'),
      },
      { wearer: 'peasant' },
    );
    expect(judged.rules[0]?.concerns).toEqual(['scarlet']);
  });
});

describe('judgeRoute, the edges of its rules', () => {
  const judge = (files: Record<string, string>, recipe: string, question: Partial<RouteQuestion> = {}) => {
    const { base: evidence } = aNotebook({ ...base, ...files });
    const span = { from: 1300, to: 1300 };
    return judgeRoute(evidence, routeOf(evidence, noteId(recipe), question.fibre), {
      region: 'england',
      span,
      dyedHere: false,
      ...question,
    } as RouteQuestion);
  };
  const dyed = (...ingredients: string[]) => aNote(`kind: recipe\ningredients: [${ingredients.join(', ')}]`);

  test('a route of nothing is unrecorded, and rests on nothing', () => {
    expect(judge({ 'recipes/none.md': aNote('kind: recipe') }, 'none')).toMatchObject({
      standing: 'unrecorded',
      verdict: 'unsupported',
      weakest: [],
      classes: [],
      witnesses: [],
    });
  });
  test('where no fibre is asked a claim on one fibre speaks too', () => {
    const files = { 'dyestuffs/madder.md': aDyestuff('Madder', claim('grown', { more: 'on: linen' })), 'recipes/red.md': RED };
    expect(judge(files, 'red').standing).toBe('imported');
    expect(judge(files, 'red', { fibre: 'wool' }).standing).toBe('unrecorded');
  });
  test('the dyeing happened here unless a dye came on cloth: what helps it has to be had here', () => {
    const alumElsewhere = { 'mordants/alum.md': mordant('Alum', claim('made', { region: 'scotland' })) };
    const judged = aRed([claim('grown')], alumElsewhere);
    expect([judged.dyeingPlaceUnknown, judged.standing, judged.weakest]).toEqual([false, 'unrecorded', ['alum']]);
  });
  test('a mordant that came only on cloth does not move the dyeing', () => {
    const judged = aRed([claim('grown')], { 'mordants/alum.md': mordant('Alum', claim('cloth-only')) });
    expect([judged.dyeingPlaceUnknown, judged.standing]).toEqual([false, 'cloth-only']);
    expect(judged.materials.every(({ judgedFor }) => judgedFor === 'england')).toBe(true);
  });
  test('what is judged for the world is judged as worn, cloth counts there', () => {
    const judged = aRed([claim('cloth-only')], { 'mordants/alum.md': mordant('Alum', claim('cloth-only', { region: 'scotland' })) });
    expect([judged.verdict, judged.standing]).toEqual(['attested-as-cloth', 'cloth-only']);
  });
  test('a brief judgement is the same without its sub-spans', () => {
    const { base: evidence } = aNotebook({ ...base, 'dyestuffs/madder.md': aDyestuff('Madder', claim('grown', { when: '1310–1350' })) });
    const route = routeOf(evidence, noteId('red'), 'wool');
    const question: RouteQuestion = { region: 'england', span: { from: 1300, to: 1320 }, fibre: 'wool', dyedHere: false };
    const [whole, brief] = [judgeRoute(evidence, route, question), judgeRoute(evidence, route, question, { brief: true })];
    expect(whole.materials.find(({ material }) => material.id === 'madder')?.subSpans).toHaveLength(2);
    expect(brief).toEqual({ ...whole, materials: whole.materials.map((one) => ({ ...one, subSpans: [] })) });
  });
  test.each([false, true])('materials remembered from other routes change no judgement (dyed here: %s)', (dyedHere) => {
    const { base: evidence } = aNotebook({
      ...base,
      'dyestuffs/madder.md': aDyestuff('Madder', claim('cloth-only'), claim('grown', { more: 'on: linen' })),
      'recipes/red.md': dyed('{what: madder, role: dye}', '{what: alum, role: mordant}'),
      'recipes/like.md': dyed('{what: lac, role: dye, stands-for: madder}', '{what: alum, role: assistant}'),
    });
    const known = new KnownMaterials();
    for (const fibre of ['wool', 'linen', undefined])
      for (const recipe of ['red', 'like']) {
        const route = routeOf(evidence, noteId(recipe), fibre);
        const question = {
          region: 'england',
          span: { from: 1300, to: 1300 },
          dyedHere,
          ...(fibre === undefined ? {} : { fibre }),
        } as RouteQuestion;
        expect(judgeRoute(evidence, route, question, { known })).toEqual(judgeRoute(evidence, route, question));
      }
  });
});

describe('judgeRoute, the evidence behind the weakest material', () => {
  const two = (madder: string[], weld: string[]) => {
    const judged = aRed(madder, {
      'dyestuffs/weld.md': aDyestuff('Weld', ...weld),
      'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
      'recipes/red.md': aNote(
        'kind: recipe\nfibre: wool\ningredients: [{what: madder, role: dye}, {what: weld, role: dye}, {what: alum, role: mordant}]',
      ),
    });
    return [judged.standing, judged.classesOf, judged.classes];
  };
  const text = claim('grown', { source: 'a' });
  const analysis = claim('grown', { source: 'b', by: 'analysis' });
  test('of materials that stand alike, the one with the fewest classes; what is everyday is passed over', () => {
    expect(two([text, analysis], [text])).toEqual(['local', 'weld', ['documentary']]);
    expect(two([text], [text, analysis])).toEqual(['local', 'madder', ['documentary']]);
  });
  test('where they have as many, the first by id', () => {
    expect(two([text], [analysis])).toEqual(['local', 'madder', ['documentary']]);
  });
  test('the first by id whichever the recipe names first', () => {
    const judged = aRed([text], {
      'dyestuffs/weld.md': aDyestuff('Weld', analysis),
      'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: weld, role: dye}, {what: madder, role: dye}]'),
    });
    expect([judged.classesOf, judged.classes]).toEqual(['madder', ['documentary']]);
  });
  test('where all is everyday nothing is counted', () => {
    const judged = aRed([], { 'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: water, role: assistant}]') });
    expect([judged.standing, judged.classesOf, judged.classes]).toEqual(['local', undefined, []]);
  });
  test('a colour-word reaches the dye by its name too', () => {
    const judged = aRed([claim('grown')], {
      'dyestuffs/madder.md': aDyestuff('Common madder', claim('grown')),
      'words/scarlet.md': aNote('kind: colour-word\nmeans: [{dyes: [Common madder]}]'),
      'rules/r.md': aNote('kind: rule\nregion: england\nwhen: 1300\nconcerns: scarlet\nforbids: peasant'),
    });
    expect(judged.rules.map(({ concerns }) => concerns)).toEqual([['scarlet']]);
  });
});
