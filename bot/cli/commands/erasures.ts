import { saveErasures } from '../../roots/backups.ts';
import { type AddCommand, reporting } from '../cli.ts';
import { siteOf } from '../store.ts';

/** Writes what was erased to a small file, so that the restore of an older backup can erase it again. */
export const addErasures: AddCommand = (program, bench) => {
  const command = program
    .command('erasures')
    .description(
      'write which ids were erased to a file, for “restore --erasures”; also while the bot runs',
    )
    .argument('<file>', 'the file; one that is there is replaced');
  reporting(command, bench, async ([file = '']) => {
    const { place, log } = siteOf(bench.cli);
    const erased = await saveErasures(place, { file }, log);
    return { text: `${file} holds ${erased} erased ids, no names.`, data: { file, erased } };
  });
};
