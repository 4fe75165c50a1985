/** How many notes a size stands for, as it is typed. */
const SIZES: Readonly<Record<string, number>> = { '1k': 1_000, '10k': 10_000, '100k': 100_000 };

/** What was asked of a bench behind its name. */
export interface BenchOptions {
  /** Sizes of notebook to measure, by name: `1k` and `10k` unless others are asked for. */
  readonly sizes: readonly (readonly [name: string, notes: number])[];
  /** How often what takes long is done: 5 unless otherwise asked; fewer give a figure for orientation only. */
  readonly repetitions: number;
}

/** Reads `--notes 1k,100k --repetitions 5`. */
export function benchOptions(args: readonly string[] = process.argv.slice(2)): BenchOptions {
  const said = (name: string, otherwise: string): string => (args.includes(name) ? (args[args.indexOf(name) + 1] ?? '') : otherwise);
  const names = said('--notes', '1k,10k').split(',');
  return {
    repetitions: Math.max(1, Number.parseInt(said('--repetitions', '5'), 10) || 1),
    sizes: names.map((name) => {
      const notes = SIZES[name];
      if (notes === undefined)
        throw new Error(`--notes takes ${Object.keys(SIZES).join(', ')}, or several with commas between; not “${name}”`);
      return [name, notes] as const;
    }),
  };
}
