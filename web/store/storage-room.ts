/** Whether the browser has promised to keep the notebook until its reader removes it. */
export type Persistence = 'granted' | 'refused' | 'unknown';

/** How much of the browser's room is used, as far as it says: estimates, in bytes. */
export interface StorageRoom {
  readonly usedBytes: number;
  readonly quotaBytes: number;
  readonly persistence: Persistence;
}

/** Asks the browser to keep the notebook when room runs short. Some browsers ask their reader, so ask after a first save. */
export async function askToPersist(storage: StorageManager | undefined = globalThis.navigator?.storage): Promise<Persistence> {
  if (!storage?.persist) return 'unknown';
  return (await storage.persist().catch(() => false)) ? 'granted' : 'refused';
}

/** The room there is; undefined where the browser does not say. */
export async function storageRoom(storage: StorageManager | undefined = globalThis.navigator?.storage): Promise<StorageRoom | undefined> {
  if (!storage?.estimate) return undefined;
  const [estimate, persisted] = await Promise.all([
    storage.estimate().catch(() => undefined),
    storage.persisted?.().catch(() => undefined) ?? Promise.resolve(undefined),
  ]);
  if (estimate?.usage === undefined || estimate.quota === undefined) return undefined;
  const persistence = persisted === undefined ? 'unknown' : persisted ? 'granted' : 'refused';
  return { usedBytes: estimate.usage, quotaBytes: estimate.quota, persistence };
}
