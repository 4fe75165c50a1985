import { learnedSpread } from '../../domain/colour/spread.ts';
import { predictedPairs } from '../../domain/verdict/predicted-pairs.ts';
import type { Notebook } from '../notebook.ts';
import { spreadWords } from '../words/spread-words.ts';

/** How far off this notebook's predictions are likely to be, learned from those that were dyed. */
export const spreadOfPredictions = ({ base, colours }: Pick<Notebook, 'base' | 'colours'>): string =>
  spreadWords(learnedSpread(predictedPairs(base, colours)));
