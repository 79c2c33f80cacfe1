import { type AddCommand, reporting } from '../cli.ts';
import { withStore } from '../store.ts';

/** Brings the database up to this release: our tables and the job engine's, in one step. Every start does the same by itself. */
export const addMigrate: AddCommand = (program, bench) => {
  const command = program
    .command('migrate')
    .description('bring the database up to this release; a start does so by itself');
  reporting(command, bench, () =>
    withStore(
      bench.cli,
      async () => ({ text: 'The database is up to date.', data: { upToDate: true } }),
      { fresh: true },
    ),
  );
};
