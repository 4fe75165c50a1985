import type { DraftDrawer } from '../../notebook/draft-shelf.ts';

/**
 * A drawer in the browser's storage of this tab: it outlasts a page that is loaded again, also one that crashed.
 *
 * Where the browser gives no storage, or no more of it, what it is to hold stays with the page alone.
 */
export const tabDrawer = (name: string): DraftDrawer => ({
  read: () => {
    try {
      return globalThis.sessionStorage.getItem(name) ?? '';
    } catch {
      return '';
    }
  },
  write: (text) => {
    try {
      globalThis.sessionStorage.setItem(name, text);
    } catch {
      // The page asks its reader before it is left.
    }
  },
});
