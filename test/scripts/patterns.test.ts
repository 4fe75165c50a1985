import { describe, expect, test } from 'vitest';
import { findPatterns } from '../../scripts/patterns/find-patterns.mjs';
import { growthOf } from '../../scripts/patterns/growth-of.mjs';
import { oneAlternativeEach } from '../../scripts/patterns/one-alternative-each.mjs';
import { withoutLookArounds } from '../../scripts/patterns/without-look-arounds.mjs';
import { chance } from '../helpers/random.ts';

const growth = ({ source, flags }: RegExp) => growthOf(source, flags).growth;

describe('growthOf', () => {
  // OWASP, "Regular expression Denial of Service – ReDoS", the examples of patterns that go back without end.
  test.each([/^(a+)+$/, /^([a-zA-Z]+)*$/, /^(a|aa)+$/, /^(a|a?)+$/])('%s grows', (pattern) => expect(growth(pattern)).toBe('grows'));

  // Stack Exchange, outage postmortem of 20 July 2016: a line of 20,000 blanks was read again from each of them.
  test('a trim from the right grows, and does not once it starts at the first blank only', () => {
    expect(growth(/^[\s\u200c]+|[\s\u200c]+$/)).toBe('grows');
    expect(growth(/^[\s\u200c]+|(?<![\s\u200c])[\s\u200c]+$/)).toBe('safe');
  });

  // Cloudflare, "Details of the Cloudflare outage on July 2, 2019": the part of the rule that took the time.
  test('two wide gaps before a sign grow', () => expect(growth(/.*(?:.*=.*)/)).toBe('grows'));

  test('a look ahead is read again from every place it is asked at', () => {
    expect(growth(/x(?=\s*y)/)).toBe('safe');
    expect(growth(/\s(?=\s*y)/)).not.toBe('safe');
    expect(growth(/(?:\s(?=\s*y)|a)b/)).not.toBe('safe');
    expect(growth(/(?=(?:a+)+$)a/)).not.toBe('safe');
    expect(growth(/(?!(?:a|a)*b)a/)).not.toBe('safe');
    expect(growth(/(?=(?:a|a)*c)\B\w/)).not.toBe('safe');
    expect(growth(/a(?=(?:b|b)*$)/)).not.toBe('safe');
    expect(growth(/(?:b|b)*\s\b(?!c)/)).not.toBe('safe');
  });

  // A match ends the search, not the searches after it: `split` and `g` go on behind the sign that was found.
  test('a look ahead over all that follows is not safe because it is found', () => {
    expect(growth(/a(?=[^]*)/g)).not.toBe('safe');
    expect(growth(/(?=.*;)/)).not.toBe('safe');
  });

  test('growth behind or before a look-around stays growth', () => {
    expect(growth(/(?<!x)(?:a+)+b/)).not.toBe('safe');
    expect(growth(/^(?:a|a(?!x))*$/)).not.toBe('safe');
    expect(growth(/(?<![a-z])(?:\d+)*(?![a-z])$/)).not.toBe('safe');
    expect(growth(/(?=(a+))\1b/)).not.toBe('safe');
  });

  // The first is found in few steps once what stands before is taken in, and asked at every place in all its steps.
  test('a look behind without end, or in very many ways, is not called safe', () => {
    expect(growth(/(?<=^ab.*)c/)).not.toBe('safe');
    expect(growth(/(?<=a.*)b/)).not.toBe('safe');
    expect(growth(/(?<=(?:a|a){30})b/)).not.toBe('safe');
  });

  test('one that looks a few signs about and reads on once is safe', () => {
    expect(growth(/(?<!\d)\d+(?!\d)/)).toBe('safe');
    expect(growth(/\b(?:in|on) a tin(?=\s*(?:[.,]|$)|\s+shut\b)/g)).toBe('safe');
    expect(growth(/(?<=^ {0,3}|[.;] )lead (?=the )/g)).toBe('safe');
  });

  test('high counts are no hiding place', () => {
    expect(growth(/^(?:a?){60}a{60}$/)).not.toBe('safe');
    expect(growth(/^(?:\d{1,20}){1,20}$/)).not.toBe('safe');
    expect(growth(/^(?:x{1,30}x{1,30} \b){1,20}(?=y)$/)).not.toBe('safe');
    expect(growth(/^\[[^\]\n]{1,200}\]:/m)).toBe('safe');
  });
});

describe('oneAlternativeEach', () => {
  test('takes the outermost choice apart, else the longest, never one that is repeated', () => {
    expect(oneAlternativeEach(String.raw`\b(?:a|b|c(?:d|e))\b`, '')).toEqual(
      ['a', 'b', 'c(?:d|e)'].map((one) => String.raw`\b(?:${one})\b`),
    );
    expect(oneAlternativeEach('(?:a|b)+c', '')).toEqual(['(?:a|b)+c']);
    expect(oneAlternativeEach('a(b|c|d)?|e', 'u')).toEqual(['a(b|c|d)?', 'e']);
  });
});

describe('withoutLookArounds', () => {
  test('one that looks nowhere stays as it is', () => expect(withoutLookArounds('a+b', '')).toEqual({ asLong: 'a+b', same: 'a+b' }));

  test('every pattern here that could be rewritten is found in the same texts as before', async () => {
    const { pick, below } = chance(28);
    let rewritten = 0;
    for (const pattern of (await findPatterns()).patterns.keys()) {
      const [source, flags] = [pattern.slice(1, pattern.lastIndexOf('/')), pattern.slice(pattern.lastIndexOf('/') + 1).replace('g', '')];
      const { same } = withoutLookArounds(source, flags);
      if (same === undefined || same === source) continue;
      rewritten += 1;
      const [before, after] = [new RegExp(source, flags), new RegExp(same, flags)];
      const parts = [...source.matchAll(/\w+|[^\\]/g)].map(([part]) => part).concat(' ', '1', 'a', '\n');
      for (let count = 0; count < 200; count++) {
        const text = Array.from({ length: below(9) }, () => pick(parts)).join('');
        expect(after.test(text), `${pattern} in ${JSON.stringify(text)}`).toBe(before.test(text));
      }
    }
    expect(rewritten).toBeGreaterThan(10);
  });
});
