import { isAlias, isCollection, isMap, isNode, isScalar, parseDocument } from 'yaml';
import type { Alias, Node, YAMLMap } from 'yaml';
import type { Diagnostic, Report, TextRange } from '../diagnostic.ts';
import { startOf } from './line-column.ts';

/** Front matter as a tree of nodes; nothing in it is turned into an object of the language. */
export interface YamlTree {
  /** Absent where the front matter is empty or no map. */
  readonly map?: YAMLMap;
  /** True where parts may be missing because the YAML itself is broken. */
  readonly broken: boolean;
  /** Where a node stands in the whole file, without trailing space or comment. */
  readonly range: (node: Node) => TextRange;
  /** The node an alias stands for, the node itself otherwise; undefined where an alias cannot or must not be followed. */
  readonly resolve: (node: unknown) => Node | undefined;
}

/** Levels of maps and lists in one another: twice what any kind of note asks for (our choice). */
const DEEPEST = 24;
/** Nodes that aliases may stand for, all together (our choice: a note repeats a handful of things at most). */
const MOST_ALIASED = 500;
/** UTF-16 code units of front matter (our choice: about two hundred times a long note's). */
const LONGEST = 400_000;
/** Findings about broken YAML told for one note; more would bury the first. */
const MOST_FINDINGS = 20;

/**
 * Reads front matter as YAML 1.2, core schema.
 *
 * @param source the whole file.
 * @param within where its YAML stands.
 * @error `yaml-broken`, `yaml-tab`, `yaml-key-twice`, `yaml-too-deep`, `yaml-alias-bomb`, `front-matter-not-map`, `file-too-large`.
 */
export function readYaml(source: string, within: TextRange, report: Report): YamlTree {
  const [base, end] = within;
  const range = (node: Node): TextRange => rangeIn(node, base);
  const none: YamlTree = { broken: true, range, resolve: () => undefined };
  if (end - base > LONGEST) {
    report(finding('file-too-large', within, [String(end - base), String(LONGEST)]));
    return none;
  }
  const parsed = parse(source.slice(base, end));
  if (parsed === undefined) {
    report(finding('yaml-too-deep', within));
    return none;
  }
  const findings: Diagnostic[] = parsed.errors.slice(0, MOST_FINDINGS * 5).map(({ code, pos }) => {
    const at = inside(pos, within);
    return code === 'TAB_AS_INDENT' ? finding('yaml-tab', at, [String(startOf(source, at).line)]) : finding(codeOf(code), at, [code]);
  });
  for (const { code, pos } of parsed.warnings)
    findings.push({ ...finding('yaml-broken', inside(pos, within), [code]), severity: 'warning' });
  const broken = parsed.errors.length > 0;
  const root: unknown = parsed.contents;
  const survey = surveyTree(root, range);
  findings.push(...survey.findings);
  tell(findings, report);
  const resolve = (node: unknown): Node | undefined => (isAlias(node) ? survey.targets.get(node) : isNode(node) ? node : undefined);
  if (isMap(root)) return { map: root as YAMLMap, broken, range, resolve };
  const empty = root === null || (isScalar(root) && root.value === null);
  if (!empty && !broken) report(finding('front-matter-not-map', isNode(root) ? range(root) : within));
  return { broken: broken || !empty, range, resolve };
}

function parse(text: string) {
  try {
    // Keys that stand twice are looked for below: the library compares every key with every other.
    return parseDocument(text, {
      version: '1.2',
      schema: 'core',
      merge: false,
      uniqueKeys: false,
      prettyErrors: false,
      logLevel: 'silent',
    });
  } catch {
    // Only nesting beyond the call stack has ever been seen to throw; whatever else might is not for the reader to suffer from.
    return undefined;
  }
}

const codeOf = (code: string): 'yaml-too-deep' | 'yaml-broken' => (code === 'RESOURCE_EXHAUSTION' ? 'yaml-too-deep' : 'yaml-broken');

const finding = (code: Diagnostic['code'], range: TextRange, about: readonly string[] = []): Diagnostic => ({
  code,
  severity: 'error',
  range,
  about,
});

const inside = (pos: readonly [number, number], [base, end]: TextRange): TextRange => {
  const start = Math.min(base + pos[0], end);
  return [start, Math.max(start, Math.min(base + pos[1], end))];
};

/** One finding a place and code, one of depth in all, and no more than can be read. */
function tell(findings: readonly Diagnostic[], report: Report): void {
  const told = new Set<string>();
  for (const found of findings) {
    const once = found.code === 'yaml-too-deep' || found.code === 'yaml-alias-bomb' ? found.code : `${found.code} ${found.range[0]}`;
    if (told.has(once) || told.size >= MOST_FINDINGS) continue;
    told.add(once);
    report(found);
  }
}

/** The library lets a collection run on over what follows it; here it ends with the last thing in it. */
function rangeIn(node: Node, base: number): TextRange {
  let last: Node = node;
  for (let depth = 0; depth <= DEEPEST && isCollection(last) && last.flow !== true; depth++) {
    const item: unknown = last.items.at(-1);
    const inner: unknown = isMap(last)
      ? ((item as { value?: unknown } | undefined)?.value ?? (item as { key?: unknown } | undefined)?.key)
      : item;
    if (!isNode(inner) || !inner.range) break;
    last = inner;
  }
  return [base + (node.range?.[0] ?? 0), base + (last.range?.[1] ?? 0)];
}

interface Survey {
  readonly findings: readonly Diagnostic[];
  readonly targets: ReadonlyMap<Alias, Node>;
}

/** One walk over the tree: how deep it goes, which keys stand twice, and what its aliases would grow to. */
function surveyTree(root: unknown, range: (node: Node) => TextRange): Survey {
  const findings: Diagnostic[] = [];
  const targets = new Map<Alias, Node>();
  const anchors = new Map<string, { readonly node: Node; size?: number }>();
  let aliased = 0;

  const sizeOf = (node: unknown, depth: number): number => {
    if (isAlias(node)) return sizeOfAlias(node);
    if (!isNode(node)) return 0;
    const anchor = isScalar(node) || isCollection(node) ? node.anchor : undefined;
    const held: { readonly node: Node; size?: number } = { node };
    if (anchor !== undefined) anchors.set(anchor, held);
    let size = 1;
    if (isCollection(node)) {
      if (depth > DEEPEST) findings.push(finding('yaml-too-deep', range(node)));
      else if (isMap(node)) {
        const seen = new Set<string>();
        for (const { key, value } of node.items) {
          if (isScalar(key)) {
            const name = keyText(key);
            if (seen.has(name)) findings.push(finding('yaml-key-twice', range(key), [name]));
            seen.add(name);
          } else size += sizeOf(key, depth + 1);
          size += sizeOf(value, depth + 1);
        }
      } else for (const item of node.items) size += sizeOf(item, depth + 1);
    }
    held.size = size;
    return size;
  };
  const sizeOfAlias = (alias: Alias): number => {
    const target = anchors.get(alias.source);
    if (target === undefined) {
      findings.push(finding('yaml-broken', range(alias), ['BAD_ALIAS']));
      return 1;
    }
    // An anchor whose size is not known yet holds this very alias: it would never end.
    const size = target.size ?? Infinity;
    aliased += size;
    if (aliased > MOST_ALIASED) findings.push(finding('yaml-alias-bomb', range(alias), [alias.source]));
    else targets.set(alias, target.node);
    return size;
  };
  sizeOf(root, 1);
  return { findings, targets: aliased > MOST_ALIASED ? new Map() : targets };
}

/** A key's own words. */
export const keyText = (key: unknown): string => (isScalar(key) ? (key.source ?? String(key.value)) : '');
