import type { PublishedView } from '../../notebook/views/published-view.ts';
import { publishedPage } from './published-page.ts';

/** A file of a published folder. */
export interface PublishedFile {
  readonly path: string;
  readonly text: string;
}

/** The files of a published display: a page to read, a page for a screen in the gallery, and the board in words. */
export const publishedFiles = (view: PublishedView): readonly PublishedFile[] => [
  { path: 'index.html', text: publishedPage(view, 'reading') },
  { path: 'gallery.html', text: publishedPage(view, 'gallery') },
  { path: 'board.txt', text: `${view.words}\n` },
];

/** The address a label's code leads to: the page of one colour. */
export const colourAddress = (published: URL, key: string): string => {
  const url = new URL(published);
  url.hash = key;
  return url.href;
};
