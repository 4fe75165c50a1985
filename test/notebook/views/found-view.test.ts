import { expect, test } from 'vitest';
import { foundView } from '../../../web/notebook/views/found-view.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';

const places = (body: string) => {
  const notebook = aNotebook({ 'reading/page.md': `${aNote('kind: plain\ntitle: Page')}\n${body}\n` });
  const hit = { file: 'reading/page.md', near: false, why: [], marks: ['madder'] };
  const [group] = foundView(notebook, { words: 'madder' }, [hit]).groups;
  return group?.notes[0]?.places.map(({ before, found, after }) => `${before}[${found}]${after}`);
};

test('a link that says what was looked for is shown once, not again for where it leads', () => {
  expect(places('Violets with [madder](madder.md), once.\n\nMadder reds.')).toEqual(['Violets with [madder], once.', '[Madder] reds.']);
});

test('where a link leads is shown when nothing else in the text answers', () => {
  expect(places('Violets with [the root](madder.md).')).toEqual(['Violets with the root ([madder]).']);
});
