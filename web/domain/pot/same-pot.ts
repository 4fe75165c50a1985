import { frontMatterKeys } from '../note/front-matter-keys.ts';
import type { PlainTree } from '../note/plain-tree.ts';

/**
 * False where two notes that go by one number are of two pots: both were given out on machines that could not ask each other.
 *
 * A pot is told from another by its recipe and by the line on what was planned; where one note lacks either, it says nothing
 * against the other. The line says to the minute when codes were given out: only within one, the same masses by the same recipe under
 * one number cannot be told apart.
 */
export function samePot(mine: string, theirs: string): boolean {
  const [own, other] = [pot(mine), pot(theirs)];
  return agrees(own.recipe, other.recipe) && agrees(own.planned, other.planned);
}

interface PotSigns {
  readonly recipe: string | undefined;
  readonly planned: string | undefined;
}

function pot(text: string): PotSigns {
  const read = frontMatterKeys(text);
  const recipe: PlainTree | undefined = read?.keys.find(({ key }) => key === 'recipe')?.says;
  return { recipe: recipe?.is === 'scalar' ? recipe.text : undefined, planned: /^Planned [^\n]*/m.exec(read?.body ?? '')?.[0].trim() };
}

const agrees = (a: string | undefined, b: string | undefined): boolean => a === undefined || b === undefined || a === b;
