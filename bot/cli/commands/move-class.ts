import {
  AppError,
  listRunningClasses,
  moveToBot,
  type OpenStore,
  readClassBot,
} from '../../../db/index.ts';
import { OperatorError, UsageError } from '../../roots/failure.ts';
import { type AddCommand, idOf, type Outcome, reporting } from '../cli.ts';
import { withStore } from '../store.ts';

/** Lists the classes and their bots; or gives a class to another bot, and says what its people have to do then. */
export const addMoveClass: AddCommand = (program, bench) => {
  const command = program
    .command('move-class')
    .description('list the classes and their bots, or give a class to another bot')
    .argument('[class-id]', 'the class; without it, all are listed')
    .argument('[bot-id]', 'the number before “:” in the bot’s token');
  reporting(command, bench, ([classId, botId]) => {
    if (classId === undefined) return withStore(bench.cli, list);
    const id = idOf(classId, 'a class', 'Look it up with: suppersums move-class');
    if (!/^\d{1,15}$/.test(botId ?? '')) {
      throw new UsageError(
        `“${botId ?? ''}” is not the id of a bot: that is the number before “:” in its token.`,
      );
    }
    return withStore(bench.cli, (store) => moveClass(store, id, Number(botId)));
  });
};

async function list(store: OpenStore): Promise<Outcome> {
  const classes = [];
  for (const { id, title } of await listRunningClasses(store)) {
    classes.push({ classId: id, title, ...(await botOf(store, id)) });
  }
  const lines = classes.map(({ classId, title, botId, username }) =>
    botId === null
      ? `${classId}  a bot that has not run here yet  ${title}`
      : `${classId}  bot ${botId} @${username}  ${title}`,
  );
  return { text: lines.join('\n') || 'There is no class yet.', data: { classes } };
}

async function botOf(store: OpenStore, classId: string) {
  try {
    const { botId, username } = await readClassBot(store, classId);
    return { botId, username };
  } catch (error) {
    if (error instanceof AppError) return { botId: null, username: null };
    throw error;
  }
}

async function moveClass(store: OpenStore, classId: string, botId: number): Promise<Outcome> {
  const moved = await moveToBot(store, { classId, botId }).catch((error) => {
    if (!(error instanceof AppError)) throw error;
    throw new OperatorError(
      error.what === 'bot'
        ? `No bot ${botId} has run with this database yet. Add its token to BOT_TOKEN, start it once, then move the class.`
        : `There is no class ${classId}. Look it up with: suppersums move-class`,
    );
  });
  const { username, waiting } = moved;
  const text = [
    `The class belongs to @${username} now; ${waiting} waiting messages go with it.`,
    `A bot may not write first: every family and every teacher of the class has to open https://t.me/${username} once and tap Start.`,
    'Until then nothing reaches them; who is missing stands in the digest’s list of families to call, once the first drill could not be sent.',
    'Slips and links made so far open the old bot: print new ones. A greeting that was recorded for the old bot has to be recorded again.',
    'Keep the old bot running for some days: the buttons in its chats go on working.',
  ].join('\n');
  return { text, data: { classId, botId, username, waiting } };
}
