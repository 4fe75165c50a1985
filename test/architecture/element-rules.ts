import type { ProjectFile } from './web-files.ts';

const all = (text: string, pattern: RegExp): readonly string[] => [...new Set([...text.matchAll(pattern)].map((found) => found[1] ?? ''))];
const words = (lists: readonly string[]): readonly string[] => [...new Set(lists.flatMap((list) => list.split(/\s+/)).filter(Boolean))];

/** The doc block right before the element's decorator: its entry in the manifest. */
const docOf = (text: string): string => /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*@customElement\(/.exec(text)?.[1] ?? '';

/**
 * What an element's file leaves unsaid: its summary, its tag's type, and each event, part and slot it has.
 * A file without `@customElement` is no element and owes nothing.
 */
export function elementFaults({ path, text }: ProjectFile): readonly string[] {
  const tag = /@customElement\(\s*'([^']+)'/.exec(text)?.[1];
  if (tag === undefined) return [];
  const doc = docOf(text);
  const dispatched = all(text, /dispatchEvent\(\s*new (\w+)\(/g);
  const parts = words(all(text, /[\s<]part="([^"$]+)"/g));
  const slots = all(text, /<slot\s[^>]*name="([^"$]+)"/g);
  const missing = [
    ...(/@summary\s+\S/.test(doc) ? [] : ['@summary']),
    ...(new RegExp(`interface HTMLElementTagNameMap\\s*\\{[^}]*'${tag}'\\s*:`).test(text) ? [] : ['HTMLElementTagNameMap']),
    ...(tag.startsWith('tg-') ? [] : ['the prefix tg-']),
    ...dispatched
      .filter((event) => !new RegExp(`@event\\s+\\{${event}\\}\\s+\\S+\\s+-\\s+\\S`).test(doc))
      .map((event) => `@event {${event}}`),
    ...parts.filter((part) => !new RegExp(`@csspart\\s+${part}\\s+-\\s+\\S`).test(doc)).map((part) => `@csspart ${part}`),
    ...slots.filter((slot) => !new RegExp(`@slot\\s+${slot}\\s+-\\s+\\S`).test(doc)).map((slot) => `@slot ${slot}`),
  ];
  return missing.map((what) => `${path}: ${tag} lacks ${what}`);
}
