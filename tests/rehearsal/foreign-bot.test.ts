import { once } from 'node:events';
import { createServer } from 'node:http';
import { InlineKeyboard, webhookCallback } from 'grammy';
import { expect, it } from 'vitest';
import { createStage, MAYA, refusal } from './support/stage.ts';

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

it('and so does one that waits at a webhook', async () => {
  const { bot, client, rehearsal } = await createStage();
  const handled = new Promise<void>((resolve) => {
    bot.on('message:voice', async (ctx) => {
      await ctx.replyWithVoice(ctx.message.voice.file_id, { caption: 'Your own words' });
      resolve();
    });
  });
  const server = createServer(webhookCallback(bot, 'http', { secretToken: 'kingfisher-7' }));
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  const port = typeof address === 'object' ? address?.port : 0;
  await bot.api.setWebhook(`http://127.0.0.1:${port}/`, { secret_token: 'kingfisher-7' });

  await client.say(MAYA, '/start');
  await client.sendFile(MAYA, { kind: 'voice', bytes: Buffer.from('OggS'), seconds: 3 });
  await handled;
  expect((await client.chat(MAYA)).at(-1)).toMatchObject({
    from: 'bot',
    text: 'Your own words',
    voice: { duration: 3 },
  });
  expect(await refusal(bot.api.getUpdates())).toContain('409 Conflict');
  await rehearsal.close();
  server.closeAllConnections();
  server.close();
});
