import { AppError } from '../db/index.ts';
import { ConfigError, readConfig } from './roots/config.ts';
import { FolderInUse } from './roots/folder-lock.ts';
import { createLog } from './roots/log.ts';
import { DatabaseUnavailable } from './roots/open-store.ts';
import { runLive } from './roots/run-live.ts';
import { runRehearsal } from './roots/run-rehearsal.ts';

/** Exit codes: 0 stopped on request, 1 something unforeseen, 2 a setting or something around us to mend. */
const TO_MEND = 2;

/** Starts the bot: in rehearsal without BOT_TOKEN, with the real chat service otherwise. */
async function main(): Promise<void> {
  const config = readConfig(process.env, process.argv.slice(2));
  const log = createLog(config.logLevel);
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  const service =
    config.mode === 'rehearsal'
      ? await runRehearsal(config, log, timeZone)
      : await runLive(config, log);
  let stopping = false;
  const stop = (exitCode: number) => {
    // A second Ctrl-C means now.
    if (stopping) process.exit(1);
    stopping = true;
    service.stop().then(
      // A sender may still be waiting for its turn; what it holds is safe in the ledger.
      () => process.exit(exitCode),
      (error) => {
        say(process.stderr, oneLine(error));
        process.exit(1);
      },
    );
  };
  process.on('SIGINT', () => stop(0));
  process.on('SIGTERM', () => stop(0));
  await service.app.start((error) => {
    say(process.stderr, oneLine(error));
    stop(TO_MEND);
  });
  say(process.stdout, service.welcome);
}

function oneLine(error: unknown): string {
  if (error instanceof ConfigError) return error.message;
  if (error instanceof DatabaseUnavailable || error instanceof FolderInUse) return error.message;
  if (error instanceof AppError && error.code === 'conflict') {
    return `This database holds ${error.what}. Choose another DATABASE_URL or DATA_DIR.`;
  }
  if (error instanceof Error && 'code' in error && error.code === 'EADDRINUSE') {
    return 'The port is in use. Set PORT to another one, or 0 for any that is free.';
  }
  if (
    error instanceof Error &&
    'error_code' in error &&
    [401, 404].includes(Number(error.error_code))
  ) {
    return 'BOT_TOKEN: the chat service does not accept it. Copy it again from where you made the bot.';
  }
  if (error instanceof Error && error.name === 'HttpError') {
    return 'Cannot reach the chat service. Check the network, and API_ROOT if it is set; then start again.';
  }
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}

function say(stream: NodeJS.WriteStream, text: string): void {
  stream.write(`${text}\n`);
}

main().catch((error) => {
  say(process.stderr, oneLine(error));
  process.exit(TO_MEND);
});
