/** A file of a published notebook: with its text, or lying beside the list under its path. */
export interface ListedFile {
  readonly path: string;
  readonly text?: string;
}

/**
 * Reads the list of files of a published notebook: `{"files": [{"path": …, "text": …}]}`, the text only where it travels along.
 *
 * @returns undefined where the text is no such list; a path is not judged here.
 */
export function readFileList(json: string): readonly ListedFile[] | undefined {
  const files = filesOf(json);
  if (!Array.isArray(files)) return undefined;
  const listed = files.map((one: unknown) => (isListed(one) ? one : undefined));
  return listed.every((one) => one !== undefined) ? listed : undefined;
}

function filesOf(json: string): unknown {
  try {
    const read: unknown = JSON.parse(json.replace(/^\uFEFF/, ''));
    return typeof read === 'object' && read !== null && 'files' in read ? read.files : undefined;
  } catch {
    return undefined;
  }
}

const isListed = (one: unknown): one is ListedFile =>
  typeof one === 'object' &&
  one !== null &&
  'path' in one &&
  typeof one.path === 'string' &&
  (!('text' in one) || typeof one.text === 'string');
