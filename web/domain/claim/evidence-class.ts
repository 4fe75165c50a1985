import type { KnownBy } from '../note/note.ts';
import { type Claim, rootOf } from './claim.ts';

/** The five kinds of evidence, strongest first. */
export const EVIDENCE_CLASSES = ['physical', 'documentary', 'pictorial', 'experimental', 'inference'] as const;
export type EvidenceClass = (typeof EVIDENCE_CLASSES)[number];

const CLASS_OF: Readonly<Record<KnownBy, EvidenceClass>> = {
  analysis: 'physical',
  remains: 'physical',
  text: 'documentary',
  trade: 'documentary',
  law: 'documentary',
  image: 'pictorial',
  trial: 'experimental',
  practice: 'experimental',
  inference: 'inference',
};

/** The class of one way of knowing. */
export const evidenceClassOf = (knownBy: KnownBy): EvidenceClass => CLASS_OF[knownBy];

/**
 * The independent classes of evidence among claims: claims with one root count once,
 * so each root can vouch for one class; the assignment that covers most classes is taken.
 *
 * @returns the classes covered, in the fixed order; the order of the claims does not matter.
 */
export function independentClasses(claims: readonly Claim[]): readonly EvidenceClass[] {
  const rootsByClass = new Map<EvidenceClass, Set<string>>();
  for (const claim of claims) {
    if (!claim.knownBy) continue;
    const evidenceClass = evidenceClassOf(claim.knownBy);
    rootsByClass.set(evidenceClass, (rootsByClass.get(evidenceClass) ?? new Set()).add(rootOf(claim)));
  }
  const takenBy = new Map<string, EvidenceClass>();
  const place = (evidenceClass: EvidenceClass, tried: Set<string>): boolean => {
    for (const root of [...(rootsByClass.get(evidenceClass) ?? [])].sort()) {
      if (tried.has(root)) continue;
      tried.add(root);
      const holder = takenBy.get(root);
      if (!holder || place(holder, tried)) {
        takenBy.set(root, evidenceClass);
        return true;
      }
    }
    return false;
  };
  return EVIDENCE_CLASSES.filter((evidenceClass) => place(evidenceClass, new Set()));
}
