import type { DependsOn, EvidenceBase } from './evidence-base.ts';

/**
 * Keeps what was worked out from a whole notebook until what it depends on changes.
 *
 * @param make works it out; may depend on the evidence base alone.
 * @param on what of it; the whole of it where this is not said.
 */
export function perVersion<T>(make: (base: EvidenceBase) => T, on?: DependsOn): (base: EvidenceBase) => T {
  const kept = new WeakMap<EvidenceBase, { readonly version: number; readonly value: T }>();
  return (base) => {
    const version = on ? base.versionOf(on) : base.version;
    const held = kept.get(base);
    if (held?.version === version) return held.value;
    const value = make(base);
    kept.set(base, { version, value });
    return value;
  };
}

/**
 * The same for what is worked out from a notebook with something else beside it.
 *
 * @param make works it out; what stands beside the evidence must give the same as long as what it depends on there does not change.
 */
export function perVersionWith<K extends object, T>(
  make: (base: EvidenceBase, beside: K) => T,
  on?: DependsOn,
): (base: EvidenceBase, beside: K) => T {
  const kept = perVersion(() => new WeakMap<K, { readonly value: T }>(), on);
  return (base, beside) => {
    const known = kept(base).get(beside) ?? { value: make(base, beside) };
    kept(base).set(beside, known);
    return known.value;
  };
}
