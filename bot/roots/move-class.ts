import { join } from 'node:path';
import {
  AppError,
  listRunningClasses,
  moveToBot,
  type OpenStore,
  readClassBot,
} from '../../db/index.ts';
import { readConfig } from './config.ts';
import { createLog } from './log.ts';
import { openStore } from './open-store.ts';

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** Lists the classes and their bots; or gives a class to another bot, and says what its people have to do then. With the embedded database, stop the bot first. */
async function main(): Promise<void> {
  const [classId = '', botId = ''] = process.argv.slice(2);
  const isListed = process.argv.length === 2;
  if (!isListed && (!UUID.test(classId) || !/^\d{1,15}$/.test(botId))) {
    throw new Error(
      'Give the class’s id, 36 characters, and the bot’s id, the number before “:” in its token: npm run move-class -- <class id> <bot id>',
    );
  }
  const config = readConfig(process.env);
  const folder = { ...config, dataDir: join(config.dataDir, config.mode) };
  const store = await openStore(folder, createLog(config.logLevel));
  try {
    if (isListed) return await list(store);
    const { username, waiting } = await moveToBot(store, { classId, botId: Number(botId) });
    process.stdout.write(
      `${[
        `The class belongs to @${username} now; ${waiting} waiting messages go with it.`,
        `A bot may not write first: every family and every teacher of the class has to open https://t.me/${username} once and tap Start.`,
        'Until then nothing reaches them; who is missing stands in the digest’s list of families to call, once the first drill could not be sent.',
        'Slips and links made so far open the old bot: print new ones. A greeting that was recorded for the old bot has to be recorded again.',
        'Keep the old bot running for some days: the buttons in its chats go on working.',
      ].join('\n')}\n`,
    );
  } catch (error) {
    if (!(error instanceof AppError)) throw error;
    throw new Error(
      error.what === 'bot'
        ? `No bot ${botId} has run with this database yet. Add its token to BOT_TOKEN, start it once, then move the class.`
        : `There is no class ${classId}.`,
    );
  } finally {
    await store.close();
  }
}

async function list(store: OpenStore): Promise<void> {
  for (const { id, title } of await listRunningClasses(store)) {
    const { botId, username } = await readClassBot(store, id);
    process.stdout.write(`${id}  bot ${botId} @${username}  ${title}\n`);
  }
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(2);
});
