import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { madeNotes } from './made/made-notes.ts';

/** Generated notes as files in a folder of their own, looked through by ripgrep. */
export class NotesOnDisk {
  readonly #folder = mkdtempSync(join(tmpdir(), 'notes-'));

  /** What ripgrep calls itself; undefined where it is not installed. */
  static readonly version: string | undefined = spawnSync('rg', ['--version'], { encoding: 'utf8' }).stdout?.split('\n')[0];

  constructor(count: number) {
    let nth = 0;
    for (const { text } of madeNotes(count)) writeFileSync(join(this.#folder, `${nth++}.md`), text);
  }

  /** Files that hold some letters, in capitals or not. */
  holding(letters: string): readonly string[] {
    const { stdout } = spawnSync('rg', ['-l', '-i', '-F', letters, this.#folder], { encoding: 'utf8', maxBuffer: 2 ** 28 });
    return stdout.split('\n').filter((line) => line !== '');
  }

  remove(): void {
    rmSync(this.#folder, { recursive: true });
  }
}
