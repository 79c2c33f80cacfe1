import { type ChildProcessByStdio, spawn } from 'node:child_process';
import { once } from 'node:events';
import type { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** How a process of the bot ended. `code` is null when a signal ended it. */
export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** The bot as an operator starts it: a process of its own, with these settings and no others. */
export class BotProcess {
  /** Resolves with everything said so far once the bot has said on its output that it runs; rejects when it ends instead. */
  readonly running: Promise<string>;
  readonly ended: Promise<Ended>;
  readonly #process: ChildProcessByStdio<null, Readable, Readable>;
  #stdout = '';
  #stderr = '';

  /** `preload` is a module to load before the bot. */
  constructor(
    settings: Readonly<Record<string, string>>,
    args: readonly string[] = [],
    preload?: string,
  ) {
    const before = preload === undefined ? [] : ['--import', preload];
    const program = ['--import', 'tsx', ...before, 'bot/main.ts'];
    const child = spawn(process.execPath, [...program, ...args], {
      cwd: ROOT,
      env: { ...settings },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    this.#process = child;
    this.ended = once(child, 'close').then(() => ({
      code: child.exitCode,
      signal: child.signalCode,
      stdout: this.#stdout,
      stderr: this.#stderr,
    }));
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      this.#stderr += text;
    });
    const said = new Promise<string>((resolve) => {
      child.stdout.setEncoding('utf8').on('data', (text: string) => {
        this.#stdout += text;
        if (this.#stdout.includes('Ctrl-C')) resolve(this.#stdout);
      });
    });
    this.running = this.until(said);
    // Nobody has to wait for this promise.
    this.running.catch(() => {});
  }

  /** Waits for something the bot does; rejects with what it wrote to its log when it ends first. */
  async until<T>(event: Promise<T>): Promise<T> {
    const cut = this.ended.then(({ stderr }) =>
      Promise.reject(new Error(`the bot ended: ${stderr}`)),
    );
    return Promise.race([event, cut]);
  }

  /** Ends the process as a power cut would, or asks it to stop. */
  async end(signal: 'SIGKILL' | 'SIGINT' | 'SIGTERM'): Promise<Ended> {
    this.#process.kill(signal);
    return this.ended;
  }
}
