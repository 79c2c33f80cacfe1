import { restore } from '../../roots/backups.ts';
import { UsageError } from '../../roots/failure.ts';
import { restoredText } from '../backup-text.ts';
import { type AddCommand, reporting } from '../cli.ts';
import { withProgress } from '../progress.ts';
import { siteOf } from '../store.ts';

interface Options {
  readonly stoppedAt?: string;
  readonly erasures?: string;
}

/** Puts a backup into an empty place. */
export const addRestore: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('restore')
    .description('put a backup into an empty database, while no bot runs on it')
    .argument('<file>', 'a file that “suppersums backup” wrote')
    .option('--stopped-at <instant>', 'when the old bot stopped sending, if that was before now')
    .option(
      '--erasures <file>',
      'erase again what was erased since: a newer “erasures” file or backup',
    );
  reporting<Options>(command, bench, async ([file = ''], { stoppedAt, erasures, json }) => {
    const now = cli.now();
    const ranUntil = stoppedAt === undefined ? undefined : instantOf(stoppedAt, now);
    const { place, log } = siteOf(cli);
    const data = await withProgress(cli, { json, what: 'rows' }, (onProgress) =>
      restore(place, { file, now, ranUntil, erasures, onProgress }, log),
    );
    return { text: restoredText(data), data };
  });
};

function instantOf(text: string, now: Date): Date {
  const isInstant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/.test(
    text,
  );
  const instant = new Date(text);
  if (isInstant && instant <= now) return instant;
  throw new UsageError(
    `--stopped-at: “${text}” is no instant up to now. Write it with its zone, like 2026-09-14T17:25:00Z or 2026-09-14T19:25:00+02:00.`,
  );
}
