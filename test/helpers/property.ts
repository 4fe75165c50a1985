import fc from 'fast-check';

/** `npm run properties` asks for more cases, and draws them by another chance each time. */
const TIMES = Number(process.env['PROPERTY_TIMES'] ?? 1);
const SEED = Number(process.env['PROPERTY_SEED'] ?? 20_261_128);

/** How often a property is tried where a hundred times are too few or too many. */
export const runs = (count: number): { readonly numRuns: number } => ({ numRuns: count * TIMES });

// The same cases for everyone: what fails for one fails for all.
fc.configureGlobal({ ...runs(100), seed: SEED });

export { fc };
