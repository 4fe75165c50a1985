// Choices of a reader about the page itself. They are this browser's, not the notebook's.
const VIEW = 'tenterground-view';
const KEYS = 'tenterground-keys';

/** The ground the page lies on. */
export type Ground = 'paper' | 'evening';

const kept = (key: string): string | null => {
  try {
    return globalThis.localStorage.getItem(key);
  } catch {
    // A browser that keeps nothing for this page refuses even to be asked.
    return null;
  }
};

const keep = (key: string, value: string): void => {
  try {
    globalThis.localStorage.setItem(key, value);
  } catch {
    // It then lasts as long as the page.
  }
};

/** Lays the page on the ground that was chosen before, if one was. */
export function layKeptGround(root: HTMLElement): void {
  const ground = kept(VIEW);
  if (ground === 'paper' || ground === 'evening') root.dataset['view'] = ground;
}

/** Changes paper for evening or back, and keeps the choice. */
export function changeGround(root: HTMLElement): Ground {
  const shown = root.dataset['view'] ?? (globalThis.matchMedia('(prefers-color-scheme: dark)').matches ? 'evening' : 'paper');
  const next = shown === 'evening' ? 'paper' : 'evening';
  root.dataset['view'] = next;
  keep(VIEW, next);
  return next;
}

/** Whether single keys do anything: someone who speaks to their machine, or whose hand slips, can turn them off. */
export const singleKeysWork = (): boolean => kept(KEYS) !== 'off';

export const keepSingleKeys = (work: boolean): void => keep(KEYS, work ? 'on' : 'off');
