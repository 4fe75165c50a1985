import type { Instant, NotebookStore, StoreFailure } from '../domain/ports.ts';
import type { Result } from '../domain/result.ts';

/** Days that changes may wait before a reminder (our choice: a fortnight's work can still be written again from memory). */
export const BACKUP_DAYS = 14;

/** What a reader may choose instead; 0 is never. */
export const BACKUP_DAYS_CHOICES = [14, 30, 90, 0] as const;

/** Changes that wait for an export. */
export interface BackupDue {
  /** Notes written since the last export, or ever. */
  readonly notes: number;
  /** When the last export began; absent where there was none. */
  readonly exportedAt?: Instant;
  readonly days: number;
}

const EXPORTED_AT = 'exported-at';
const WAITING_SINCE = 'unexported-since';
const DAYS = 'backup-days';
const DAY = 24 * 60 * 60 * 1000;

/** Knows since when changes wait for an export, and says so once they have waited long enough. It lives in the store's settings. */
export class Backup {
  readonly #store: Pick<NotebookStore, 'setting' | 'keepSetting' | 'stamps'>;
  readonly #now: () => Instant;

  constructor(store: Pick<NotebookStore, 'setting' | 'keepSetting' | 'stamps'>, now: () => Instant) {
    this.#store = store;
    this.#now = now;
  }

  /** Something was written: from the first time on it waits; by a clock that was set back since, from now on. */
  async changed(): Promise<void> {
    const since = await this.#number(WAITING_SINCE);
    if (since === undefined || since > this.#now()) await this.#store.keepSetting(WAITING_SINCE, this.#now());
  }

  /**
   * The whole notebook was exported.
   *
   * @param began when the export began: what was written meanwhile still waits.
   */
  async exported(began: Instant): Promise<void> {
    await this.#store.keepSetting(EXPORTED_AT, began);
    const later = (await this.#savedAfter(began)).map(({ savedAt }) => savedAt);
    await this.#store.keepSetting(WAITING_SINCE, later.length === 0 ? undefined : Math.min(...later));
  }

  /** Chooses after how many days to be reminded; 0 is never. */
  remindAfter(days: number): Promise<Result<void, StoreFailure>> {
    return this.#store.keepSetting(DAYS, days);
  }

  /** What to remind of now; undefined where nothing has waited long enough. */
  async due(): Promise<BackupDue | undefined> {
    const [since, days = BACKUP_DAYS] = [await this.#number(WAITING_SINCE), await this.#number(DAYS)];
    if (days === 0 || since === undefined || this.#now() - since < days * DAY) return undefined;
    const exportedAt = await this.#number(EXPORTED_AT);
    // What is written after the clock was set back may bear an earlier time than the export.
    const after = exportedAt === undefined ? undefined : Math.min(exportedAt, since);
    const notes = (await this.#savedAfter(after)).filter(({ path }) => /\.(?:md|markdown)$/i.test(path)).length;
    return { notes, days, ...(exportedAt !== undefined && { exportedAt }) };
  }

  async #savedAfter(instant: Instant | undefined) {
    const stamps = await this.#store.stamps();
    return stamps.ok ? stamps.value.filter(({ savedAt }) => instant === undefined || savedAt >= instant) : [];
  }

  async #number(key: string): Promise<number | undefined> {
    const found = await this.#store.setting(key);
    return found.ok && typeof found.value === 'number' ? found.value : undefined;
  }
}
