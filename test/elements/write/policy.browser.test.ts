import { page } from 'vitest/browser';
import { expect, test } from 'vitest';
import '../../../web/elements/write/tg-note-text.ts';
import type { TgNoteText } from '../../../web/elements/write/tg-note-text.ts';

/** The parts of the shipped policy that an editor could break. */
const POLICY =
  "style-src 'self'; style-src-attr 'unsafe-inline'; img-src 'self' data: blob:; require-trusted-types-for 'script'; trusted-types lit-html tg-scripts";

test('the editor lives under the policy: its styles are adopted, and it writes no HTML', async () => {
  const broken: string[] = [];
  document.addEventListener('securitypolicyviolation', (event) =>
    broken.push(`${event.effectiveDirective} ${event.blockedURI} ${event.sample}`),
  );
  const warmed = document.createElement('tg-note-text');
  document.body.append(warmed);
  await expect.element(page.getByRole('textbox')).toBeVisible();
  warmed.remove();
  const meta = document.createElement('meta');
  meta.httpEquiv = 'Content-Security-Policy';
  meta.content = POLICY;
  document.head.append(meta);

  // The policy holds from here on: a sheet put into the page is refused, which shows that the test can fail.
  document.head.append(Object.assign(document.createElement('style'), { textContent: 'body { color: red }' }));
  await expect.poll(() => broken.length).toBeGreaterThan(0);
  broken.length = 0;

  const element: TgNoteText = Object.assign(document.createElement('tg-note-text'), { text: '---\nkind: x\n---\n# A\n' });
  document.body.append(element);
  await expect.element(page.getByRole('textbox')).toBeVisible();
  element.problems = [{ code: 'kind-unknown', severity: 'error', line: 2, column: 7, from: 10, to: 11, says: 'No.', instead: 'Else.' }];
  await element.updateComplete;
  await new Promise((done) => setTimeout(done, 100));
  expect(broken).toEqual([]);
  expect((element.renderRoot as ShadowRoot).adoptedStyleSheets.length).toBeGreaterThan(1);
  const editor = element.renderRoot.querySelector('.cm-editor');
  expect(editor && getComputedStyle(editor).display).toBe('flex');
});
