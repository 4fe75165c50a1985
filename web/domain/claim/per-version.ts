import type { EvidenceBase } from './evidence-base.ts';

/**
 * Keeps what was worked out from a whole notebook until the notebook changes.
 *
 * @param make works it out; may depend on the evidence base alone.
 */
export function perVersion<T>(make: (base: EvidenceBase) => T): (base: EvidenceBase) => T {
  const kept = new WeakMap<EvidenceBase, { readonly version: number; readonly value: T }>();
  return (base) => {
    const held = kept.get(base);
    if (held?.version === base.version) return held.value;
    const value = make(base);
    kept.set(base, { version: base.version, value });
    return value;
  };
}
