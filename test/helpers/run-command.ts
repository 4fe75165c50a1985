import { vi } from 'vitest';
import type { Command } from '../../scripts/commands/command.ts';

/** What a command said and how it ended. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command of the command line in this very process, and keeps what it says. */
export async function runCommand(command: Command, ...args: readonly string[]): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const log = vi.spyOn(console, 'log').mockImplementation((...words: unknown[]) => void out.push(words.join(' ')));
  const error = vi.spyOn(console, 'error').mockImplementation((...words: unknown[]) => void err.push(words.join(' ')));
  try {
    const code = await command(args);
    return { code, out: out.join('\n'), err: err.join('\n') };
  } finally {
    log.mockRestore();
    error.mockRestore();
  }
}
