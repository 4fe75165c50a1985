import { describe, expect, test } from 'vitest';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { readPeriods } from '../../../web/notebook/import/read-periods.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

/** The shape of a PeriodO data set: authorities with periods, ISO years, ranges at the ends. The periods are made up. */
const DATA = {
  '@context': { periods: 'skos:hasTopConcept' },
  authorities: {
    p0aaa: {
      id: 'p0aaa',
      type: 'Authority',
      source: { title: 'An imagined handbook', yearPublished: 1999, creators: [{ name: 'A. Nobody' }] },
      periods: {
        p0aaa01: {
          id: 'p0aaa01',
          type: 'Period',
          label: 'Early Testing',
          localizedLabels: { en: ['Early Testing'], de: ['Frühe Prüfzeit'] },
          spatialCoverage: [{ id: 'http://www.wikidata.org/entity/Q21', label: 'England' }],
          start: { label: '500 BC', in: { year: '-0499' } },
          stop: { label: '300', in: { year: '0300' } },
          note: 'With *stars* and [brackets](x)',
        },
        p0aaa02: {
          id: 'p0aaa02',
          label: 'Ragged',
          spatialCoverageDescription: 'Atlantis',
          start: { label: 'c. 1200', in: { earliestYear: '1190', latestYear: '1210' } },
          stop: { label: 'after 1300', in: { earliestYear: '1301', latestYear: '1350' } },
        },
        p0aaa03: { id: 'p0aaa03', label: 'Dateless', start: { label: 'long ago' }, stop: { label: 'later' } },
        p0aaa04: { id: 'p0aaa04', start: { in: { year: '0001' } }, stop: { in: { year: '0002' } } },
        p0aaa05: { id: 'p0aaa05', label: 'Deep', start: { in: { year: '-11999' } }, stop: { in: { year: '-3999' } } },
      },
    },
  },
};
const { base } = aNotebook({ ...aWorld, 'periods/early-testing.md': aNote('kind: period\ntitle: Mine\nwhen: 1000–1100') });
const read = (data: unknown) => readPeriods(base, typeof data === 'string' ? data : JSON.stringify(data));
const codes = (data: unknown) => read(data).messages.map(({ row, code }) => `${row} ${code}`);

describe('readPeriods', () => {
  const gathered = read(DATA);
  const note = (title: string) => {
    const draft = gathered.notes.find(({ text }) => text.includes(`title: ${title}`));
    if (!draft) throw new Error(title);
    return { draft, ...parseNote(draft.path, draft.text) };
  };

  test('a period becomes a note with its names, place and years; historical year 500 BC is -0499', () => {
    const { value, diagnostics } = note('Early Testing');
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(value.names).toEqual([{ name: 'Frühe Prüfzeit', lang: 'de' }]);
    expect(value.record).toMatchObject({
      kind: 'period',
      region: { text: 'england' },
      when: { span: { earliestStart: -499, latestEnd: 300 } },
    });
    expect(value.source).toContain('A. Nobody, 1999, An imagined handbook');
    expect(value.source).toContain('With \\*stars\\* and \\[brackets\\](x)');
  });

  test('nothing is overwritten: an id that is taken gets a number', () => {
    expect(note('Early Testing').draft).toMatchObject({ id: 'early-testing-2', path: 'periods/early-testing-2.md' });
    expect(gathered.messages).toContainEqual({ row: 1, code: 'id-taken', about: 'early-testing', instead: ['early-testing-2'] });
  });

  test('ragged ends are widened and told, unknown places told with no region written', () => {
    const { value } = note('Ragged');
    expect(value.record).toMatchObject({ when: { span: { earliestStart: 1190, latestEnd: 1350 } } });
    expect(value.record.kind === 'period' && value.record.region).toBeUndefined();
    expect(gathered.messages.filter(({ row }) => row === 2).map(({ code }) => code)).toEqual(['date-widened', 'place-unknown']);
  });

  test('a period without years becomes a note without a date; one without a name becomes none', () => {
    expect(note('Dateless').value.record).toMatchObject({ kind: 'period' });
    expect(gathered.messages).toContainEqual({ row: 3, code: 'no-date', about: 'Dateless', instead: ['long ago', 'later'] });
    expect(gathered.messages.some(({ row, code }) => row === 4 && code === 'no-name')).toBe(true);
    expect(gathered.notes).toHaveLength(4);
    expect(gathered.rows).toHaveLength(5);
  });

  test('years of more than four digits are kept', () => {
    expect(note('Deep').value.record).toMatchObject({ when: { span: { earliestStart: -11999, latestEnd: -3999 } } });
  });

  test('taking the same file in twice changes nothing the second time', () => {
    const first = aNotebook({
      ...aWorld,
      ...Object.fromEntries(read(DATA).notes.map(({ path, text }) => [path.replace('-2.md', '.md'), text])),
    });
    const again = readPeriods(first.base, JSON.stringify(DATA));
    expect(again.notes).toEqual([]);
    expect(again.messages.filter(({ code }) => code === 'same-already')).toHaveLength(4);
  });

  test('one authority, one period and a graph are read too', () => {
    expect(read(DATA.authorities.p0aaa).notes).toHaveLength(4);
    expect(read(DATA.authorities.p0aaa.periods.p0aaa01).notes).toHaveLength(1);
    expect(read({ '@graph': [DATA.authorities.p0aaa.periods.p0aaa01] }).notes).toHaveLength(1);
  });

  test.each([
    ['{ "authorities": ', ['0 not-json']],
    ['{}', ['0 not-this-kind']],
    ['[]', ['0 not-this-kind']],
    ['7', ['0 nothing-inside']],
    ['', ['0 not-json']],
    ['{"__proto__": {"start": {}}}', ['0 not-this-kind']],
    ['{"periods": {"__proto__": {"start": {}}}}', ['1 no-name']],
  ])('%s gives a message and no note', (text, expected) => {
    expect(codes(text)).toEqual(expected);
    expect(read(text).notes).toEqual([]);
  });
});
