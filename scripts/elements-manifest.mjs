/** What the elements for other people's pages are, as a custom-elements manifest and as types: read from their sources. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript-js';
import { ROOT } from './setup.mjs';

/** The elements, and the attributes that the script which fills them from a published notebook reads beside their own. */
const ELEMENTS = [
  ['web/elements/swatch/tg-swatch.ts', []],
  ['web/elements/recipe/tg-recipe-card.ts', ['notebook', 'site']],
  ['web/elements/ask/tg-ask.ts', ['notebook', 'site', 'region', 'when', 'colour', 'dye', 'fibre', 'wearer']],
  ['web/elements/palette/tg-palette.ts', ['notebook', 'site', 'region', 'when', 'fibre', 'wearer']],
  ['web/elements/availability-chart/tg-availability-chart.ts', ['notebook', 'site', 'region']],
];

const FILLED = {
  notebook: 'Address of a published notebook: the list that `tenterground list FOLDER --whole` writes.',
  site: "Address of the notebook's own page, where links to its other views lead; without it they are plain words.",
  region: 'Region by id, title or name.',
  when: 'Date, as people write it or EDTF.',
  colour: 'Hex or CSS colour, L,a,b, a colour-word, a recipe or a trial of the notebook.',
  dye: 'Dyestuff by id, title or name, instead of a colour.',
  fibre: 'Fibre by id, title or name.',
  wearer: 'Wearer by id, title or name.',
};

/** What a page may say of the looks of every element, as a custom property; defaults are read from the tokens. */
const TOKENS = {
  '--tg-ink': 'Words and marks.',
  '--tg-ink-quiet': 'Words that stand back: numbers, sources, notes.',
  '--tg-ground': 'What the cloth lies on.',
  '--tg-surface': 'A part that lies above the ground.',
  '--tg-well': 'A part that lies below the ground.',
  '--tg-hairline': 'Lines that only part things.',
  '--tg-edge': 'Edges of controls.',
  '--tg-focus': 'The outline of what has the focus.',
  '--tg-font-reading': 'Typeface of headings and running words.',
  '--tg-font-label': 'Typeface of labels, numbers and controls.',
  '--tg-type-base': 'Size of running words.',
  '--tg-type-small': 'Size of labels.',
};
const TOKENS_CSS = readFileSync(join(ROOT, 'web/styles/tokens.css'), 'utf8');

const tokens = Object.entries(TOKENS).map(([name, description]) => {
  const value = new RegExp(`^  ${name}: ([^;]+);`, 'm').exec(TOKENS_CSS)?.[1];
  if (value === undefined) throw new Error(`${name} is no token`);
  return { name, description, default: value };
});

/** @param {ts.Node} node */
const docOf = (node) => ts.getJSDocCommentsAndTags(node).flatMap((doc) => (ts.isJSDoc(doc) ? [doc] : []))[0];
/** @param {ts.JSDoc | undefined} doc */
const textOf = (doc) => (ts.getTextOfJSDocComment(doc?.comment) ?? '').replace(/\s+/g, ' ').trim();

/**
 * The tags of one name in an element's doc block, as name and description: `@slot note - A remark.`
 * @param {string} block
 * @param {string} tag
 */
const tagged = (block, tag) =>
  [...block.matchAll(new RegExp(`@${tag}\\s+(?:\\{([^}]*)\\}\\s+)?(\\[?[\\w-]*(?:=[^\\]]*)?\\]?)\\s*-\\s*([^\\n]+)`, 'g'))].map(
    ([, type, name = '', description = '']) => ({
      ...(type ? { type: { text: type } } : {}),
      name: name.replace(/^\[|\]$/g, '').replace(/=.*/, ''),
      description: description.trim(),
    }),
  );

/**
 * @param {string} path
 * @param {readonly string[]} more
 */
function declarationOf(path, more) {
  const source = ts.createSourceFile(path, readFileSync(join(ROOT, path), 'utf8'), ts.ScriptTarget.Latest, true);
  const found = source.statements.find((one) => ts.isClassDeclaration(one));
  if (!found || !ts.isClassDeclaration(found)) throw new Error(`${path} holds no element`);
  const block = docOf(found)?.getText() ?? '';
  const tagName = /@customElement\('([^']+)'\)/.exec(found.getText())?.[1] ?? '';
  const members = found.members.flatMap((member) => {
    if (!ts.isPropertyDeclaration(member)) return [];
    const decorator = (ts.getDecorators(member) ?? []).map((one) => one.getText()).find((text) => text.startsWith('@property('));
    if (decorator === undefined) return [];
    const name = member.name.getText();
    const attribute = /attribute:\s*false/.test(decorator)
      ? undefined
      : (/attribute:\s*'([^']+)'/.exec(decorator)?.[1] ?? name.toLowerCase());
    const type = member.type?.getText() ?? /type:\s*(\w+)/.exec(decorator)?.[1]?.toLowerCase() ?? 'string';
    return [
      {
        kind: 'field',
        name,
        type: { text: type },
        description: textOf(docOf(member)),
        ...(attribute === undefined ? {} : { attribute }),
        ...(member.initializer ? { default: member.initializer.getText() } : {}),
      },
    ];
  });
  return {
    kind: 'class',
    name: found.name?.getText() ?? '',
    tagName,
    customElement: true,
    summary: /@summary\s+([^\n]+(?:\n \*   [^\n]+)*)/.exec(block)?.[1]?.replace(/\s*\n \*\s+/g, ' ') ?? '',
    members,
    attributes: [
      ...members.flatMap(({ attribute, name, type, description }) =>
        attribute === undefined ? [] : [{ name: attribute, fieldName: name, type, description }],
      ),
      ...more.map((name) => ({ name, type: { text: 'string' }, description: FILLED[/** @type {keyof typeof FILLED} */ (name)] })),
    ],
    events: [
      ...tagged(block, 'event'),
      ...(more.includes('notebook')
        ? [
            {
              name: 'tg-notebook-error',
              type: { text: 'CustomEvent<{ reason: string }>' },
              description: 'The notebook could not be opened.',
            },
          ]
        : []),
    ],
    slots: tagged(block, 'slot'),
    cssParts: tagged(block, 'csspart'),
    cssProperties: [...tagged(block, 'cssproperty'), ...tokens],
  };
}

/** The manifest, schema 1.0.0, for one module that holds every element. @param {string} module its file. */
export function elementsManifest(module) {
  const declarations = ELEMENTS.map(([path, more]) => declarationOf(/** @type {string} */ (path), /** @type {string[]} */ (more)));
  const exports = declarations.map(({ name, tagName }) => ({
    kind: 'custom-element-definition',
    name: tagName,
    declaration: { name, module },
  }));
  return { schemaVersion: '1.0.0', modules: [{ kind: 'javascript-module', path: module, declarations, exports }] };
}

/** Types of the elements by their tags. @param {ReturnType<typeof elementsManifest>} manifest */
export function elementsTypes({ modules }) {
  const plain = /** @type {Readonly<Record<string, string>>} */ ({ string: 'string', number: 'number', boolean: 'boolean' });
  const classes = modules[0]?.declarations.map(
    ({ name, summary, members }) =>
      `/** ${summary} */\nexport interface ${name} extends HTMLElement {\n${members
        .filter(({ attribute }) => attribute !== undefined)
        .map((one) => `  /** ${one.description} */\n  ${one.name}: ${plain[one.type.text] ?? 'string | undefined'};\n`)
        .join('')}}\n`,
  );
  const tags = modules[0]?.declarations.map(({ tagName, name }) => `    '${tagName}': ${name};\n`);
  return `${classes?.join('\n') ?? ''}\ndeclare global {\n  interface HTMLElementTagNameMap {\n${tags?.join('') ?? ''}  }\n}\n`;
}
