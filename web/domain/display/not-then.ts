import type { PaletteColour } from '../palette/palette.ts';
import type { RuleFinding } from '../verdict/rules-for.ts';

/** A colour of the notebook that does not belong to the place and time, and why. */
export interface NotThen {
  readonly colour: PaletteColour;
  readonly why: 'out-of-period' | 'contradicted' | 'forbidden';
  /** The rules that keep it from the asked wearer. */
  readonly rules: readonly RuleFinding[];
}

const ORDER: readonly NotThen['why'][] = ['out-of-period', 'contradicted', 'forbidden'];

/** What a board says was not to be had or not allowed then: colours out of period, contradicted, or forbidden to the asked wearer. */
export const notThen = (colours: readonly PaletteColour[]): readonly NotThen[] =>
  colours
    .flatMap((colour): NotThen[] => {
      const { verdict, rules } = colour.judgement;
      const against = rules.filter(({ touches }) => touches !== 'others');
      if (verdict === 'out-of-period' || verdict === 'contradicted') return [{ colour, why: verdict, rules: against }];
      return against.length > 0 ? [{ colour, why: 'forbidden', rules: against }] : [];
    })
    .sort((a, b) => ORDER.indexOf(a.why) - ORDER.indexOf(b.why) || (a.colour.id < b.colour.id ? -1 : 1));
