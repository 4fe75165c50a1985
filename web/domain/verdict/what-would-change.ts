import type { Cap, RouteJudgement } from './judge-route.ts';

type TrialWanted = 'a-trial' | 'a-trial-on-the-fibre' | 'a-trial-by-the-recipe';
const WANTED = {
  predicted: 'a-trial',
  'on-another-fibre': 'a-trial-on-the-fibre',
  'undeclared-deviation': 'a-trial-by-the-recipe',
} as const satisfies Record<Cap, TrialWanted>;

/** Something that, if it were found or settled, would change a verdict. */
export type Change =
  /** A textile or text with exactly these dyes would make it attested. */
  | { readonly kind: 'a-witness'; readonly dyes: readonly string[] }
  /** A firm claim for this material, in place and time. */
  | { readonly kind: 'a-firm-claim'; readonly material: string }
  /** The dispute over this material settled. */
  | { readonly kind: 'the-dispute-settled'; readonly material: string }
  /** An earlier or a later record than the known one. */
  | { readonly kind: 'an-earlier-record' | 'a-later-record'; readonly material: string }
  /** The absence proved wrong, or dated otherwise. */
  | { readonly kind: 'the-absence-overturned'; readonly material: string }
  /** A trial dyed on the asked fibre, dyed at all, or by the recipe. */
  | { readonly kind: TrialWanted }
  /** Evidence that the dyeing itself was done there. */
  | { readonly kind: 'dyeing-there'; readonly material: string };

/** What would change a verdict, most telling first; nothing for one that is attested where it was dyed. */
export function whatWouldChange({ standing, weakest, materials, witnesses, route, cappedBy }: RouteJudgement): readonly Change[] {
  if (cappedBy) return [{ kind: WANTED[cappedBy] }];
  const each = (kind: Exclude<Change['kind'], 'a-witness' | TrialWanted>): readonly Change[] =>
    weakest.map((material) => ({ kind, material }));
  switch (standing) {
    case 'local':
    case 'imported':
    case 'on-cloth':
      return witnesses.length === 0 && route.dyes.length > 0 ? [{ kind: 'a-witness', dyes: route.dyes }] : [];
    case 'cloth-only':
      return each('dyeing-there');
    case 'perhaps':
    case 'nearby':
    case 'unrecorded':
      return each('a-firm-claim');
    case 'contested':
      return each('the-dispute-settled');
    case 'not-yet':
      return each('an-earlier-record');
    case 'no-longer':
      return each('a-later-record');
    case 'absent':
      return materials
        .filter(({ standing: one }) => one === 'absent')
        .map((one): Change =>
          one.onlyAsCloth
            ? { kind: 'dyeing-there', material: one.material.id }
            : { kind: 'the-absence-overturned', material: one.material.id },
        );
  }
}
