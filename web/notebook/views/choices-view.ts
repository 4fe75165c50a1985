import { dyedRecipes } from '../../domain/verdict/cloths.ts';
import { WORLD } from '../../domain/place/region-tree.ts';
import type { NoteKind } from '../../domain/note/note.ts';
import type { Notebook } from '../notebook.ts';
import { weaveOf } from './cloth-view.ts';

/** Something a word of the question can be. */
export interface Choice {
  readonly id: string;
  readonly title: string;
  /** How deep in its tree, from 0. */
  readonly depth: number;
}

/** A cloth whose colour can be asked for. */
export interface ClothChoice extends Choice {
  readonly hex: string;
  readonly weave: string;
  /** "45.1,44.8,27.9" in D65/10°. */
  readonly lab: string;
}

/** What the words of a question can be in this notebook. */
export interface ChoicesView {
  readonly regions: readonly Choice[];
  readonly fibres: readonly Choice[];
  readonly wearers: readonly Choice[];
  readonly dyestuffs: readonly Choice[];
  readonly periods: readonly Choice[];
  readonly cloths: readonly ClothChoice[];
}

/** The choices of a notebook, trees in reading order, lists by title. */
export function choicesView({ base, colours }: Notebook): ChoicesView {
  const byTitle = (a: { title: string }, b: { title: string }) => a.title.localeCompare(b.title, 'en');
  const flat = (kind: NoteKind): readonly Choice[] =>
    base
      .ofKind(kind)
      .map(({ id, title }) => ({ id, title, depth: 0 }))
      .sort(byTitle);
  const tree = (kind: 'region' | 'fibre' | 'wearer', parentsOf: (id: string) => readonly string[]): readonly Choice[] => {
    const nodes = base
      .ofKind(kind)
      .map(({ id, title }) => ({ id: String(id), title }))
      .sort(byTitle);
    const known = new Set(nodes.map(({ id }) => id));
    const placed = new Set<string>();
    const below = (parent: string | undefined, depth: number): readonly Choice[] =>
      nodes
        .filter(({ id }) => {
          const parents = parentsOf(id).filter((one) => known.has(one));
          return parent === undefined ? parents.length === 0 : parents.includes(parent);
        })
        .flatMap(({ id, title }) => {
          if (placed.has(id)) return [];
          placed.add(id);
          return [{ id, title, depth }, ...below(id, depth + 1)];
        });
    return below(undefined, 0);
  };
  const regions = tree('region', (id) => base.regions.parentsOf(id).filter((parent) => parent !== WORLD));
  return {
    regions: [...regions, { id: WORLD, title: 'The world', depth: 0 }],
    fibres: tree('fibre', (id) => base.fibreLine(id).slice(1, 2)),
    wearers: tree('wearer', (id) => {
      const record = base.note(id)?.record;
      return record?.kind === 'wearer' ? record.within.map(({ text }) => base.resolve(text, ['wearer'])) : [];
    }),
    dyestuffs: flat('dyestuff'),
    periods: flat('period'),
    cloths: dyedRecipes(base, colours)
      .flatMap(({ recipe, samples }): ClothChoice[] => {
        const first = samples[0];
        if (!first) return [];
        return [
          {
            id: recipe,
            title: base.note(recipe)?.title ?? recipe,
            depth: 0,
            hex: first.colour.hex,
            weave: weaveOf(base, first.fibre),
            lab: first.colour.lab10.map((value) => value.toFixed(1)).join(','),
          },
        ];
      })
      .sort(byTitle),
  };
}
