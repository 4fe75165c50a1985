import { html, type TemplateResult } from 'lit';
import type { FoundFiles } from '../../notebook/import/found-files.ts';
import { zipWords } from '../../notebook/words/import-words.ts';
import { foundInFolder } from './found-in-folder.ts';
import { foundInUpload } from './found-in-upload.ts';

type FolderPicker = (options: { readonly id: string }) => Promise<FileSystemDirectoryHandle>;

/** The browser's own way to choose a folder, where it has one. */
const folderPicker = (): FolderPicker | undefined => (globalThis as { readonly showDirectoryPicker?: FolderPicker }).showDirectoryPicker;

/** Files found, or why there are none, in a sentence. */
export type LookedInto = { readonly found: FoundFiles } | { readonly trouble: string };

/**
 * The ways to choose a notebook: a folder or a zip.
 *
 * @param take called with what looks into the chosen one; looking into a large folder takes a while.
 */
export const waysIn = (take: (look: () => Promise<LookedInto>) => void): TemplateResult => html`
  ${
    folderPicker()
      ? html`<button type="button" @click=${() => void pickFolder(take)}>Choose a folder</button>`
      : html`<label
          >A folder
          <input
            type="file"
            webkitdirectory
            multiple
            @change=${({ target }: Event) => {
              const files = [...((target as HTMLInputElement).files ?? [])];
              if (files.length > 0) take(() => Promise.resolve({ found: foundInUpload(files) }));
            }}
        /></label>`
  }
  <label
    >A zip
    <input
      type="file"
      accept=".zip,application/zip"
      @change=${({ target }: Event) => {
        const [file] = (target as HTMLInputElement).files ?? [];
        if (file) take(() => lookIntoZip(file));
      }}
  /></label>
`;

async function pickFolder(take: (look: () => Promise<LookedInto>) => void): Promise<void> {
  const folder = await folderPicker()?.({ id: 'tenterground' }).catch(() => undefined);
  if (folder) take(async () => ({ found: await foundInFolder(folder) }));
}

async function lookIntoZip(file: File): Promise<LookedInto> {
  const buffer = await file.arrayBuffer().catch(() => undefined);
  if (!buffer) return { trouble: zipWords.unreadable() };
  const { openZip } = await import('../../notebook/import/open-zip.ts');
  const opened = openZip(file.name, new Uint8Array(buffer));
  if (opened.ok) return { found: opened.value };
  return { trouble: opened.error === 'too-many' ? zipWords['too-many'](opened.count) : zipWords[opened.error]() };
}
