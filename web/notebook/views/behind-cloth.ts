import { closeness } from '../../domain/colour/delta-e.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { paletteOf } from '../../domain/palette/palette.ts';
import type { Candidate } from '../../domain/verdict/ask.ts';
import { deltaE00 } from '../../domain/colour/delta-e.ts';
import type { Notebook } from '../notebook.ts';
import { poseCircumstances } from '../pose-question.ts';
import { becauseOfRoute } from '../words/because.ts';
import { type AnswerView, judgedView, questionSentence, withSources, wordsOf } from './answer-view.ts';
import { clothView } from './cloth-view.ts';
import type { TypedPalette } from '../typed-palette.ts';

/**
 * Everything behind one cloth of a palette: its verdict, what speaks for and against, and each of its samples.
 *
 * @param cloth the id of a `PaletteCloth`.
 */
export function behindCloth(notebook: Notebook, typed: TypedPalette, cloth: string): AnswerView | undefined {
  const { base, colours } = notebook;
  const { question } = poseCircumstances(base, typed);
  const found = question && paletteOf(base, colours, question.route).find(({ id }) => id === cloth);
  if (!question || !found) return undefined;
  const { judgement, samples, colour } = found;
  const because = becauseOfRoute(base, judgement, question.route);
  const asCandidate = (sample: (typeof samples)[number]): Candidate => {
    const difference = deltaE00(colour.lab10, sample.colour.lab10);
    return {
      judgement,
      colourFrom: 'measured',
      nearest: sample,
      samples: [sample],
      colour: sample.colour,
      lab: sample.colour.lab10,
      deltaE00: difference,
      closeness: closeness(difference),
      onAnotherFibre: false,
    };
  };
  return {
    sentence: questionSentence(base, question),
    reading: formatSpan(question.when),
    ...withSources(notebook, judgedView(base, judgement, question, because)),
    verdict: judgement.verdict,
    ...wordsOf(judgement.verdict),
    cloths: samples.map((sample) => ({ ...clothView(base, asCandidate(sample)), id: `${sample.trial} ${sample.nth}` })),
    predicted: [],
    meanings: [],
    settings: [],
  };
}
