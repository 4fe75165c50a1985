import { readFileSync } from 'node:fs';
import type { BrowserContext } from 'playwright-core';

/** pdf.js in one file, as `unpdf` brings it. */
const PDF_JS = readFileSync(new URL('../../node_modules/unpdf/dist/pdfjs.mjs', import.meta.url), 'utf8');
const HOME = 'http://printed.test';

/** A page of a PDF as pixels, drawn by an independent reader (pdf.js) in a page of its own. */
export interface PrintedPicture {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, alpha, 0–255. */
  readonly pixels: Uint8ClampedArray;
}

/** Draws the first page of a PDF. @param scale pixels to a point of 1/72 inch. */
export async function printedPicture(context: BrowserContext, pdf: Uint8Array, scale: number): Promise<PrintedPicture> {
  const page = await context.newPage();
  await page.route(`${HOME}/**`, (route) =>
    route.request().url().endsWith('.mjs')
      ? route.fulfill({ contentType: 'text/javascript', body: PDF_JS })
      : route.fulfill({
          contentType: 'text/html',
          body: '<canvas></canvas><script type="module">import * as pdf from "/pdf.mjs"; globalThis.pdfReader = pdf;</script>',
        }),
  );
  await page.goto(`${HOME}/`);
  await page.waitForFunction(() => 'pdfReader' in globalThis);
  const drawn = await page.evaluate(
    async ({ base64, zoom }) => {
      interface Reader {
        getDocument(source: object): {
          readonly promise: Promise<{
            getPage(nth: number): Promise<{
              getViewport(size: object): { readonly width: number; readonly height: number };
              render(into: object): { readonly promise: Promise<void> };
            }>;
          }>;
        };
      }
      const { getDocument } = (globalThis as unknown as { pdfReader: Reader }).pdfReader;
      const data = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
      const sheet = await (await getDocument({ data }).promise).getPage(1);
      const viewport = sheet.getViewport({ scale: zoom });
      const canvas = document.querySelector('canvas') ?? document.createElement('canvas');
      canvas.width = Math.ceil(viewport.width);
      canvas.height = Math.ceil(viewport.height);
      const canvasContext = canvas.getContext('2d');
      if (!canvasContext) throw new Error('nothing to draw on');
      await sheet.render({ canvasContext, viewport, canvas }).promise;
      const { data: pixels } = canvasContext.getImageData(0, 0, canvas.width, canvas.height);
      let text = '';
      for (let at = 0; at < pixels.length; at += 0x8000) text += String.fromCharCode(...pixels.subarray(at, at + 0x8000));
      return { width: canvas.width, height: canvas.height, base64: btoa(text) };
    },
    { base64: Buffer.from(pdf).toString('base64'), zoom: scale },
  );
  await page.close();
  return { width: drawn.width, height: drawn.height, pixels: Uint8ClampedArray.from(Buffer.from(drawn.base64, 'base64')) };
}
