import type { StoreFailure } from '../../domain/ports.ts';

/** Why there is no copy. */
export const takeOutFailureWords = {
  quota: 'The browser gave no room to pack the notebook. Free some space, then export again.',
  blocked: 'Another tab holds an older state of the notebook open. Close it, then export again.',
  terminated: 'The browser closed the notebook. Reload the page, then export again.',
  'newer-version': 'A newer version of this page has taken the notebook over. Reload the page, then export again.',
  closed: 'The notebook was closed. Reload the page, then export again.',
  unavailable: 'The browser did not give the notebook out, and does not say why. Reload the page, then export again.',
  missing: 'This file is no longer in the notebook.',
} as const satisfies Record<StoreFailure | 'missing', string>;
