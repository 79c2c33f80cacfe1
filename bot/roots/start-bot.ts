import type { Log } from '../../db/index.ts';
import { realPace } from './clocks.ts';
import { readConfig } from './config.ts';
import { EXIT, type ExitCode, failureOf } from './failure.ts';
import { createLog } from './log.ts';
import { runLive } from './run-live.ts';
import { runRehearsal } from './run-rehearsal.ts';
import type { Service } from './service.ts';
import { stopInTime } from './stop-in-time.ts';

/** Where a started bot speaks to the person at the keyboard: a whole line at a time, without its end. */
export interface Console {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

/**
 * Starts the bot: in rehearsal without BOT_TOKEN, with the real chat service otherwise. Resolves once it has stopped, on Ctrl-C
 * or SIGTERM, with the exit code; the process has to be ended then, since a sender may still be waiting for its turn: what it
 * holds is safe in the ledger. Rejects when it cannot start; `failureOf` words that.
 */
export async function startBot(
  environment: Readonly<Record<string, string | undefined>>,
  args: readonly string[],
  console: Console,
): Promise<ExitCode> {
  const config = readConfig(environment, args);
  const log = createLog(config.logLevel);
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  const service =
    config.mode === 'rehearsal'
      ? await runRehearsal(config, log, timeZone)
      : await runLive(config, log);
  return untilStopped(service, log, console);
}

function untilStopped(service: Service, log: Log, { out, err }: Console): Promise<ExitCode> {
  return new Promise((resolve, reject) => {
    let stopping = false;
    const stop = (exitCode: ExitCode) => {
      // A second Ctrl-C means now.
      if (stopping) process.exit(EXIT.failed);
      stopping = true;
      stopInTime(service.stop, realPace).then(
        (isDone) => {
          if (!isDone) log.warn({}, 'stop_cut_short');
          resolve(exitCode);
        },
        (error) => {
          err(failureOf(error).line);
          resolve(EXIT.failed);
        },
      );
    };
    process.on('SIGINT', () => stop(EXIT.done));
    process.on('SIGTERM', () => stop(EXIT.done));
    service.app
      .start((error) => {
        err(failureOf(error).line);
        stop(EXIT.failed);
      })
      .then(() => out(service.welcome), reject);
  });
}
