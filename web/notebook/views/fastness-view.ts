import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { fastnessTestOf, FASTNESS_TESTS } from '../../domain/fastness/fastness-test.ts';
import { type LightTest, lightTests } from '../../domain/fastness/light-test.ts';
import { readFastnessLine } from '../../domain/fastness/read-fastness-line.ts';
import type { LightGrade, TrialRecord } from '../../domain/note/note.ts';
import { deltaText } from '../words/because.ts';
import { inSentence, sourceText } from '../words/claim-line.ts';
import { fastnessTestWords, readingGradeText, UNKNOWN_SCALE } from '../words/fastness-words.ts';

/** One grade, never without what it is a grade of. */
export interface FastnessRow {
  /** "light", "washing". */
  readonly test: string;
  readonly grade: string;
  readonly scale: string;
  readonly fibre: string;
  readonly mordant: string;
  readonly method: string;
  readonly source: string;
}

/** A reading of a light test. */
export interface LightReadingView {
  readonly date: string;
  readonly dose: string;
  readonly megaluxHours?: number;
  readonly hex?: string;
  /** ΔE_F of ISO 105-A05, for the curve. */
  readonly change?: number;
  /** "grade 3-4, ΔE00 3.1 from the first reading". */
  readonly text: string;
}

/** A light test with its curve. */
export interface LightTestView {
  readonly note: string;
  readonly title: string;
  readonly sample: string;
  readonly reference: string;
  /** "Blue wool 2 had reached grey-scale 4." */
  readonly strips: readonly string[];
  readonly readings: readonly LightReadingView[];
}

/** The published grades of a dyestuff, light first. */
export function publishedFastness(base: EvidenceBase, grades: readonly LightGrade[]): readonly FastnessRow[] {
  return [...grades]
    .map((grade) => ({ grade, test: fastnessTestOf(grade.method, grade.scale) }))
    .sort((a, b) => FASTNESS_TESTS.indexOf(a.test) - FASTNESS_TESTS.indexOf(b.test))
    .map(({ grade: { on, mordant, grade, scale, method, sources }, test }) => ({
      test: fastnessTestWords[test],
      grade: grade ?? 'unknown',
      scale: scale ?? UNKNOWN_SCALE,
      fibre: on ? inSentence(base, base.resolve(on.text, ['fibre'])) : 'fibre not said',
      mordant: mordant ? inSentence(base, base.resolve(mordant.text, ['mordant', 'assistant', 'process'])) : 'mordant not said',
      method: method ?? 'method not said',
      source: sourceText(sources),
    }));
}

/** The results of a trial's own tests, as its log tells them. */
export function triedFastness(base: EvidenceBase, trial: TrialRecord, id: string): readonly FastnessRow[] {
  const fibres = [...new Set(trial.samples.flatMap(({ fibre }) => (fibre ? [inSentence(base, base.resolve(fibre.text, ['fibre']))] : [])))];
  const mordants = trial.actual.flatMap(({ role, what }) =>
    role === 'mordant' && what ? [inSentence(base, base.resolve(what.text, ['mordant', 'assistant', 'process']))] : [],
  );
  return trial.log.flatMap((line): FastnessRow[] => {
    const read = readFastnessLine(line);
    if (!read) return [];
    return [
      {
        test: `${fastnessTestWords[read.test]}${read.which === '' ? '' : `, ${read.which}`}`,
        grade: read.isOfScale || read.scale === '' ? read.grade : `${read.grade} (no grade of that scale)`,
        scale: read.scale === '' ? UNKNOWN_SCALE : read.scale,
        fibre: fibres.join(', ') || 'fibre not said',
        mordant: mordants.join(', ') || 'no mordant written down',
        method: read.method === '' ? 'method not said' : read.method,
        source: id,
      },
    ];
  });
}

/** The light tests of some samples, by their codes. */
export const lightTestViews = (base: EvidenceBase, codes: readonly string[]): readonly LightTestView[] =>
  codes.flatMap((code) => lightTests(base, code)).map(lightTestView);

/** A light test in words and figures. */
export function lightTestView({ note, title, sample, readings, reference, blueWools }: LightTest): LightTestView {
  return {
    note,
    title,
    sample,
    reference,
    strips: blueWools.map(({ blueWool, grade }) => `Blue wool ${blueWool} had reached grey-scale ${grade}.`),
    readings: readings.map(({ date, dose, megaluxHours, colour, change, deltaE00 }, at) => ({
      date: date ?? '',
      dose: dose ?? '',
      ...(megaluxHours === undefined ? {} : { megaluxHours }),
      ...(colour && { hex: colour.hex }),
      ...(change && { change: change.deltaEF }),
      text:
        change && deltaE00 !== undefined
          ? at === 0
            ? 'first reading'
            : `${readingGradeText(change)}; ΔE00 ${deltaText(deltaE00)} from the first reading`
          : 'no colour written down',
    })),
  };
}
