import { LAYOUT_VERSION } from './frozen/index-layout.ts';
import { SEARCH_VERSION } from './search-options.ts';

/** Under which name an index is kept beside the notes, and what made it: its bytes' form, and what is a word. */
export const KEPT_INDEX = { name: 'search', madeBy: `${LAYOUT_VERSION}.${SEARCH_VERSION}` } as const;
