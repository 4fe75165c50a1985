import { MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import { type AfterLight, afterLight } from '../../domain/colour/fade.ts';
import { swatchFromSpectrum } from '../../domain/colour/swatch-colour.ts';
import type { BlueWoolRange } from '../../domain/light/blue-wool.ts';
import type { Ultraviolet } from '../../domain/light/dose.ts';
import { JNF_SOURCE, jnfLuxHours } from '../../domain/light/jnf.ts';
import { lightClassOf } from '../../domain/light/light-class.ts';
import { groundsByFibre } from '../../domain/verdict/predicted-cloths.ts';
import type { FoundCloth } from '../cloth-by-id.ts';
import type { Notebook } from '../notebook.ts';
import { titleOf } from '../words/claim-line.ts';

/** A dose of light as it is asked for. */
export interface TypedLightDose {
  readonly megaluxHours: number;
  readonly uv: Ultraviolet;
  /** Blue wool classes that the reader takes where the notes give none. */
  readonly assumed?: BlueWoolRange;
}

/** A colour light may lead to. */
export interface LitColour {
  readonly hex: string;
  /** CSS `color()` for a wide screen, where an ordinary one cannot show it. */
  readonly wide?: string;
  readonly inScreenGamut: boolean;
  /** "grey scale 3-4". */
  readonly grade: string;
}

/** A cloth after a dose: always a range, never one colour; without colours where its fastness is not known. */
export interface AfterLightView {
  readonly says: readonly string[];
  readonly range?: { readonly best: LitColour; readonly worst: LitColour };
}

/** A cloth after a light dose, between the least and the most its published light-fastness lets expect, one class wider at either end. */
export function afterLightView(
  { base, colours }: Notebook,
  cloth: FoundCloth,
  { megaluxHours, uv, assumed }: TypedLightDose,
): AfterLightView {
  const ground = cloth.fibre === undefined ? undefined : groundsByFibre(base, colours).get(cloth.fibre);
  if (!cloth.route || cloth.fibre === undefined)
    return { says: ['Nothing is known of the dye of this colour, so nothing of how it fades.'] };
  if (!ground)
    return { says: [`No undyed ${titleOf(base, cloth.fibre).toLowerCase()} stands in the notes: there is no ground to fade to.`] };
  const instead = new Map(
    (cloth.sample?.standIns ?? []).flatMap(({ what, standsFor }) =>
      what && standsFor ? [[base.resolve(standsFor.text, MATERIAL_KINDS), base.resolve(what.text, MATERIAL_KINDS)] as const] : [],
    ),
  );
  const { classes: published, without } = lightClassOf(base, cloth.route, cloth.fibre, instead);
  const classes = published ?? assumed;
  if (!classes)
    return { says: [`No light-fastness that fits is in the notes for ${without.map((dye) => titleOf(base, dye)).join(', ')}.`] };
  const at = (blueWool: number): AfterLight =>
    afterLight(cloth.colour.spectrum, ground, { justNoticeable: jnfLuxHours(blueWool, uv) / 1e6, dose: megaluxHours });
  const lit = (after: AfterLight): LitColour => {
    const { hex, wide, inScreenGamut } = swatchFromSpectrum(after.spectrum, 'predicted');
    return { hex, ...(wide === undefined ? {} : { wide }), inScreenGamut, grade: `grey scale ${after.change.step}` };
  };
  const [best, worst] = [at(classes.to + 1), at(classes.from - 1)];
  const span = classes.from === classes.to ? `class ${classes.from}` : `classes ${classes.from} to ${classes.to}`;
  const left = (after: AfterLight): string => `${Math.round(after.left * 100)} %`;
  return {
    range: { best: lit(best), worst: lit(worst) },
    says: [
      `After ${megaluxHours} Mlx·h ${uv === 'rich' ? 'of daylight through glass' : 'without ultraviolet'}: between ${left(worst)} and ${left(best)} of the dye left.`,
      `Predicted from blue wool ${span}${published ? '' : ', which is your own assumption: the notes have no grade that fits'}, one class wider at either end; doses: ${JNF_SOURCE.name}${JNF_SOURCE.checked === 'from-memory' ? ', from memory' : ''}. The dye’s K/S shrinks and the fibre yellows; real fading also shifts hue.`,
    ],
  };
}
