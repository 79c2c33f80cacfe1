import { playDemoWeek } from '../../roots/demo-week.ts';
import { type AddCommand, reporting } from '../cli.ts';
import { withProgress } from '../progress.ts';
import { useFolder } from '../use-folder.ts';

/** Plays a school week of the invented class in memory and leaves what everybody saw in a folder. */
export const addSimulateWeek: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('simulate-week')
    .description('play a school week of an invented class, and keep what everybody saw')
    .option(
      '--to <folder>',
      'where to; what such a run left there before is replaced',
      'demo-week',
    );
  reporting<{ to: string }>(command, bench, async (_, { to, json }) => {
    await useFolder(to, ['phones', 'pictures']);
    const phones = await withProgress(cli, { json, what: 'school days' }, (done) =>
      playDemoWeek(to, done),
    );
    return {
      text: `A week of Kingfisher class is in ${to}/: ${phones} phones in ${to}/phones, pictures and the digest in ${to}/pictures.`,
      data: { folder: to, phones },
    };
  });
};
