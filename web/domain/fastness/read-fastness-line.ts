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

const NAME = /^[\d–./:\s-]*(wash|rub|light|water)(?:ing|bing)?[\s-]+fastness\s*(?:,([^:]+))?:/i;
/** Brackets in brackets once. */
const INSIDE = /^[^()]*(?:\([^()]*\)[^()]*)*$/;

/**
 * Reads a line such as `wash fastness: 4 (grey scale for change; ISO 105-C06)` or `rub fastness, wet: 2-3 (grey scale for staining;
 * ISO 105-X12)`: in brackets the scale, and behind a semicolon the method. Undefined for any other line.
 */
export function readFastnessLine(line: string): FastnessResult | undefined {
  const name = NAME.exec(line);
  const result = name && readResult(line.slice(name[0].length));
  if (!result) return undefined;
  const { grade, inside } = result;
  const which = name[2]?.trim();
  if (which === '') return undefined;
  const [scale = '', ...method] = inside.split(';').map((part) => part.trim());
  const test = name[1]?.toLowerCase() as FastnessTest;
  return { test, which: which ?? '', grade, scale, method: method.join('; '), isOfScale: isGrade(grade, scale) };
}

/** A grade and what stands in the brackets behind it, at the end of the line. */
function readResult(text: string): { readonly grade: string; readonly inside: string } | undefined {
  const written = text.trim().replace(/[.;]$/, '').trimEnd();
  const open = written.indexOf('(');
  const hasBrackets = open >= 0 && written.endsWith(')');
  const grade = (hasBrackets ? written.slice(0, open) : written).trim();
  const inside = hasBrackets ? written.slice(open + 1, -1) : '';
  return grade === '' || /[(;]/.test(grade) || !INSIDE.test(inside) ? undefined : { grade, inside };
}
