import { eraseChild } from '../../../db/index.ts';
import { OperatorError } from '../../roots/failure.ts';
import { erasedByOperator } from '../../texts/rights.ts';
import { type AddCommand, idOf, reporting } from '../cli.ts';
import { withStore } from '../store.ts';

/** Erases one child at once and for good, by its id. */
export const addErase: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('erase')
    .description('delete everything about one child, at once and for good')
    .argument('<child-id>', 'the child’s id, as “suppersums export --class” gives it');
  reporting(command, bench, ([given]) => {
    const childId = idOf(given, 'a child', 'Look it up with: suppersums export --class <class-id>');
    return withStore(cli, async (store) => {
      const erased = await eraseChild(store, { childId, now: cli.now() });
      const text = erasedByOperator(erased, childId);
      if (!erased) throw new OperatorError(text);
      return { text, data: { childId, erased } };
    });
  });
};
