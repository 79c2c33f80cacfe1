import type { Cli } from '../../bot/cli/cli.ts';
import { runCli } from '../../bot/cli/program.ts';
import type { OpenStore } from '../../db/index.ts';
import { MORNING } from './term.ts';

/** What one command said and how it ended. */
export interface CliRun {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process and keeps what it said. */
export type RunCli = (...args: string[]) => Promise<CliRun>;

/** A server that is never called: whoever gives a store opens that one instead. */
const UNCALLED = 'postgres://nobody@127.0.0.1:9/none';

/** A command line with these settings and no others; with a store, every command works on that one and leaves it open. */
export function aCli(
  environment: Readonly<Record<string, string>>,
  { store, terminal = null }: { store?: OpenStore; terminal?: Cli['terminal'] } = {},
): RunCli {
  return async (...args) => {
    const out: string[] = [];
    const err: string[] = [];
    const code = await runCli(args, {
      environment: { ...(store ? { DATABASE_URL: UNCALLED } : {}), ...environment },
      out: (line) => out.push(line),
      err: (line) => err.push(line),
      terminal,
      now: () => MORNING,
      open: async () => {
        if (!store) throw new Error('this command should not have opened a database');
        return { ...store, close: async () => {} };
      },
    });
    return { code, out: out.join('\n'), err: err.join('\n') };
  };
}

/** What a command printed with --json; fails when it is not one line of JSON, or when it did not end well. */
export function dataOf({ code, out, err }: CliRun): unknown {
  if (code !== 0 || err !== '' || out.includes('\n')) throw new Error(`${code}: ${out}${err}`);
  return JSON.parse(out);
}
