import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Bound } from '../../../web/domain/date/date-span.ts';
import { parseWritten } from '../../../web/domain/date/parse-written.ts';

type Years = readonly [earliestStart: Bound, latestStart: Bound, earliestEnd: Bound, latestEnd: Bound];

const boundsOf = (text: string): Years | undefined => {
  const { span } = parseWritten(text);
  return span && [span.earliestStart, span.latestStart, span.earliestEnd, span.latestEnd];
};
const firm = (from: Bound, to: Bound): Years => [from, from, to, to];

describe('parseWritten', () => {
  test.each([
    ['500', 500, 500],
    ['900', 900, 900],
    ['0700', 700, 700],
    ['50', 50, 50],
    ['-37', -37, -37],
    ['−140', -140, -140],
    ['-18000', -18000, -18000],
    ['1 BC', 0, 0],
    ['1200 BC', -1199, -1199],
    ['1200 b. c. e.', -1199, -1199],
    ['BC 1200', -1199, -1199],
    ['1200BC', -1199, -1199],
    ['A.D. 14', 14, 14],
    ['14 C.E.', 14, 14],
    ['10,000 BC', -9999, -9999],
    ['10 000 BC', -9999, -9999],
  ])('reads the year %s', (text, from, to) => {
    expect(boundsOf(text)).toEqual(firm(from, to));
  });

  test.each([
    ['13th century', 1201, 1300],
    ['13th c.', 1201, 1300],
    ['13th c', 1201, 1300],
    ['13th cent.', 1201, 1300],
    ['13 th century', 1201, 1300],
    ['13ᵗʰ century', 1201, 1300],
    ['the 13th century', 1201, 1300],
    ['thirteenth century', 1201, 1300],
    ['THIRTEENTH CENTURY AD', 1201, 1300],
    ['first century', 1, 100],
    ['twentieth century', 1901, 2000],
    ['twenty-first century', 2001, 2100],
    ['1st cent. BC', -99, 0],
    ['AD 1st century', 1, 100],
    ['4th millennium B.C.E.', -3999, -3000],
    ['2nd millennium', 1001, 2000],
    ['12th–13th century', 1101, 1300],
    ['12th-13th century', 1101, 1300],
    ['12th to 13th c.', 1101, 1300],
    ['12th century–13th', 1101, 1300],
    ['8th/9th century', 701, 900],
    ['8th/9th–10th century', 701, 1000],
    ['9th and 10th centuries', 801, 1000],
    ['2nd–1st century BC', -199, 0],
    ['1st century BC–1st century AD', -99, 100],
    ['1st century BC – 2nd century', -99, 200],
    ['13th century – 1350', 1201, 1350],
  ])('reads a century as 01 to 00, throughout: %s', (text, from, to) => {
    expect(boundsOf(text)).toEqual(firm(from, to));
  });

  test.each([
    ['early 9th century', 801, 833],
    ['mid 9th century', 834, 867],
    ['mid-9th century', 834, 867],
    ['middle of the 9th century', 834, 867],
    ['late 9th century', 868, 900],
    ['first third of the 13th century', 1201, 1233],
    ['second third of the 13th century', 1234, 1267],
    ['middle third of the 13th century', 1234, 1267],
    ['last third of the 13th century', 1268, 1300],
    ['mid third century BC', -266, -233],
    ['third quarter of the third century', 251, 275],
    ['1st quarter of the 14th c.', 1301, 1325],
    ['2nd quarter of the 14th c.', 1326, 1350],
    ['third quarter of the 14th century', 1351, 1375],
    ['last quarter of the 14th century', 1376, 1400],
    ['4th quarter 14th century', 1376, 1400],
    ['first half of the 14th century', 1301, 1350],
    ['latter half of the 14th century', 1351, 1400],
    ['13th century, second half', 1251, 1300],
    ['13th century (2nd half)', 1251, 1300],
    ['early 1st c. BC', -99, -67],
    ['mid 2nd century BC', -166, -133],
    ['late 1st c. BC', -32, 0],
    ['first half of the 2nd century BC', -199, -150],
    ['late 9th–early 10th century', 868, 933],
    ['late ninth to early tenth century', 868, 933],
    ['mid–late 9th century', 834, 900],
    ['mid-to-late 9th century', 834, 900],
    ['1st–2nd quarter of the 14th c.', 1301, 1350],
    ['second half of the 12th to first quarter of the 13th century', 1151, 1225],
    ['late 2nd–early 1st century BC', -132, -67],
    ['early 2nd millennium BC', -1999, -1667],
    ['1180s', 1180, 1189],
    ['the 1180s', 1180, 1189],
    ['1180’s', 1180, 1189],
    ['early 1180s', 1180, 1182],
    ['late 1180s', 1187, 1189],
    ['first half of the 1180s', 1180, 1184],
    ['480s BC', -488, -479],
    ['1180s–1190s', 1180, 1199],
    ['1180s–90s', 1180, 1199],
  ])('reads a part of it: %s', (text, from, to) => {
    expect(boundsOf(text)).toEqual(firm(from, to));
  });

  test.each([
    ['870–950', 870, 950],
    ['870-950', 870, 950],
    ['870 — 950', 870, 950],
    ['870--950', 870, 950],
    ['1200--1300', 1200, 1300],
    ['870 to 950', 870, 950],
    ['870 until 950', 870, 950],
    ['from 870 to 950', 870, 950],
    ['between 870 and 950', 870, 950],
    ['1405–10', 1405, 1410],
    ['AD 1405–10', 1405, 1410],
    ['1405-13', 1405, 1413],
    ['1606/7', 1606, 1607],
    ['1606/07', 1606, 1607],
    ['1606/7–1610', 1606, 1610],
    ['31/30 BCE', -30, -29],
    ['7000/6500 BCE', -6999, -6499],
    ['1190/85 BC', -1189, -1184],
    ['100–68 BC', -99, -67],
    ['870 BC–50 BC', -869, -49],
    ['BC 100–50', -99, -49],
    ['27 BC–AD 14', -26, 14],
    ['27 BC–14 AD', -26, 14],
    ['27 BC–476', -26, 476],
    ['AD 50–100', 50, 100],
    ['100–50 AD', 100, 150],
    ['-200–-100', -200, -100],
    ['-1200--1100', -1200, -1100],
    ['43–410', 43, 410],
    ['12 October 1405', 1405, 1405],
    ['October 12th, 1405', 1405, 1405],
    ['Oct. 1405', 1405, 1405],
    ['1405 October', 1405, 1405],
    ['spring 1405', 1405, 1405],
    ['12–15 October 1405', 1405, 1405],
    ['March 1405–May 1406', 1405, 1406],
    ['March–May 1405', 1405, 1405],
    ['29 February 1500', 1500, 1500],
  ])('reads years joined, or a day: %s', (text, from, to) => {
    expect(boundsOf(text)).toEqual(firm(from, to));
  });

  test.each([
    ['before 1000', null, 999],
    ['pre-1066', null, 1065],
    ['until 1000', null, 1000],
    ['up to 1000', null, 1000],
    ['after 1000', 1001, null],
    ['post-1066', 1067, null],
    ['from 1000', 1000, null],
    ['since 1000', 1000, null],
    ['1000 onwards', 1000, null],
    ['before 1000 BC', null, -1000],
    ['after 1000 BC', -998, null],
    ['before the 13th century', null, 1200],
    ['after the 13th century', 1301, null],
    ['until the 13th century', null, 1300],
    ['from the late 13th century', 1268, null],
    ['before -500', null, -501],
  ])('leaves a side open: %s', (text, from, to) => {
    expect(boundsOf(text)).toEqual(firm(from, to));
  });

  test.each<readonly [string, Years]>([
    ['c. 1350', [1325, 1350, 1350, 1375]],
    ['c.1350', [1325, 1350, 1350, 1375]],
    ['c1350', [1325, 1350, 1350, 1375]],
    ['ca. 1350', [1325, 1350, 1350, 1375]],
    ['Circa 1350', [1325, 1350, 1350, 1375]],
    ['about 1350', [1325, 1350, 1350, 1375]],
    ['around AD 1350', [1325, 1350, 1350, 1375]],
    ['AD c. 1350', [1325, 1350, 1350, 1375]],
    ['1350 (?)', [1325, 1350, 1350, 1375]],
    ['950?', [925, 950, 950, 975]],
    ['~950', [925, 950, 950, 975]],
    ['c. 500', [450, 500, 500, 550]],
    ['c. 501', [476, 501, 501, 526]],
    ['c. 1500', [1475, 1500, 1500, 1525]],
    ['c. 1501', [1489, 1501, 1501, 1513]],
    ['c. 1700', [1688, 1700, 1700, 1712]],
    ['c. 1701', [1696, 1701, 1701, 1706]],
    ['c. 1200 BC', [-1249, -1199, -1199, -1149]],
    ['c. 1475–c. 1525', [1450, 1475, 1525, 1537]],
    ['c. 1475–1525', [1450, 1475, 1525, 1537]],
    ['1475–c. 1525', [1475, 1475, 1525, 1537]],
    ['1475?–1525', [1450, 1475, 1525, 1525]],
    ['1475–1525?', [1475, 1475, 1525, 1537]],
    ['from c. 1475 to 1525', [1450, 1475, 1525, 1525]],
    ['between 1475 and c. 1525', [1475, 1475, 1525, 1537]],
    ['c. 13th century', [1176, 1201, 1300, 1325]],
    ['13th century?', [1176, 1201, 1300, 1325]],
    ['c. late 9th–early 10th century', [843, 868, 933, 958]],
    ['c. 7000/6500 BCE', [-7049, -6999, -6499, -6449]],
    ['until c. 1000', [null, null, 1000, 1025]],
    ['before c. 1501', [null, null, 1500, 1512]],
    ['from c. 1000', [975, 1000, null, null]],
    ['after c. 1000', [976, 1001, null, null]],
  ])('widens only the outer bounds: %s', (text, bounds) => {
    expect(boundsOf(text)).toEqual(bounds);
  });

  test.each([
    ['1200s', 'date-ambiguous', ['1200–1299', '1200–1209']],
    ['early 1200s', 'date-ambiguous', ['1200–1299', '1200–1209']],
    ['1200s BC', 'date-ambiguous', ['1299–1200 BCE', '1209–1200 BCE']],
    ['80s', 'date-ambiguous', ['80–89', '1980s']],
    ['late 1200', 'date-ambiguous', ['1200', 'late 13th century']],
    ['870–50 BC', 'date-ambiguous', ['870–850 BCE', '870 BCE–50 BCE']],
    ['27 BC–14', 'date-ambiguous', ['27–14 BCE', '27 BCE–14 CE']],
    ['-27 to 14', 'date-ambiguous', ['28–14 BCE', '28 BCE–14 CE']],
    ['-100 BC', 'date-ambiguous', ['100 BCE', '101 BCE']],
    ['–1200', 'date-ambiguous', ['until 1200', '1201 BCE']],
    ['1200–', 'date-ambiguous', ['from 1200', '1200']],
    ['C14', 'date-ambiguous', ['14th century', 'c. AD 14']],
    ['10/1405', 'date-ambiguous', ['1405-10', 'AD 10–1405']],
    ['before 11/0000', 'date-impossible', undefined],
    ['1525–1475', 'date-reversed', ['1475–1525', '1525–1475 BCE']],
    ['1475–25', 'date-reversed', ['1425–1475', '1475–1525']],
    ['100–200 BC', 'date-reversed', ['200–100 BCE', '100 BCE–200 CE']],
    ['1st–2nd century BC', 'date-reversed', undefined],
    ['AD 50–100 BC', 'date-reversed', undefined],
    ['late 13th–early 13th century', 'date-reversed', undefined],
    ['0', 'date-impossible', undefined],
    ['0 BC', 'date-impossible', undefined],
    ['0th century', 'date-impossible', undefined],
    ['30 February 1405', 'date-impossible', undefined],
    ['29 February 1405', 'date-impossible', undefined],
    ['', 'date-unreadable', undefined],
    ['Viking Age', 'date-unreadable', undefined],
    ['19850412', 'date-unreadable', undefined],
    ['1066 and after', 'date-unreadable', ['c. 1066', '11th century']],
    ['870 950', 'date-unreadable', ['c. 870', '9th century']],
    ['1185s', 'date-unreadable', undefined],
    ['13 c.', 'date-unreadable', ['13th century', 'c. AD 13']],
    ['end of the 13th century', 'date-unreadable', ['late 13th century', 'last quarter of the 13th century']],
    ['by 1350', 'date-unreadable', ['until 1350', 'from 1350']],
    ['October 12', 'date-unreadable', undefined],
    ['12/10/1405', 'date-unreadable', undefined],
    ['1405–10–20', 'date-unreadable', undefined],
    ['1606/7/8', 'date-unreadable', undefined],
    ['9th and 12th centuries', 'date-unreadable', undefined],
    ['9th or 10th century', 'date-unreadable', undefined],
    ['before 1200–1300', 'date-unreadable', undefined],
    ['between 1200', 'date-unreadable', undefined],
    ['1350 1360', 'date-unreadable', undefined],
    ['5th quarter of the 13th century', 'date-unreadable', undefined],
    ['14th century c. 1350', 'date-unreadable', undefined],
  ] as const)('does not guess: %s', (text, code, suggestions) => {
    const { problem } = parseWritten(text);
    expect(problem?.code).toBe(code);
    if (suggestions) expect(problem?.suggestions).toEqual(suggestions);
  });
});

/** Rows the gazetteer's editors got wrong, with what is wrong. */
const slips: Readonly<Record<string, string>> = {
  'Ca. 1190/85 B.C.E.': 'the gazetteer ends it in 85 BCE; 1190/85 is 1190 to 1185 BCE',
};

describe('dates of the PeriodO gazetteer', () => {
  const lines = readFileSync(new URL('../../reference/periodo-written-dates.csv', import.meta.url), 'utf8').split('\n');
  const rows = lines.filter((line) => line !== '' && !line.startsWith('#')).slice(1);

  test('are the rows we took', () => {
    expect(rows).toHaveLength(359);
    expect(Object.keys(slips).length / rows.length).toBeLessThan(0.01);
  });

  test.each(rows.filter((row) => !(row.slice(0, row.indexOf(',')) in slips)))('%s', (row) => {
    const [text = '', from, to] = row.split(',');
    const bounds = boundsOf(text);
    expect(bounds && [bounds[1], bounds[2]]).toEqual([Number(from), Number(to)]);
  });
});
