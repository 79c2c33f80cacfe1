import type { Command } from 'commander';
import { UsageError } from '../roots/failure.ts';
import type { openStore } from '../roots/open-store.ts';
import type { Console } from '../roots/start-bot.ts';

/** What the commands are given by whoever runs them: the process, or a test. */
export interface Cli extends Console {
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Where progress is drawn; null where nobody would see it. */
  readonly terminal: NodeJS.WritableStream | null;
  now(): Date;
  readonly open: typeof openStore;
}

/** What a command came to: `text` for a person, `data` for a script that asked with --json. */
export interface Outcome {
  readonly text: string;
  readonly data: unknown;
  /** Whether it is to count as failed though it ran to its end. */
  readonly failed?: boolean;
}

/** What every command takes besides its own. */
export interface Asked {
  readonly json: boolean;
}

/** What a command is added with. */
export interface Bench {
  readonly cli: Cli;
  /** Says how the program is to end; the last word counts. */
  readonly end: (code: 0 | 1) => void;
}

/** Adds one command to the program. */
export type AddCommand = (program: Command, bench: Bench) => void;

/**
 * Gives a command its --json and its work, which gets the arguments as they were typed and the options. One line of JSON
 * replaces the text; errors are text on the error output either way.
 */
export function reporting<Options extends object = object>(
  command: Command,
  { cli, end }: Bench,
  work: (args: readonly string[], options: Options & Asked) => Promise<Outcome>,
): void {
  command.option('--json', 'print one line of JSON in place of the text').action(async () => {
    const options = { json: false, ...command.opts<Options>() };
    const { text, data, failed = false } = await work(command.args, options);
    cli.out(options.json ? JSON.stringify(data) : text);
    if (failed) end(1);
  });
}

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** An id as the database has it. `whose` names it, like “a child”. @throws {UsageError} for anything else. */
export function idOf(text: string | undefined, whose: string, remedy: string): string {
  if (text !== undefined && UUID.test(text)) return text.toLowerCase();
  throw new UsageError(
    `“${text ?? ''}” is not the id of ${whose}: that has 36 characters, like 019a0000-0000-7000-8000-0000000000c1. ${remedy}`,
  );
}

/** One of several words. @throws {UsageError} for anything else. */
export function oneOf<T extends string>(text: string, allowed: readonly T[], what: string): T {
  const found = allowed.find((each) => each === text);
  if (found) return found;
  throw new UsageError(`“${text}” is no ${what}: take one of ${allowed.join(', ')}.`);
}
