import type { PlanItem } from '../domain/pot/dye-day.ts';

/** One dyeing as its address holds it: what goes in, and how many skeins it is. */
export interface TypedItem extends PlanItem {
  /** Skeins of this mass together. */
  readonly skeins: number;
}

/** A day at the pots as its address holds it. */
export interface TypedDyeDay {
  readonly items: readonly TypedItem[];
  /** True where staff plan: only then are amounts of tin and copper worked out. */
  readonly staff: boolean;
  /** When the day begins, `09:00`. */
  readonly begins: string;
}

/** When a day begins where nobody said. Our choice. */
const MORNING = '09:00';

/** The most skeins a pot's codes can number. */
export const MOST_SKEINS = 99;

/** The day an address asks for. Lists run side by side, parted by semicolons: `recipes=a;b`, `grams=100;250`. */
export function dyeDayOf(settings: Readonly<Record<string, string>>): TypedDyeDay {
  const list = (key: string) => (settings[key] ?? '').split(';');
  const [grams, on, skeins, restOf, takenUp, percent] = ['grams', 'on', 'skeins', 'rest-of', 'taken-up', 'percent'].map(list);
  const items = list('recipes').flatMap((recipe, at): TypedItem[] => {
    if (recipe.trim() === '') return [];
    const fibre = plain(on?.[at] ?? '');
    const rest = Number(restOf?.[at] ?? '');
    const uptake = uptakeOf(takenUp?.[at] ?? '');
    const chosen = percentOf(percent?.[at] ?? '');
    return [
      {
        recipe: plain(recipe),
        fibreGrams: Number.parseFloat(grams?.[at] ?? ''),
        skeins: skeinsOf(skeins?.[at] ?? ''),
        ...(fibre !== '' && { fibre }),
        ...(Number.isInteger(rest) && rest > 0 && { exhaustOf: rest - 1 }),
        ...(uptake && { uptake }),
        ...(chosen && { percent: chosen }),
      },
    ];
  });
  const begins = settings['begins'] ?? '';
  return { items, staff: settings['for'] === 'staff', begins: /^(?:[01]\d|2[0-3]):[0-5]\d$/.test(begins) ? begins : MORNING };
}

/** The settings of an address that asks for this day. */
export function settingsOfDyeDay({ items, staff, begins }: TypedDyeDay): Readonly<Record<string, string>> {
  const list = (of: (item: TypedItem) => string): string => {
    const texts = items.map(of);
    return texts.every((text) => text === '') ? '' : texts.join(';');
  };
  const all = {
    recipes: list(({ recipe }) => guarded(recipe)),
    grams: list(({ fibreGrams }) => (Number.isFinite(fibreGrams) ? String(fibreGrams) : '')),
    on: list(({ fibre }) => guarded(fibre ?? '')),
    skeins: list(({ skeins }) => (skeins === 1 ? '' : String(skeins))),
    'rest-of': list(({ exhaustOf }) => (exhaustOf === undefined ? '' : String(exhaustOf + 1))),
    'taken-up': list(({ uptake }) => (uptake ? (uptake.from === uptake.to ? `${uptake.from}` : `${uptake.from}-${uptake.to}`) : '')),
    percent: list(({ percent }) =>
      Object.entries(percent ?? {})
        .map(([what, value]) => `${guarded(what)}:${value}`)
        .join(','),
    ),
    for: staff ? 'staff' : '',
    begins: begins === MORNING ? '' : begins,
  };
  return Object.fromEntries(Object.entries(all).filter(([, text]) => text !== ''));
}

/** One item taken out; what finished its bath, and the numbers behind it, move up. */
export function withoutItem(items: readonly TypedItem[], gone: number): readonly TypedItem[] {
  return items
    .filter((_, at) => at !== gone)
    .map(({ exhaustOf, ...item }) =>
      exhaustOf === undefined || exhaustOf === gone ? item : { ...item, exhaustOf: exhaustOf > gone ? exhaustOf - 1 : exhaustOf },
    );
}

const skeinsOf = (text: string): number => {
  const skeins = Number(text);
  return Number.isInteger(skeins) && skeins >= 1 && skeins <= MOST_SKEINS ? skeins : 1;
};

/** `0.6` or `0.5-0.7`. */
function uptakeOf(text: string): TypedItem['uptake'] {
  const [, first, last] = /^((?:\d+\.)?\d+|\.\d+)(?:[-–]((?:\d+\.)?\d+|\.\d+))?$/.exec(text.trim()) ?? [];
  const [from, to] = [Number(first), Number(last ?? first)];
  return from >= 0 && to >= from && to <= 1 ? { from, to } : undefined;
}

/** `alum:15,madder:50`. */
function percentOf(text: string): TypedItem['percent'] {
  const pairs = text.split(',').flatMap((pair) => {
    const [what = '', value = ''] = pair.split(':');
    return what !== '' && Number(value) > 0 ? [[plain(what), Number(value)] as const] : [];
  });
  return pairs.length === 0 ? undefined : Object.fromEntries(pairs);
}

/** A name whose signs would part the list. */
const guarded = (text: string): string => text.replace(/[%;:,]/g, encodeURIComponent);
const plain = (text: string): string => {
  try {
    return decodeURIComponent(text.trim());
  } catch {
    return text.trim();
  }
};
