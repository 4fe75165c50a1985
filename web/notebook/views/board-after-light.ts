import { type LightPlan, yearlyLuxHours } from '../../domain/light/dose.ts';
import { clothById } from '../cloth-by-id.ts';
import { lookedSample } from '../looking-address.ts';
import type { Notebook } from '../notebook.ts';
import type { Shown, ShownColour } from '../shown-colours.ts';
import { titleOf } from '../words/claim-line.ts';
import { afterLightView, type LitColour } from './after-light-view.ts';
import { weaveOf } from './cloth-view.ts';

/** One colour of a board after its light: as it hangs, and the range it may come to. */
export interface ColourAfterLight {
  readonly what: string;
  readonly title: string;
  readonly code: string;
  readonly weave: string;
  readonly now: { readonly hex: string; readonly wide?: string };
  /** Absent where its fastness is not known. */
  readonly range?: { readonly best: LitColour; readonly worst: LitColour };
  /** What is left of the dye and by which rule, or why nothing can be said. */
  readonly says: readonly string[];
}

/**
 * What the cloths of a board may look like after so many years of its light, each as a range.
 *
 * @param years of the plan’s light.
 */
export function boardAfterLight(notebook: Notebook, shown: Shown, plan: LightPlan, years: number): readonly ColourAfterLight[] {
  const dose = { megaluxHours: Number(((yearlyLuxHours(plan) * years) / 1e6).toPrecision(3)), uv: plan.uv };
  return shown.colours.flatMap((one) => {
    const { colour, sample, swatch, what } = one;
    const cloth = clothOf(notebook, one);
    if (!swatch || !cloth) return [];
    return {
      what,
      title: titleOf(notebook.base, colour?.judgement.route.recipe ?? what),
      code: sample?.sample.code ?? '',
      weave: weaveOf(notebook.base, cloth.fibre),
      now: { hex: swatch.hex, ...(swatch.wide === undefined ? {} : { wide: swatch.wide }) },
      ...afterLightView(notebook, cloth, dose),
    };
  });
}

const clothOf = ({ base, colours }: Notebook, { sample, what }: ShownColour) =>
  clothById(base, colours, sample ? lookedSample(sample) : what);
