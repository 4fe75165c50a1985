import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { LabQuestion } from '../../domain/laboratory/ask-laboratory.ts';
import type { KnownFinding } from '../../domain/laboratory/explain.ts';
import { standingOf } from '../../domain/verdict/standing.ts';
import { inSentence } from '../words/claim-line.ts';
import { foundWords } from '../words/lab-words.ts';
import { inList } from '../words/in-list.ts';
import { standingWords } from '../words/verdict-words.ts';

/** The mordants an element may come from. Common practice; an element may also be soil, vessel or water. */
const MORDANTS_OF: Readonly<Record<string, readonly string[]>> = {
  aluminium: ['alum', 'clubmoss', 'symplocos', 'aluminium-acetate'],
  iron: ['iron'],
  copper: ['copper'],
  tin: ['tin'],
  chromium: ['chrome'],
};

/** What the elements found may mean for the mordant, each with how the mordants stand there and then. */
export function mordantLines(base: EvidenceBase, { region, span, fibre }: LabQuestion, known: readonly KnownFinding[]): readonly string[] {
  return known.flatMap(({ compound, finding }) => {
    const mordants = (MORDANTS_OF[compound.name] ?? []).filter((id) => base.note(id) !== undefined);
    if (mordants.length === 0 || finding.found === 'not-tested' || finding.found === 'absent') return [];
    const fibreLine = fibre === undefined ? [] : base.fibreLine(fibre);
    const said = mordants.map((id) => {
      if (region === undefined || !span) return inSentence(base, id);
      const { standing } = standingOf(
        base.claimsOf(id),
        { region, span, fibreLine },
        { regions: base.regions, everyday: base.isEveryday(id) },
      );
      return `${inSentence(base, id)} (${standingWords[standing]})`;
    });
    const name = compound.name.charAt(0).toUpperCase() + compound.name.slice(1);
    return [`${name}, ${foundWords[finding.found]}: a mordant of ${inList(said, 'or')}, or else soil, water or the vessel.`];
  });
}
