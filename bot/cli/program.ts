import { createRequire } from 'node:module';
import { Command, CommanderError } from 'commander';
import { z } from 'zod';
import { EXIT, type ExitCode, failureOf } from '../roots/failure.ts';
import type { AddCommand, Bench, Cli } from './cli.ts';
import { addBackup } from './commands/backup.ts';
import { addCheck } from './commands/check.ts';
import { addDeadLetters } from './commands/dead-letters.ts';
import { addErase } from './commands/erase.ts';
import { addErasures } from './commands/erasures.ts';
import { addExport } from './commands/export.ts';
import { addImport } from './commands/import.ts';
import { addInviteTeacher } from './commands/invite-teacher.ts';
import { addMigrate } from './commands/migrate.ts';
import { addMove } from './commands/move.ts';
import { addMoveClass } from './commands/move-class.ts';
import { addPreview } from './commands/preview.ts';
import { addRebuild } from './commands/rebuild.ts';
import { addRestore } from './commands/restore.ts';
import { addSimulateWeek } from './commands/simulate-week.ts';
import { addStart } from './commands/start.ts';

const COMMANDS: readonly AddCommand[] = [
  ...[addStart, addCheck, addMigrate, addInviteTeacher],
  ...[addSimulateWeek, addPreview],
  ...[addExport, addImport, addErase, addErasures],
  ...[addBackup, addRestore, addMove],
  ...[addMoveClass, addDeadLetters, addRebuild],
];

const AFTER = `
Settings come from the environment (BOT_TOKEN, DATABASE_URL, DATA_DIR and others, see README.md).
With the embedded database, stop the bot before any command but check, backup and erasures.

Exit codes: 0 done, 1 could not be done (or check found something), 2 asked for in a wrong way.`;

/**
 * Runs one command of `suppersums` to its end and returns the exit code. Nothing is read or written but through `cli`.
 *
 * @example
 * await runCli(['rebuild', '--json'], cli); // 0, and one line of JSON was given to cli.out
 */
export async function runCli(args: readonly string[], cli: Cli): Promise<ExitCode> {
  let ended: ExitCode = EXIT.done;
  const bench: Bench = {
    cli,
    end: (code) => {
      ended = code;
    },
  };
  try {
    await createProgram(bench).parseAsync([...args], { from: 'user' });
    return ended;
  } catch (error) {
    // What is wrong with the command line was said by the parser.
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.wrongUse;
    const { line, exitCode } = failureOf(error);
    cli.err(line);
    return exitCode;
  }
}

/** The program with all its commands. */
export function createProgram(bench: Bench): Command {
  const { cli } = bench;
  const program = new Command('suppersums')
    .description(
      'A few minutes of mental maths for each child’s evening, and a digest for the teacher.',
    )
    .version(releaseNow(), '--version', 'print the version')
    .helpOption('--help', 'say what the command does')
    .helpCommand('help [command]', 'say what a command does')
    .addHelpText('after', AFTER)
    .exitOverride()
    .showHelpAfterError('What there is: suppersums --help')
    .configureOutput({
      writeOut: (text) => cli.out(text.trimEnd()),
      writeErr: (text) => cli.err(text.trimEnd()),
      // A line of fixed width reads the same in every terminal, and in a test.
      getOutHelpWidth: () => 100,
      getErrHelpWidth: () => 100,
    });
  for (const add of COMMANDS) add(program, bench);
  return program;
}

/** The release that is installed, from its own package.json. */
function releaseNow(): string {
  const found: unknown = createRequire(import.meta.url)('../../package.json');
  return z.object({ version: z.string() }).parse(found).version;
}
