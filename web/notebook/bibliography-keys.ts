/** The citation keys a notebook's bibliographies hold: CSL-JSON ids, and the keys of BibTeX entries. */
export function citationKeys(files: readonly { readonly path: string; readonly text: string }[]): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const { path, text } of files) {
    for (const key of path.toLowerCase().endsWith('.bib') ? bibKeys(text) : cslKeys(text)) keys.add(key);
  }
  return keys;
}

function bibKeys(text: string): readonly string[] {
  return [...text.matchAll(/@[a-z]{3,20}[ \t]{0,8}\{[ \t]{0,8}([^\s,{}]{1,200}),/gi)].map((found) => found[1] ?? '');
}

function cslKeys(text: string): readonly string[] {
  try {
    const entries: unknown = JSON.parse(text);
    if (!Array.isArray(entries)) return [];
    return entries.flatMap((entry: unknown) => {
      const id = typeof entry === 'object' && entry !== null && 'id' in entry ? entry.id : undefined;
      return typeof id === 'string' || typeof id === 'number' ? [String(id)] : [];
    });
  } catch {
    return [];
  }
}
