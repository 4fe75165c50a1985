import { type Page } from 'playwright-core';
import { makeZip } from './make-zip.ts';

/** Reads notes in as a zip, by hand, and waits for the report. */
export async function readIn(page: Page, address: string, notes: Readonly<Record<string, string>>): Promise<void> {
  await page.goto(`${address}#/notebook?read-in=1`);
  const encoder = new TextEncoder();
  const buffer = Buffer.from(makeZip(Object.entries(notes).map(([path, text]) => ({ path, bytes: encoder.encode(text) }))));
  await page.getByLabel('A zip').setInputFiles({ name: 'notes.zip', mimeType: 'application/zip', buffer });
  await page.getByRole('region', { name: 'Report' }).waitFor();
}
