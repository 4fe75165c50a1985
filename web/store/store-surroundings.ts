import type { Instant } from '../domain/ports.ts';

/** What a store takes from the world around it, so that tests can say what time it is. */
export interface StoreSurroundings {
  now(): Instant;
  /** A name nobody else has. */
  newId(): string;
}
