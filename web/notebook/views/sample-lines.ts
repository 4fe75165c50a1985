import { dyedRecipes, judgedFibre } from '../../domain/verdict/cloths.ts';
import { routeOf } from '../../domain/verdict/route.ts';
import type { Notebook } from '../notebook.ts';
import type { SkeinCells } from '../read-skeins.ts';
import { titleOf } from '../words/claim-line.ts';

/** A sample of the notebook as a line of a table of skeins. */
export interface SampleLine {
  /** "trial nth": the same as long as the trial keeps its samples in their order. */
  readonly id: string;
  readonly title: string;
  readonly cells: SkeinCells;
}

/** Every dyed sample with a colour, by title: what it was made of stands in its line by id, so that no name is read twice. */
export function sampleLines({ base, colours }: Notebook): readonly SampleLine[] {
  return dyedRecipes(base, colours)
    .flatMap(({ recipe, samples }) =>
      samples.map(({ trial, nth, sample, fibre, colour, standIns }): SampleLine => {
        const code = sample.code ?? `${trial}${nth === 0 ? '' : `, sample ${nth + 1}`}`;
        const route = routeOf(base, recipe, judgedFibre(base, recipe, fibre));
        const helpers = route.materials
          .filter(({ role, id }) => role !== 'dye' && role !== 'fibre' && !base.isEveryday(id))
          .map(({ id }) => id);
        const lab = colour.lab10.map((value) => value.toFixed(1)).join(',');
        const declared = standIns.map(({ what, standsFor }) => `${what?.text ?? ''} for ${standsFor?.text ?? ''}`);
        const title = [titleOf(base, recipe), code, ...declared].join(', ');
        const cells = {
          name: title,
          dyestuffs: route.dyes.join(' + '),
          mordant: [...new Set(helpers)].join(' + '),
          fibre: fibre ?? '',
          colour: `${lab} D65/10`,
        };
        return { id: `${trial} ${nth}`, title, cells };
      }),
    )
    .toSorted((a, b) => a.title.localeCompare(b.title, 'en'));
}
