import type { StoreFailure } from '../domain/ports.ts';

const BY_NAME: ReadonlyMap<string, StoreFailure> = new Map([
  ['QuotaExceededError', 'quota'],
  ['VersionError', 'newer-version'],
  ['InvalidStateError', 'closed'],
]);

/** What an IndexedDB error means to the reader. Errors it has no name for leave the store unavailable. */
export function failureOf(error: unknown): StoreFailure {
  return (error instanceof Error || error instanceof DOMException ? BY_NAME.get(error.name) : undefined) ?? 'unavailable';
}
