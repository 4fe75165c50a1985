import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { type Browser, chromium, type Page } from 'playwright-core';
import { CHROMIUM, CHROMIUM_ARGS } from './built-site.ts';

/** A browser with a profile on disk whose processes a test can end as a power switch would, without a word of warning. */
export class KillableChromium {
  readonly #process: ChildProcess;
  readonly #browser: Browser;

  private constructor(process: ChildProcess, browser: Browser) {
    this.#process = process;
    this.#browser = browser;
  }

  static async start(profile: string): Promise<KillableChromium> {
    // A process group of its own, so that the browser's helpers end with it.
    const started = spawn(CHROMIUM, [...CHROMIUM_ARGS, '--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`], {
      detached: true,
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    const endpoint = await new Promise<string>((found, failed) => {
      let said = '';
      started.stderr?.on('data', (words: Buffer) => {
        said += words.toString();
        const line = /DevTools listening on (ws:\S+)/.exec(said);
        if (line?.[1]) found(line[1]);
      });
      started.once('exit', () => failed(new Error(`Chromium ended: ${said}`)));
    });
    return new KillableChromium(started, await chromium.connectOverCDP(endpoint));
  }

  async page(): Promise<Page> {
    const [context] = this.#browser.contexts();
    if (!context) throw new Error('the browser has no profile');
    return context.newPage();
  }

  /** Ends every process at once; nothing is written any more. */
  async kill(): Promise<void> {
    if (this.#process.exitCode !== null || this.#process.signalCode !== null || this.#process.pid === undefined) return;
    const ended = once(this.#process, 'exit');
    process.kill(-this.#process.pid, 'SIGKILL');
    await ended;
    await this.#browser.close().catch(() => undefined);
  }
}
