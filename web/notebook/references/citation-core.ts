/**
 * What the readers of BibTeX and RIS need of `@citation-js/core`, and no more: a build puts this file in its place,
 * because the whole of it also fetches from the network, and nothing here ever does.
 */
import { Grammar } from '@citation-js/core/lib/util/grammar.js';
import { Translator } from '@citation-js/core/lib/util/translator.js';

export const util = { Grammar, Translator };

/** Its warnings are about entries; ours are made from what was read. */
export const logger = { warn: (): void => undefined, unmapped: (): void => undefined };
