import { isGrade } from './grade-scale.ts';
import type { FastnessTest } from './fastness-test.ts';

/** A test of fastness as a line of a trial's log tells it. */
export interface FastnessResult {
  readonly test: FastnessTest;
  /** "dry", "wet", "staining on wool": which of several results of one test. */
  readonly which: string;
  /** As written. */
  readonly grade: string;
  readonly scale: string;
  readonly method: string;
  /** False where the scale has no such grade, or is not named. */
  readonly isOfScale: boolean;
}

const LINE =
  /^(?:[\d–./:\s-]*)(wash|rub|light|water)(?:ing|bing)?[\s-]+fastness\s*(?:,\s*([^:]+?)\s*)?:\s*([^(;]+?)\s*(?:\(([^()]*(?:\([^()]*\)[^()]*)*)\))?\s*[.;]?\s*$/i;

/**
 * Reads a line such as `wash fastness: 4 (grey scale for change; ISO 105-C06)` or `rub fastness, wet: 2-3 (grey scale for staining;
 * ISO 105-X12)`: in brackets the scale, and behind a semicolon the method. Undefined for any other line.
 */
export function readFastnessLine(line: string): FastnessResult | undefined {
  const found = LINE.exec(line.trim());
  if (!found) return undefined;
  const [, test = '', which = '', grade = '', inside = ''] = found;
  const [scale = '', ...method] = inside.split(';').map((part) => part.trim());
  return { test: test.toLowerCase() as FastnessTest, which, grade, scale, method: method.join('; '), isOfScale: isGrade(grade, scale) };
}
