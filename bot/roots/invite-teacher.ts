import { join } from 'node:path';
import { Api } from 'grammy';
import { INVITE_DAYS, issueTeacherInvite } from '../../db/index.ts';
import { INVITE_PREFIX } from '../features/start-command.ts';
import { machineClock } from './clocks.ts';
import { readConfig } from './config.ts';
import { createLog } from './log.ts';
import { openStore } from './open-store.ts';

/** Prints a one-time link that makes whoever opens it a teacher. With the embedded database, stop the bot first. */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  if (config.mode !== 'live') {
    throw new Error('Set BOT_TOKEN: a rehearsal has its teacher already.');
  }
  const { tokens, apiRoot, logLevel } = config;
  // Whichever bot: a teacher is known to all of them.
  const [token = ''] = tokens;
  const folder = { ...config, dataDir: join(config.dataDir, 'live') };
  const store = await openStore(folder, createLog(logLevel));
  try {
    const { username } = await new Api(token, { apiRoot }).getMe();
    const code = await issueTeacherInvite(store, machineClock.now());
    process.stdout.write(
      `For one teacher, once, within ${INVITE_DAYS} days:\nhttps://t.me/${username}?start=${INVITE_PREFIX}${code}\n`,
    );
  } finally {
    await store.close();
  }
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(2);
});
