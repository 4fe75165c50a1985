import Color from 'colorjs.io';
import { describe, expect, test } from 'vitest';
import { editDisplay } from '../../../web/notebook/edit-display.ts';
import { shownColours } from '../../../web/notebook/shown-colours.ts';
import { dueListView } from '../../../web/notebook/views/due-list-view.ts';
import { lightPlanView } from '../../../web/notebook/views/light-plan-view.ts';
import { dayWords } from '../../../web/notebook/words/day-words.ts';
import { blueWoolText, luxHoursText, shareText, yearSpanText, yearsText } from '../../../web/notebook/words/light-words.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const BOARD = 'house-2-board';
const NOW = '2026-11-25T10:00:00Z';
const notebook = await demoNotebook();
const plan = (typed = {}) => {
  const found = lightPlanView(notebook, BOARD, typed, NOW);
  if (!found) throw new Error('no plan');
  return found;
};
const colour = (what: string, typed = {}) => {
  const found = plan(typed).colours.find((one) => one.what === what);
  if (!found) throw new Error(what);
  return found;
};

describe('lightPlanView', () => {
  test('is as the note has it: 55 lx, 7 h, 260 days', () => {
    expect(plan()).toMatchObject({
      plan: { lux: 55, hoursPerDay: 7, daysPerYear: 260, uv: 'removed' },
      from: '2026-04-01',
      dose: '100 100 lx·h a year',
      notMeasured: false,
    });
  });

  // 0.3 and 3 Mlx·h over 100 100 lx·h a year; one class to either side 0.09 and 10 Mlx·h.
  test('kermes, blue wool 1–3: a range of years, and its spread', () => {
    expect(colour('kermes-alum-wool')).toMatchObject({
      classText: 'blue wool 1–3',
      sensitivity: 'high',
      years: '3 to 30 years',
      spread: 'about 11 months to 100 years',
    });
  });

  // 15 000 lx·h at 385 a day are 38 open days of 260 in 365: 53 days.
  test('over the limit of its class it says by how much, and the day to take it down', () => {
    expect(colour('madder-alum-wool')).toMatchObject({ overBudget: true, rotateBy: '2026-05-24', samplesNeeded: 7 });
    expect(colour('madder-alum-wool').budget).toContain('6.7 times its year’s light');
  });

  test('the board after this light: each cloth as it hangs, and a range that widens with the years', () => {
    const lightness = (hex: string) => new Color(hex).to('lab-d65').coords[0] ?? 0;
    const kermesAfter = (years: number) => {
      const found = plan({ years }).after.colours.find(({ what }) => what === 'kermes-alum-wool');
      if (!found?.range) throw new Error('no range');
      return {
        now: lightness(found.now.hex),
        best: lightness(found.range.best.hex),
        worst: lightness(found.range.worst.hex),
        says: found.says,
      };
    };
    expect(plan().after.years).toBe(5);
    const [soon, late] = [kermesAfter(5), kermesAfter(25)];
    // 100 100 lx·h a year for five years are half a megalux hour.
    expect(soon.says[0]).toContain('After 0.5 Mlx·h without ultraviolet');
    // A dye that fades leaves its wool lighter; the least fast end of its classes more so, and more with the years.
    expect(soon.best).toBeGreaterThanOrEqual(soon.now);
    expect(soon.worst).toBeGreaterThan(soon.best);
    expect(late.worst).toBeGreaterThan(soon.worst);
    // What has no grade that fits gets no colour, and the reason.
    const weld = plan().after.colours.find(({ what }) => what === 'weld-alum-wool');
    expect(weld?.range).toBeUndefined();
    expect(weld?.says.join(' ')).toContain('No light-fastness that fits');
  });

  test('what no grade fits stays unknown, the grades looked at are named', () => {
    const weld = colour('weld-alum-wool');
    expect(weld).toMatchObject({ classText: 'unknown', years: '' });
    expect(weld.rotateBy).toBeUndefined();
    expect(weld.grades.join(' ')).toContain('another scale, which cannot be converted');
  });

  test('a day beyond fifty years is not given', () => {
    expect(colour('woad-wool')).toMatchObject({ rotateBecause: 'not within 50 years at this light' });
    expect(colour('woad-wool').rotateBy).toBeUndefined();
  });

  test('trying another light does not touch the note', () => {
    expect(colour('madder-alum-wool', { lux: 20, daysPerYear: 100 })).toMatchObject({ overBudget: false });
    expect(plan().plan.lux).toBe(55);
  });

  test('a north window: 7.7 Mlx·h a year, rich in ultraviolet, and said to be estimated', () => {
    const found = plan({ window: 'north', daysPerYear: 365 });
    expect(found.dose).toBe('7.7 Mlx·h a year');
    expect(found.plan.uv).toBe('rich');
    expect(found.caveats).toContain('The light was estimated, not measured.');
  });

  test('swap sets have their turns, and reminders in the calendar', () => {
    expect(colour('kermes-alum-wool').turns.slice(0, 2)).toEqual([
      { code: 'WQ24-001-1', from: '2026-04-01', until: '2026-05-16' },
      { code: 'WQ24-002-1', from: '2026-05-16', until: '2026-06-30' },
    ]);
    const unfolded = plan().calendar.replaceAll('\r\n ', '');
    expect(unfolded).toContain('SUMMARY:Swap Kermes scarlet on alumed wool: WQ24-001-1 down\\, WQ24-002-1 up');
    expect(unfolded).toContain('DTSTART;VALUE=DATE:20260516');
    expect(unfolded.split('BEGIN:VEVENT').length - 1).toBe(unfolded.split('UID:').length - 1);
    expect(new Set(unfolded.match(/UID:.*/g)).size).toBe(unfolded.match(/UID:.*/g)?.length);
  });

  test('what was measured again stands beside it', () => {
    const master = shownColours(notebook, BOARD)?.colours.find(({ what }) => what === 'brazil-alum-silk')?.sample?.colour.lab10;
    // The reading in the note against the master sample, by another library.
    const apart = new Color('lab-d65', [master?.[0] ?? 0, master?.[1] ?? 0, master?.[2] ?? 0]).deltaE(
      new Color('lab-d65', [54.8, 43.7, 5.7]),
      '2000',
    );
    expect(colour('brazil-alum-silk').measured).toBe(
      `Measured on ${dayWords('2025-07-01')} after 2.2 Mlx·h: grey-scale change 1-2 (5 is none), ΔE00 ${apart.toFixed(1)}.`,
    );
  });

  test('caveats stand with every plan', () => {
    expect(plan().caveats.length).toBeGreaterThanOrEqual(6);
    expect(plan().limits).toContain('superseded by EN 16163');
  });
});

describe('a cloth measured again on the board', () => {
  const CHECKS = 'exposures/checks-wq23-003-1.md';
  /** The madder's plan after a reading on 2026-04-20, that much lighter than its master sample and else the same. */
  const afterReading = async (lighter: number) => {
    const own = await demoNotebook();
    const master = shownColours(own, BOARD)?.colours.find(({ what }) => what === 'madder-alum-wool')?.sample?.colour.lab10;
    if (!master) throw new Error('no master sample');
    const lab = [master[0] + lighter, master[1], master[2]].join(', ');
    const edited = editDisplay(own, BOARD, { is: 'measured', code: 'WQ23-003-1', day: '2026-04-20', lab });
    if (edited?.is !== 'note') throw new Error(edited?.says);
    own.put({ path: edited.note.path, bytes: new TextEncoder().encode(edited.note.text) });
    const lit = lightPlanView(own, BOARD, {}, NOW)?.colours.find(({ what }) => what === 'madder-alum-wool');
    return { own, lit, note: edited.note };
  };

  // By hand: 19 days × 260/365 × 385 lx·h = 5211 lx·h for a ΔE_F of 0.85, so as much again to 1.7: 13 open days, 18 of the year.
  test('half a first fade in 19 days brings the day from 24 to 8 May, and says by which rule', async () => {
    const { lit, own } = await afterReading(0.85);
    expect(lit).toMatchObject({ rotateBy: '2026-05-08' });
    expect(lit?.rotateBecause).toContain('sooner than its class says');
    expect(lit?.corrected).toContain('Our choice');
    // A change in lightness alone: grade 4-5 from 0.40 to under 1.25 (ISO 105-A05).
    expect(lit?.measured).toMatch(/grey-scale change 4-5 \(5 is none\), ΔE00 0\.\d\.$/);
    const due = dueListView(own, '2026-04-21T00:00:00Z').find(({ kind, says }) => kind === 'rotate' && says.includes('Madder red'));
    expect(due).toMatchObject({ day: '2026-05-08', overdue: false, note: BOARD });
  });

  test('grade 4 is the first fade: it comes down now', async () => {
    const { lit } = await afterReading(1.8);
    expect(lit).toMatchObject({ rotateBy: '2026-04-20', rotateBecause: `a first fade was seen on ${dayWords('2026-04-20')}` });
  });

  test('no change seen leaves the plan as it was', async () => {
    expect((await afterReading(0.3)).lit).toMatchObject({ rotateBy: '2026-05-24', corrected: '' });
  });

  test('the first reading makes the note of its checks, the second is one line more in it', async () => {
    const { own, note } = await afterReading(0.3);
    expect(note).toMatchObject({ path: CHECKS });
    expect(note.basedOn).toBeUndefined();
    const again = editDisplay(own, BOARD, { is: 'measured', code: 'WQ23-003-1', day: '2026-05-01', lab: ' 41,  42 ; 23' });
    if (again?.is !== 'note') throw new Error(again?.says);
    expect(again.note).toMatchObject({ path: CHECKS, basedOn: note.text });
    const come = again.note.text.split('\n').filter((line) => !note.text.split('\n').includes(line));
    expect(come.join(' ')).toContain('2026-05-01');
    for (const line of note.text.split('\n')) expect(again.note.text).toContain(line);
  });

  test.each([
    ['soon', '41, 42, 23', 'Write for example: 2027-04-01'],
    ['2026-05-01', 'red', 'Write three numbers'],
    ['2026-05-01', '141, 42, 23', 'Write three numbers'],
  ])('%s and %s: says what to write', async (day, lab, says) => {
    const edited = editDisplay(await demoNotebook(), BOARD, { is: 'measured', code: 'WQ23-003-1', day, lab });
    expect(edited).toMatchObject({ is: 'refused' });
    expect(edited?.is === 'refused' ? edited.says : '').toContain(says);
  });
});

describe('dueListView', () => {
  test('names overdue things first, and looks three months ahead', () => {
    const due = dueListView(notebook, NOW);
    expect(due[0]).toMatchObject({ kind: 'rotate', day: '2026-05-24', overdue: true });
    expect(due.filter(({ kind }) => kind === 'swap').map(({ day }) => day)).toEqual(['2026-12-22', '2026-12-27']);
    expect(due.every(({ day }) => day === undefined || day <= '2027-02-23')).toBe(true);
  });

  test('a year after it went up every cloth is to be measured', () => {
    const due = dueListView(notebook, '2027-04-02T00:00:00Z').filter(({ kind }) => kind === 'measure');
    expect(due.length).toBe(8);
    expect(due[0]).toMatchObject({ day: '2027-04-01', overdue: true });
  });

  test('a review-by date that is past, or near, is due; one without a month at the end of its year', () => {
    const book = aNotebook({
      ...aWorld,
      'a.md': aNote('kind: text\ntitle: A\nregion: york\nwhen: 1300\nreview-by: 2026-11-01'),
      'b.md': aNote('kind: text\ntitle: B\nregion: york\nwhen: 1300\nreview-by: 2026'),
      'c.md': aNote('kind: text\ntitle: C\nregion: york\nwhen: 1300\nreview-by: 2028'),
    });
    expect(dueListView(book, NOW)).toEqual([
      { kind: 'review', day: '2026-11-01', overdue: true, says: 'A: read its sources again.', note: 'a' },
      { kind: 'review', day: '2026-12-31', overdue: false, says: 'B: read its sources again.', note: 'b' },
    ]);
  });
});

describe('words of light', () => {
  test.each([
    [0.02, 'about 7 days'],
    [0.611, 'about 7 months'],
    [1, '1 year'],
    [1.44, '1.4 years'],
    [6.67, '7 years'],
    [20, '20 years'],
    [66.7, '67 years'],
    [333, '330 years'],
    [33_300, '33 000 years'],
  ])('%f years are %s', (years, text) => {
    expect(yearsText(years)).toBe(text);
  });

  test('spans, doses and shares', () => {
    expect(yearSpanText({ from: 20, to: 66.7 })).toBe('20 to 67 years');
    expect(yearSpanText({ from: 20, to: 20.1 })).toBe('20 years');
    expect(yearSpanText({ from: 0.5, to: 20 })).toBe('about 6 months to 20 years');
    expect(luxHoursText(15_000)).toBe('15 000 lx·h');
    expect(luxHoursText(1_500_000)).toBe('1.5 Mlx·h');
    expect(shareText(9.6)).toBe('9.6 times');
    expect(shareText(0.8)).toBe('80 % of');
    expect(blueWoolText({ from: 3, to: 4 })).toBe('blue wool 3–4');
  });
});
