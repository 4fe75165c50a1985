import { describe, expect, test } from 'vitest';
import golden from '../reference/golden-questions.json' with { type: 'json' };
import { demoNotebook } from './demo-notebook.ts';
import { judgeDemo, type ReferenceQuestion } from './judge-demo.ts';
import { notebookFindings } from '../../web/notebook/check-notebook.ts';

describe('golden questions, worked by hand from the literature', () => {
  test.each(golden.questions.map((one) => [one.id, one] as const))('%s', (_id, { ask, verdict }) => {
    expect(judgeDemo(ask as ReferenceQuestion).verdict).toBe(verdict);
  });
  test('every verdict is asked for', () => {
    expect(new Set(golden.questions.map(({ verdict }) => verdict)).size).toBe(8);
  });
  test('the expectation rests on another publication than the claims', () => {
    for (const { expectationSource, claimSources } of golden.questions) {
      const name = (text: string) => text.toLowerCase().slice(0, 24);
      expect(claimSources.map(name)).not.toContain(name(expectationSource.source));
    }
  });
  test('rules said to stand beside an answer do', () => {
    for (const one of golden.questions) {
      const beside = (one as { rulesBeside?: readonly (string | { note?: string; id?: string })[] }).rulesBeside ?? [];
      const found = judgeDemo(one.ask as ReferenceQuestion)
        .rules.filter(({ touches }) => touches !== 'others')
        .map(({ note }) => String(note));
      for (const rule of beside)
        expect(found).toContain((typeof rule === 'string' ? rule : (rule.note ?? rule.id ?? '')).replace(/^rules\//, ''));
    }
  });
  test('the demonstration holds no error', () => {
    expect(notebookFindings(demoNotebook()).filter(({ diagnostic }) => diagnostic.severity === 'error')).toEqual([]);
  });
});
