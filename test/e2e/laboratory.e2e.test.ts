import { afterAll, beforeAll, expect, test } from 'vitest';
import { accessibilityFaults, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

test('a report typed by CAS number is answered, kept as a textile, and then speaks on the dyestuff’s page, chart and verdict', async () => {
  const page = await site.open('#/ask?colour=madder-alum-wool&region=hanse-towns&when=1345&fibre=wool');
  await page.getByRole('link', { name: 'Ask what dyed the thread' }).click();
  const field = page.getByLabel(/Compound, any usual name/);
  for (const compound of ['72-48-0', '1,2,4-trihydroxyanthraquinone']) {
    await field.fill(compound);
    await field.press('Enter');
  }
  await page.getByLabel('Ratio').selectOption('alizarin:purpurin');
  await page.getByLabel(/^Value/).fill('3');
  await page.getByRole('button', { name: 'Add the ratio' }).click();
  await page.getByRole('heading', { level: 2, name: 'Madder' }).waitFor();
  await page
    .getByText(/C\.I\. Natural Red 8/)
    .first()
    .waitFor();
  // What is set aside by place and date says why: synthetic alizarin is not yet there.
  await page.getByRole('heading', { name: 'Set aside by place and date' }).waitFor();
  await page
    .getByText(/Synthetic alizarin.*would explain alizarin/i)
    .first()
    .waitFor();
  // The report is in the address: opened anew it is the same.
  const address = page.url();
  expect(decodeURIComponent(address)).toContain('found=alizarin;purpurin');
  await page.goto(`${site.origin}/#/dyestuffs`);
  await page.goto(address);
  await page.getByRole('heading', { level: 2, name: 'Madder' }).waitFor();

  await page.getByLabel('Madder', { exact: true }).check();
  await page.getByRole('button', { name: 'Draft the note' }).click();
  const draft = page.locator('tg-lab-keep textarea');
  const text = await draft.inputValue();
  expect(text).toMatch(/dyes: \[madder\]/);
  await draft.fill(text.replace(/^title: .*$/m, 'title: The quay girdle').replace('threads:', 'source: cardon-2007, p. 1\nthreads:'));
  const id = /textiles\/(.*)\.md/.exec(await page.locator('tg-lab-keep label', { hasText: 'textiles/' }).innerText())?.[1] ?? '';
  await page.getByRole('button', { name: 'Save this note' }).click();
  await page.getByText(/^Saved as textiles\//).waitFor();

  await page.goto(`${site.origin}/#/dyestuffs/madder`);
  await page.getByRole('link', { name: 'The quay girdle' }).first().waitFor();
  await page.goto(`${site.origin}/#/ask?dye=madder&region=hanse-towns&when=1345`);
  await page.locator(`tg-answer a[href*="${id}"]`).first().waitFor();
  await page.goto(`${site.origin}/#/who-had-what?region=hanse-towns&year=1345&origin=find`);
  await page.locator('tg-availability-chart').waitFor();
  await expect
    .poll(() =>
      page
        .locator('tg-availability-chart')
        .evaluate((chart) =>
          (chart as HTMLElement & { rows: readonly { id: string; bands: readonly { claimKey: string }[] }[] }).rows
            .filter((row) => row.id === 'madder')
            .flatMap(({ bands }) => bands.map(({ claimKey }) => claimKey)),
        ),
    )
    .toEqual(expect.arrayContaining([expect.stringContaining(id)]));
  // And back from the note to the laboratory with its compounds.
  await page.goto(`${site.origin}/#/notebook/${id}`);
  await page.getByRole('link', { name: 'Ask what the compounds of its thread mean' }).click();
  await page.getByRole('heading', { level: 2, name: /Madder/ }).waitFor();
  expect(site.complaints).toEqual([]);
}, 60_000);

test('a green is a mixture, an unsure one says what cannot be told apart and which test would tell', async () => {
  const page = await site.open('#/ask/laboratory?found=luteolin;indigotin&absent=alizarin&region=hanse-towns&when=1370&fibre=wool');
  await page.getByRole('heading', { level: 2, name: /with/ }).waitFor();
  await page
    .getByText(/No compound in these tables tells (?:woad|indigo)/)
    .first()
    .waitFor();
  await page
    .getByText(/Look for genistein/)
    .first()
    .waitFor();
});

test('the map is reached from the chart and from a dyestuff’s page', async () => {
  const page = await site.open('#/who-had-what?region=hanse-towns&year=1370');
  await page.getByRole('link', { name: /How far a source reached in 1370/ }).click();
  await page.locator('tg-reach-map').waitFor();
  await page.goto(`${site.origin}/#/dyestuffs/weld`);
  await page.getByRole('link', { name: /How far it reached/ }).click();
  await page.locator('tg-reach-map').waitFor();
  expect(page.url()).toContain('dye=weld');
});

test('no accessibility faults with the figures open, on a phone and in the evening', async () => {
  for (const opening of [{ width: 390 }, { dark: true }]) {
    const page = await site.open('#/ask/laboratory?found=luteolin;indigotin&region=hanse-towns&when=1370', {
      ...opening,
      bypassPolicy: true,
    });
    await page.getByText(/figures it was reckoned with/).click();
    await page.getByLabel('luteolin: gone after 250 years').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= globalThis.innerWidth)).toBe(true);
  }
});
