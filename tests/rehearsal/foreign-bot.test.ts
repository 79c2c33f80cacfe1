import { InlineKeyboard } from 'grammy';
import { expect, it } from 'vitest';
import { createStage, MAYA } from './support/stage.ts';

it('a bot written for the real service runs unchanged', async () => {
  const { bot, client, rehearsal } = await createStage();
  let handled = (): void => {};
  const nextHandled = (): Promise<void> =>
    new Promise((resolve) => {
      handled = resolve;
    });
  bot.use(async (_, next) => {
    await next();
    handled();
  });

  let count = 0;
  bot.command('start', (ctx) =>
    ctx.reply('Count: 0', { reply_markup: new InlineKeyboard().text('More', 'more') }),
  );
  bot.callbackQuery('more', async (ctx) => {
    count += 1;
    await ctx.answerCallbackQuery({ text: `now ${count}` });
    await ctx.editMessageText(`Count: ${count}`, {
      reply_markup: new InlineKeyboard().text('More', 'more'),
    });
  });
  const running = bot.start();

  let done = nextHandled();
  await client.openLink(MAYA, 'https://t.me/harbour_lane_bot?start=hello');
  await done;
  for (const expected of ['Count: 1', 'Count: 2']) {
    done = nextHandled();
    await client.tapLabel(MAYA, 'More');
    await done;
    expect((await client.chat(MAYA)).at(-1)?.text).toBe(expected);
  }
  expect((await client.answers(MAYA)).map(({ text }) => text)).toEqual(['now 1', 'now 2']);
  await bot.stop();
  await running;
  await rehearsal.close();
  expect(rehearsal.pendingUpdates()).toBe(0);
});
