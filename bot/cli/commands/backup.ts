import { backUp, inspectBackup } from '../../roots/backups.ts';
import { backupLine } from '../backup-text.ts';
import { type AddCommand, reporting } from '../cli.ts';
import { withProgress } from '../progress.ts';
import { siteOf } from '../store.ts';

/** Writes everything to one file, also while the bot runs; or checks such a file. */
export const addBackup: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('backup')
    .description('write everything to one new file, also while the bot runs')
    .argument('<file>', 'the new file, like suppersums-2026-09-14.gz')
    .option('--check', 'do not write: say whether this backup is whole');
  reporting<{ check?: boolean }>(command, bench, async ([file = ''], { check = false, json }) => {
    if (check) {
      const data = await inspectBackup(file);
      return { text: `${file} is whole: ${backupLine(data)}.`, data };
    }
    const { place, log } = siteOf(cli);
    const now = cli.now();
    const data = await withProgress(cli, { json, what: 'rows' }, (onProgress) =>
      backUp(place, { file, now, onProgress }, log),
    );
    return {
      text: `${file} is written: ${backupLine(data)}.\nIt holds children’s data: keep it where nobody else reads it.`,
      data,
    };
  });
};
