import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { Basis, Compound, DyeProfile, Strength } from '../../domain/laboratory/compound.ts';
import { findCompound } from '../../domain/laboratory/find-compound.ts';
import { goneInTime, ownGone, ownReach, reachInPlenty } from '../../domain/laboratory/figures.ts';
import { LAB_WEIGHTS, type LabWeights } from '../../domain/laboratory/tables/weights.ts';
import { type LabMethod, METHOD_REACH } from '../../domain/laboratory/tables/methods.ts';
import type { TypedLab } from '../typed-lab.ts';
import { inSentence } from '../words/claim-line.ts';
import { figure, methodWords } from '../words/lab-words.ts';

/** A figure a reader can put another in place of. */
export interface LabFigure {
  /** 0–1, as a number in words. */
  readonly value: string;
  /** Where it comes from; `our judgement` in so many words. */
  readonly from: string;
  readonly isOwn: boolean;
}

/** Everything the tables hold of one compound that bore on an answer. */
export interface LabFigureRow {
  readonly compound: string;
  /** Other names and the CAS number. */
  readonly also: string;
  readonly method: LabMethod;
  readonly methodWord: string;
  readonly reach: LabFigure;
  readonly gone: LabFigure;
  /** "strays in: 0.006 (our judgement)". */
  readonly stray: string;
  /** "madder: main (Karapanagiotis et al. 2021)". */
  readonly givenBy: readonly string[];
}

const strengthWords = { main: 'much', minor: 'some', trace: 'a trace' } as const satisfies Record<Strength, string>;
const basisText = ({ source, fromMemory }: Basis): string => `${source}${fromMemory === true ? ', from memory' : ''}`;
const OWN = 'your own figure';

/** The figures of what was reported and of what the laid-out sources hold, each with its source. */
export function labFigures(base: EvidenceBase, typed: TypedLab, dyes: readonly DyeProfile[]): readonly LabFigureRow[] {
  const reported = typed.findings.map(({ compound }) => compound);
  const held = dyes.flatMap(({ holds }) => holds.map(({ compound }) => compound));
  const compounds = [
    ...new Map(
      [...reported, ...held].flatMap((name) => {
        const compound = findCompound(name);
        return compound ? [[compound.name, compound] as const] : [];
      }),
    ).values(),
  ];
  return compounds.map((compound) => rowOf(base, typed, compound, dyes));
}

function rowOf(base: EvidenceBase, typed: TypedLab, compound: Compound, dyes: readonly DyeProfile[]): LabFigureRow {
  const method = compound.family === 'element' ? 'sem-edx' : typed.method;
  const { figures } = typed;
  const [isOwnReach, isOwnGone] = [ownReach(method, compound, figures) !== undefined, ownGone(compound, figures) !== undefined];
  return {
    compound: compound.name,
    also: [...compound.names, ...(compound.cas === undefined ? [] : [`CAS ${compound.cas}`])].join(', '),
    method,
    methodWord: methodWords[method],
    reach: {
      value: figure(reachInPlenty(method, compound, figures)),
      from: isOwnReach ? OWN : basisText(METHOD_REACH[method].basis),
      isOwn: isOwnReach,
    },
    gone: {
      value: figure(goneInTime(compound, figures)),
      from: isOwnGone ? OWN : goneText(compound.lossBasis),
      isOwn: isOwnGone,
    },
    stray: `${figure(compound.stray)} (our judgement)`,
    givenBy: dyes.flatMap(({ dye, holds }) =>
      holds
        .filter((one) => one.compound === compound.name)
        .map(({ strength, basis }) => `${inSentence(base, dye)}: ${strengthWords[strength]} (${basisText(basis)})`),
    ),
  };
}

/** The grade may have a source; what number it stands for is always judged. */
const goneText = (basis: Basis): string =>
  basis.source === 'our judgement' ? basis.source : `graded after ${basisText(basis)}; the number is our judgement`;

/** "luteolin by HPLC with diode array 0.8", for every figure of the reader's own. */
export function ownFigureLines({ figures }: TypedLab): readonly string[] {
  const reach = Object.entries(figures?.reach ?? {}).flatMap(([method, byCompound]) =>
    Object.entries(byCompound).map(([compound, value]) => `${compound} shown by ${methodWords[method as LabMethod]}: ${figure(value)}`),
  );
  const gone = Object.entries(figures?.gone ?? {}).map(([compound, value]) => `${compound} gone after 250 years: ${figure(value)}`);
  return [...reach, ...gone];
}

/** The weights with the reader's own figures among them. */
export const weightsOf = ({ figures }: TypedLab): LabWeights => (figures ? { ...LAB_WEIGHTS, figures } : LAB_WEIGHTS);
