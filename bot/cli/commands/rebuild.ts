import { rebuildAll } from '../../../db/index.ts';
import { type AddCommand, reporting } from '../cli.ts';
import { withProgress } from '../progress.ts';
import { withStore } from '../store.ts';

/** Writes everything that is derived from marks anew. */
export const addRebuild: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('rebuild')
    .description('write scores and memory anew from the marks');
  reporting(command, bench, (_, { json }) =>
    withStore(cli, async (store) => {
      const children = await withProgress(cli, { json, what: 'children' }, (done) =>
        rebuildAll(store, done),
      );
      const text = `Rebuilt the scores and the memory of ${children} children from their marks.`;
      return { text, data: { children } };
    }),
  );
};
