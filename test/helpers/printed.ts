import { getDocumentProxy } from 'unpdf';

/** One page of a PDF: its size in points (1/72 inch), rounded, and its words in reading order. */
export interface PrintedPage {
  readonly size: string;
  readonly text: string;
}

/** The pages of a PDF, read back by an independent reader (pdf.js). */
export async function printedPages(pdf: Uint8Array): Promise<readonly PrintedPage[]> {
  const document = await getDocumentProxy(Uint8Array.from(pdf));
  const pages = Array.from({ length: document.numPages }, async (_, at): Promise<PrintedPage> => {
    const page = await document.getPage(at + 1);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('');
    return { size: `${Math.round(right - left)}×${Math.round(top - bottom)}`, text: text.replace(/\s+/g, ' ') };
  });
  return Promise.all(pages);
}
