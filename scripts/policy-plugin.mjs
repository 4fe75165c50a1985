/** The content security policy: written once, in web/index.html, kept by the built page and sent again as a header. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const PAGE = fileURLToPath(new URL('../web/index.html', import.meta.url));
const META = /<meta\s+http-equiv="Content-Security-Policy"\s+content="([^"]*)"\s*\/?>/;

/** The policy as the page states it, in one line. */
function statedPolicy() {
  const policy = META.exec(readFileSync(PAGE, 'utf8'))?.[1];
  if (!policy) throw new Error('web/index.html states no content security policy');
  return policy.replace(/\s+/g, ' ').trim();
}

/** What `npm start` sends with every file; `frame-ancestors` counts only in a header. */
export const policyHeaders = () => ({
  'Content-Security-Policy': `${statedPolicy()}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
});

/**
 * Takes the policy off the page in the dev server, whose live styles and overlay it would block.
 * @returns {import('vite').Plugin}
 */
export function policyOnlyWhenBuilt() {
  return {
    name: 'tenterground:policy-only-when-built',
    apply: 'serve',
    transformIndexHtml: { order: 'pre', handler: (html) => html.replace(META, '') },
  };
}
