import { readFileSync } from 'node:fs';

/** A file of a notebook that tries to run something: everything it holds calls `fired`, or asks another origin. */
export interface HostileFile {
  readonly path: string;
  readonly text: string;
}

const ELSEWHERE = 'https://elsewhere.invalid/x';

/** The known ways for words to become script in a page: markup, attributes, addresses, styles, templates, and what closes the element around them. */
export const VECTORS: readonly string[] = [
  '<script>fired()</script>',
  '<img src=x onerror=fired()>',
  '"><svg/onload=fired()>',
  "' autofocus onfocus='fired()",
  '</title></style></textarea></script><script>fired()</script>',
  '<!--><script>fired()</script>-->',
  '<iframe srcdoc="<script>parent.fired()</script>"></iframe>',
  '<a href="javascript:fired()">x</a>',
  '<details open ontoggle=fired()>x',
  '<math><mtext></p><style><img src=x onerror=fired()>',
  '<object data="javascript:fired()"></object><embed src="javascript:fired()">',
  `<base href="${ELSEWHERE}"><link rel=stylesheet href="${ELSEWHERE}">`,
  '<meta http-equiv=refresh content="0;url=javascript:fired()">',
  '<template shadowrootmode=open><script>fired()</script></template>',
  '<form action=javascript:fired()><input autofocus onfocus=fired()>',
  '<video><source onerror=fired()></video><audio src=x onerror=fired()>',
  'javascript:fired()',
  'JaVa\u0001ScRiPt:fired()',
  'data:text/html,<script>parent.fired()</script>',
  '{{constructor.constructor("fired()")()}} ${fired()} #{fired()} <%= fired() %>',
  `red;background:url(${ELSEWHERE});x:expression(fired())`,
  `<img src="${ELSEWHERE}" srcset="${ELSEWHERE} 2x">`,
  '&lt;img src=x onerror=fired()&gt; &#x3c;script&#x3e;fired()&#x3c;/script&#x3e;',
  '\u202Etpircs\u202C \u2066<img src=x onerror=fired()>\u2069',
];

/** Markdown in which addresses, raw markup, tables and references all try. */
const BODY = `

# A heading <img src=x onerror=fired()>

${VECTORS.map((vector) => `- ${vector.replaceAll('\n', ' ')}`).join('\n')}

[link](javascript:fired()) [link](<java\tscript:fired()>) [link](data:text/html,<script>fired()</script>) <javascript:fired()> [r][r]
[link](https://x.invalid "&quot; onmouseover=fired()") ![](javascript:fired()) ![](photos/evil.svg) ![x](../photos/evil.svg) ![](${ELSEWHERE})

[r]: javascript:fired() "x"

<script>fired()</script>

<svg onload="fired()"><script>fired()</script></svg>

| <img src=x onerror=fired()> | b |
| --- | --- |
| [x](vbscript:fired()) | \`<script>fired()</script>\` |
`;

const SVG = `<svg xmlns="http://www.w3.org/2000/svg" onload="parent.fired();fired()" width="9" height="9"><script>parent.fired();fired()</script><image href="${ELSEWHERE}" /><foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><img src="x" onerror="fired()"/></body></foreignObject></svg>`;

/** Keys whose values are words of the writer's own. */
const WORDY =
  /^(\s*(?:- )?(?:title|note|says|by|vessel|part|price|context|doubt|where|headline|text|latin|as-written|name|reason): )("?)([^"'\n[\]{}|>]+)\2$/gm;

function hostile({ path, text }: HostileFile, at: number): HostileFile {
  let turn = at;
  const quoted = (words: string) => `'${words.replaceAll("'", "''")}'`;
  const words = text.replace(WORDY, (_, key: string, _quote: string, value: string) => `${key}${quoted(`${value} ${vectorAt(turn++)}`)}`);
  const end = words.indexOf('\n---', 3);
  if (end < 0) return { path, text: words + BODY };
  const keys = `\n"${'<img src=x onerror=fired()>'}": '<script>fired()</script>'\n__proto__: { fired: true }\nconstructor: fired\ntoString: fired`;
  return { path, text: `${words.slice(0, end)}${keys}${words.slice(end)}${BODY}` };
}

/** A vector that YAML may hold in quotes. */
const vectorAt = (turn: number): string => (VECTORS[turn % VECTORS.length] ?? '').replaceAll('\u0001', '');

/** The demonstration with script in every title, name, remark, key, citation and body, and photos, remarks and file names that are no better. */
export function hostileNotebook(): readonly HostileFile[] {
  const demo = JSON.parse(readFileSync(new URL('../../dist/site/demo.json', import.meta.url), 'utf8')) as {
    readonly files: readonly HostileFile[];
  };
  const bibliography = demo.files.find(({ path }) => path === 'bibliography.json');
  const sources = (JSON.parse(bibliography?.text ?? '[]') as Record<string, unknown>[]).map((source, at) => ({
    ...source,
    title: `${String(source['title'])} ${vectorAt(at)}`,
    'container-title': vectorAt(at + 1),
    author: [{ family: vectorAt(at + 2), given: vectorAt(at + 3) }],
    URL: 'javascript:fired()',
    DOI: `10.1/"onmouseover="fired()`,
    ...JSON.parse('{"__proto__":{"fired":true},"constructor":"fired"}'),
  }));
  const remarks = VECTORS.map((vector, at) => ({
    id: `${at}${vector}`,
    note: 'kermes',
    line: 1,
    text: `so ${vector}`,
    by: vector,
    at: '2026-01-02T03:04:05Z',
  }));
  return [
    ...demo.files.filter(({ path }) => path.endsWith('.md')).map(hostile),
    ...demo.files.filter(({ path }) => path.startsWith('spectra/')),
    { path: 'bibliography.json', text: JSON.stringify(sources) },
    { path: 'remarks.json', text: JSON.stringify({ format: 'tenterground-remarks', version: 1, remarks }) },
    { path: 'photos/evil.svg', text: SVG },
    { path: 'photos/"onerror="fired()".svg', text: SVG },
    { path: 'trials/<img src=x onerror=fired()>.md', text: `---\nkind: trial\ntitle: ${"'<img src=x onerror=fired()>'"}\n---\n${BODY}` },
    { path: 'trials/__proto__.md', text: '---\nkind: trial\nid: __proto__\ntitle: toString\nnames: [constructor, __proto__]\n---\n' },
    {
      path: 'trials/evil-photo.md',
      text: `---\nkind: trial\ntitle: Evil photo\nrecipe: madder-alum-wool\nfibre: wool\nphoto: photos/evil.svg\ncolour: { hex: '#aa0000;background:url(${ELSEWHERE})' }\ncode: '"><img src=x onerror=fired()>'\n---\n![](../photos/evil.svg) ![](<../photos/"onerror="fired()".svg>)\n`,
    },
  ];
}
