/**
 * The file a relative link leads to.
 *
 * @param from path of the note that holds the link.
 * @returns the path inside the notebook's folder; undefined where it would lead out of it.
 */
export function resolveLink(from: string, path: string): string | undefined {
  const parts = from.split('/').slice(0, -1);
  for (const part of path.split('/')) {
    if (part === '..') {
      if (parts.pop() === undefined) return undefined;
    } else if (part !== '' && part !== '.') parts.push(part);
  }
  return parts.join('/');
}
