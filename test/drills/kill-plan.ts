import { createHash } from 'node:crypto';
import { type Chance, chance } from '../helpers/random.ts';

/** Something that the page is asked to do; it answers `saved` when it is done. */
export type Asked =
  | { readonly is: 'save'; readonly path: string; readonly text: string; readonly basedOn?: string }
  | { readonly is: 'delete'; readonly path: string; readonly basedOn: string }
  | { readonly is: 'read-in'; readonly from: string; readonly files: readonly (readonly [path: string, text: string])[] };

/** What a database holds, as far as a reader could miss it. Texts are told by their SHA-256. */
export interface Held {
  /** Every file that stands. */
  readonly files: Readonly<Record<string, string>>;
  /** Every version that gave way, the oldest first. */
  readonly earlier: Readonly<Record<string, readonly string[]>>;
  /** Imports that were cut off, and the paths they never wrote. */
  readonly missing: Readonly<Record<string, readonly string[]>>;
}

/** One transaction of the store. */
interface Step {
  readonly writes: readonly (readonly [path: string, text: string | undefined])[];
  readonly plan?: { readonly from: string; readonly missing: readonly string[] };
}

/** As an import writes them (`BATCH_FILES` of `import-files.ts`). */
const BATCH_FILES = 100;
/** Files that imports bring, over and over: more than a batch. */
const IMPORTED = 130;
/** Notes that are written one by one. */
const WRITTEN = 24;

export const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

/** A notebook as it ought to stand, and what is going to be asked of it. */
export class KillPlan {
  #chance: Chance;
  #files = new Map<string, string>();
  #earlier = new Map<string, string[]>();
  #missing = new Map<string, readonly string[]>();
  #texts = 0;

  constructor(seed: number) {
    this.#chance = chance(seed);
  }

  /** How many answers come before the kill, and how many milliseconds after the last of them it falls: where a write is by then is the disk's affair. */
  killPoint(): { readonly answers: number; readonly milliseconds: number } {
    return { answers: this.#chance.below(9), milliseconds: this.#chance.oneIn(2) ? 0 : this.#chance.below(25) };
  }

  /** What to ask for next, one after another; nothing of it counts as done yet. */
  ask(count: number): readonly Asked[] {
    const files = new Map(this.#files);
    return Array.from({ length: count }, () => {
      const asked = this.#one(files);
      for (const { writes } of stepsOf(asked)) for (const [path, text] of writes) put(files, path, text);
      return asked;
    });
  }

  /**
   * Which of the states after `least` steps or more the database is in; undefined where it is in none. From then on that
   * state counts as how it ought to stand.
   */
  matches(asked: readonly Asked[], least: number, held: Held): number | undefined {
    const steps = asked.flatMap(stepsOf);
    const wanted = inOrder(held);
    for (const [at, step] of steps.entries()) {
      if (at >= least && inOrder(this.#held()) === wanted) return at;
      this.#take(step);
    }
    return inOrder(this.#held()) === wanted ? steps.length : undefined;
  }

  /** How many notes stand. */
  get noteCount(): number {
    return this.#files.size;
  }

  #held(): Held {
    return {
      files: Object.fromEntries([...this.#files].map(([path, text]) => [path, hashOf(text)])),
      earlier: Object.fromEntries([...this.#earlier].map(([path, texts]) => [path, texts.map(hashOf)])),
      missing: Object.fromEntries(this.#missing),
    };
  }

  #take({ writes, plan }: Step): void {
    for (const [path, text] of writes) {
      const before = this.#files.get(path);
      if (before !== undefined) this.#earlier.set(path, [...(this.#earlier.get(path) ?? []), before]);
      put(this.#files, path, text);
    }
    if (plan) put(this.#missing, plan.from, plan.missing.length > 0 ? plan.missing : undefined);
  }

  #one(files: ReadonlyMap<string, string>): Asked {
    if (this.#chance.oneIn(6)) {
      const from = `folder ${(this.#texts += 1)}`;
      return {
        is: 'read-in',
        from,
        files: Array.from({ length: IMPORTED }, (_, at) => [`read-in/${String(at).padStart(3, '0')}.md`, this.#text(200)]),
      };
    }
    const path = `written/${this.#chance.below(WRITTEN)}.md`;
    const basedOn = files.get(path);
    if (basedOn === undefined) return { is: 'save', path, text: this.#text() };
    return this.#chance.oneIn(5) ? { is: 'delete', path, basedOn } : { is: 'save', path, text: this.#text(), basedOn };
  }

  /** A note that no other is like: mostly short, at times longer than a block of the store. */
  #text(most = this.#chance.pick([300, 300, 5_000, 40_000, 400_000])): string {
    const title = `Note ${(this.#texts += 1)}`;
    const body = 'Κόκκος, ʿudar, weld: dyed twice. '.repeat(1 + this.#chance.below(Math.ceil(most / 33)));
    return `---\nkind: text\ntitle: ${title}\n---\n\n${body}\n`;
  }
}

/** How many answers a wish brings: one a transaction. */
export const stepsIn = (asked: readonly Asked[]): number => asked.flatMap(stepsOf).length;

function stepsOf(asked: Asked): readonly Step[] {
  if (asked.is === 'save') return [{ writes: [[asked.path, asked.text]] }];
  if (asked.is === 'delete') return [{ writes: [[asked.path, undefined]] }];
  const { from, files } = asked;
  const rest = (at: number) => ({ from, missing: files.slice(at).map(([path]) => path) });
  const batches = Array.from({ length: Math.ceil(files.length / BATCH_FILES) }, (_, at) => at * BATCH_FILES);
  return [
    { writes: [], plan: rest(0) },
    ...batches.map((at): Step => ({ writes: files.slice(at, at + BATCH_FILES), plan: rest(at + BATCH_FILES) })),
  ];
}

function put<T>(map: Map<string, T>, key: string, value: T | undefined): void {
  if (value === undefined) map.delete(key);
  else map.set(key, value);
}

const inOrder = ({ files, earlier, missing }: Held): string =>
  JSON.stringify([files, earlier, missing].map((record) => Object.entries(record).toSorted(([a], [b]) => (a < b ? -1 : 1))));
