import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { BuiltSite, launchChromium } from './built-site.ts';

/** What the tests of a file share, from the first of them on. */
export interface SiteAndBrowser {
  readonly site: BuiltSite;
  readonly browser: Browser;
}

/** Opens a copy of the built site and a browser before a file's tests, and ends both after them. */
export function siteAndBrowser(): SiteAndBrowser {
  let [site, browser]: [BuiltSite?, Browser?] = [];
  const opened = <T>(one: T | undefined): T => {
    if (one === undefined) throw new Error('nothing is open before the first test');
    return one;
  };
  beforeAll(async () => {
    site = await new BuiltSite().open();
    browser = await launchChromium();
  });
  afterAll(async () => {
    await browser?.close();
    await site?.remove();
  });
  return {
    get site() {
      return opened(site);
    },
    get browser() {
      return opened(browser);
    },
  };
}
