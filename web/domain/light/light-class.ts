import type { EvidenceBase } from '../claim/evidence-base.ts';
import { fastnessTestOf } from '../fastness/fastness-test.ts';
import type { LightGrade } from '../note/note.ts';
import type { Route } from '../verdict/route.ts';
import { type BlueWoolRange, hullOf, type NoBlueWool, readBlueWool } from './blue-wool.ts';

/** A published grade as it was weighed for a swatch. */
export interface WeighedGrade {
  readonly dye: string;
  readonly grade: LightGrade;
  /** Absent where the grade gives no class, or is of another fibre or mordant. */
  readonly classes?: BlueWoolRange;
  readonly passedOver?: NoBlueWool | 'other-fibre' | 'other-mordant' | 'other-test';
}

/** The class of a swatch's light fastness, with everything that was looked at. */
export interface LightClass {
  /** Absent: unknown, which is not the same as fast. */
  readonly classes?: BlueWoolRange;
  readonly unknown?: 'undyed' | 'no-grade';
  /** Dyes without a grade that fits. */
  readonly without: readonly string[];
  readonly grades: readonly WeighedGrade[];
}

/** What a trial really used instead of what the recipe asks for, by the id asked for. */
export type UsedInstead = ReadonlyMap<string, string>;

/**
 * The light class of a dyed colour: for each dye the span of every published grade that fits fibre and mordant, all sources together;
 * over several dyes the most sensitive one, because a colour changes when its first dye goes.
 * If one dye has no grade that fits, the whole is unknown. What was really used counts: American cochineal fades as itself.
 */
export function lightClassOf(
  base: EvidenceBase,
  route: Route,
  fibre: string | undefined = route.fibre,
  instead: UsedInstead = new Map(),
): LightClass {
  const used = (role: 'dye' | 'mordant') =>
    route.materials.filter((one) => one.role === role).map(({ id, usedInstead }) => instead.get(id) ?? usedInstead ?? id);
  const dyes = used('dye');
  if (dyes.length === 0) return { unknown: 'undyed', without: [], grades: [] };
  const mordants = new Set(used('mordant'));
  const fibres = fibre === undefined ? [] : base.fibreLine(fibre);
  const grades = dyes.flatMap((dye) => gradesOf(base, dye).map((grade) => weigh(base, dye, grade, fibres, mordants)));
  const spans = dyes.map((dye) => hullOf(grades.flatMap((one) => (one.dye === dye && one.classes ? [one.classes] : []))));
  const without = dyes.filter((_, at) => spans[at] === undefined);
  if (without.length > 0) return { unknown: 'no-grade', without, grades };
  const known = spans.filter((span) => span !== undefined);
  const classes = { from: Math.min(...known.map(({ from }) => from)), to: Math.min(...known.map(({ to }) => to)) };
  return { classes, without, grades };
}

const gradesOf = (base: EvidenceBase, dye: string): readonly LightGrade[] => {
  const record = base.note(dye)?.record;
  return record?.kind === 'dyestuff' ? record.lightfast : [];
};

function weigh(base: EvidenceBase, dye: string, grade: LightGrade, fibres: readonly string[], mordants: ReadonlySet<string>): WeighedGrade {
  if (fastnessTestOf(grade.method, grade.scale) !== 'light') return { dye, grade, passedOver: 'other-test' };
  if (grade.on && !fibres.includes(base.resolve(grade.on.text, ['fibre']))) return { dye, grade, passedOver: 'other-fibre' };
  if (grade.mordant && !mordants.has(base.resolve(grade.mordant.text, ['mordant']))) return { dye, grade, passedOver: 'other-mordant' };
  const read = readBlueWool(grade.grade, grade.scale);
  return typeof read === 'string' ? { dye, grade, passedOver: read } : { dye, grade, classes: read };
}
