import { Api } from 'grammy';
import { INVITE_DAYS, issueTeacherInvite } from '../../../db/index.ts';
import { INVITE_PREFIX } from '../../features/start-command.ts';
import { UsageError } from '../../roots/failure.ts';
import { type AddCommand, reporting } from '../cli.ts';
import { siteOf, withStore } from '../store.ts';

const DAY_MS = 24 * 60 * 60_000;
const CALL_SECONDS = 20;

/** Prints a one-time link that makes whoever opens it a teacher. */
export const addInviteTeacher: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('invite-teacher')
    .description('print a one-time link that makes whoever opens it a teacher');
  reporting(command, bench, async () => {
    const { config } = siteOf(cli);
    // Whichever bot: a teacher is known to all of them.
    const token = config.mode === 'live' ? config.tokens[0] : undefined;
    if (config.mode !== 'live' || !token) {
      throw new UsageError('Set BOT_TOKEN: a rehearsal has its teacher already.');
    }
    const api = new Api(token, { apiRoot: config.apiRoot, timeoutSeconds: CALL_SECONDS });
    const { username } = await api.getMe();
    const now = cli.now();
    const code = await withStore(cli, (store) => issueTeacherInvite(store, now), { fresh: true });
    const link = `https://t.me/${username}?start=${INVITE_PREFIX}${code}`;
    const until = new Date(now.getTime() + INVITE_DAYS * DAY_MS).toISOString();
    return {
      text: `For one teacher, once, within ${INVITE_DAYS} days:\n${link}`,
      data: { link, until },
    };
  });
};
