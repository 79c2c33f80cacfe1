import { EXIT } from '../../roots/failure.ts';
import { startBot } from '../../roots/start-bot.ts';
import type { AddCommand } from '../cli.ts';

/** Runs the bot until it is stopped; what `npm start` does. */
export const addStart: AddCommand = (program, { cli, end }) => {
  program
    .command('start')
    .description('run the bot; without BOT_TOKEN, rehearse on this computer')
    .option('--role <roles>', 'do a part only: receive, work, send, tick, or several with commas')
    .action(async ({ role }: { role?: string }) => {
      const args = role === undefined ? [] : [`--role=${role}`];
      const code = await startBot(cli.environment, args, cli);
      end(code === EXIT.done ? EXIT.done : EXIT.failed);
    });
};
