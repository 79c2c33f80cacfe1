import { AppError, BackupError } from '../../db/index.ts';
import { ConfigError } from './config.ts';

/** How a program of ours ends: done, could not be done, or was asked for in a wrong way (the command line, or a setting). */
export const EXIT = { done: 0, failed: 1, wrongUse: 2 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** What cannot be done; the message is one plain line for the operator: what, why, and what to do. */
export class OperatorError extends Error {}

/** What was asked for in a way that cannot be: the message names the value, what is allowed, and the remedy. */
export class UsageError extends OperatorError {}

/** What to tell the person at the keyboard, and how the program ends. */
export interface Failure {
  readonly line: string;
  readonly exitCode: ExitCode;
}

/**
 * Whatever was thrown, in one line without a trace.
 *
 * @example
 * failureOf(new UsageError('“x” is no id.')); // { line: '“x” is no id.', exitCode: 2 }
 */
export function failureOf(error: unknown): Failure {
  const isWrongUse = error instanceof ConfigError || error instanceof UsageError;
  return { line: lineOf(error), exitCode: isWrongUse ? EXIT.wrongUse : EXIT.failed };
}

function lineOf(error: unknown): string {
  if (error instanceof AppError && error.code === 'conflict') {
    return `This database holds ${error.what}. Choose another DATABASE_URL or DATA_DIR.`;
  }
  if (!(error instanceof Error)) return String(error);
  if ('code' in error && error.code === 'EADDRINUSE') {
    const port = 'port' in error ? `Port ${String(error.port)}` : 'The port';
    return `${port} is in use. Set PORT, WEBHOOK_PORT or HEALTH_PORT, whichever it is, to another one.`;
  }
  if ('error_code' in error && [401, 404].includes(Number(error.error_code))) {
    return 'BOT_TOKEN: the chat service does not accept it. Copy it again from where you made the bot.';
  }
  if (error.name === 'HttpError') {
    return 'Cannot reach the chat service. Check the network, and API_ROOT if it is set; then start again.';
  }
  // Errors of our own that are meant for the operator are named `Error`, as they inherit it.
  return error.name === 'Error' || error instanceof BackupError
    ? error.message
    : `${error.name}: ${error.message}`;
}
