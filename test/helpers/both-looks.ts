import type { Page } from 'playwright-core';
import { accessibilityFaults } from './watched-site.ts';

/** What axe finds in a page opened past its policy, and what runs off it: by day on a desk, in the evening on a phone. */
export async function faultsInBothLooks(page: Page): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const [colorScheme, width] of [
    ['light', 1280],
    ['dark', 390],
  ] as const) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 844 });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    if (wide > width) faults.push(`${colorScheme}, ${width} px: the page is ${wide} px wide`);
    faults.push(...(await accessibilityFaults(page)).map((fault) => `${colorScheme}, ${width} px: ${fault}`));
  }
  return faults;
}
