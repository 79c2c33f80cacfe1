import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createStage, MAYA, openBoth, refusal, START, type Stage, TOBI } from './support/stage.ts';

const TOO_OLD =
  '400 Bad Request: query is too old and response timeout expired or query ID is invalid';

let stage: Stage;
let cardId: number;
beforeEach(async () => {
  stage = await createStage();
  await openBoth(stage);
  cardId = (await stage.bot.api.sendMessage(MAYA, 'Evening', { reply_markup: START })).message_id;
});
afterEach(() => stage.rehearsal.close());

describe('a tap', () => {
  it('reaches the bot with the message and the person', async () => {
    const { queryId } = await stage.client.tap(MAYA, cardId, 'v1:start');
    const [update] = await stage.bot.api.getUpdates();
    expect(update?.callback_query).toMatchObject({
      id: queryId,
      data: 'v1:start',
      from: { id: MAYA, first_name: 'Maya' },
      message: { message_id: cardId, chat: { id: MAYA }, reply_markup: START },
    });
  });

  it('is found by its label', async () => {
    await stage.bot.api.sendMessage(MAYA, 'Another', {
      reply_markup: { inline_keyboard: [[{ text: 'Not today', callback_data: 'b' }]] },
    });
    await stage.client.tapLabel(MAYA, 'today');
    await stage.client.tapLabel(MAYA, 'Start');
    const updates = await stage.bot.api.getUpdates();
    expect(updates.map(({ callback_query }) => callback_query?.data)).toEqual(['b', 'v1:start']);
  });

  it('by a label that is not there names the buttons there are', async () => {
    await expect(stage.client.tapLabel(MAYA, 'Later')).rejects.toThrow(
      'No button says "Later". There are: "Start".',
    );
  });

  it('is possible only on a button that is shown, in the own chat', async () => {
    await expect(stage.client.tap(MAYA, cardId, 'v1:other')).rejects.toThrow('has no such button');
    await expect(stage.client.tap(TOBI, cardId, 'v1:start')).rejects.toThrow('There is no message');
    expect(stage.rehearsal.pendingUpdates()).toBe(0);
  });

  it('can be forged for a test, but not over 64 bytes', async () => {
    await stage.client.rawCallback(MAYA, cardId, 'v9:anything');
    await stage.client.forgeTap({
      fromAccountId: TOBI,
      chatId: MAYA,
      messageId: cardId,
      data: 'v1:start',
    });
    await expect(stage.client.rawCallback(MAYA, cardId, 'x'.repeat(65))).rejects.toThrow(
      '1 to 64 bytes',
    );
    const [raw, forged] = await stage.bot.api.getUpdates();
    expect(raw?.callback_query?.data).toBe('v9:anything');
    expect(forged?.callback_query).toMatchObject({
      from: { id: TOBI },
      message: { chat: { id: MAYA } },
    });
  });
});

describe('answerCallbackQuery', () => {
  it('shows the person a text', async () => {
    const { queryId } = await stage.client.tap(MAYA, cardId, 'v1:start');
    await stage.bot.api.answerCallbackQuery(queryId, { text: 'Here we go', show_alert: true });
    expect(await stage.client.answers(MAYA)).toMatchObject([
      { queryId, text: 'Here we go', showAlert: true },
    ]);
    expect(await stage.client.answers(TOBI)).toEqual([]);
  });

  it('is too late after 150 seconds, for a second time, and for an unknown tap', async () => {
    const first = await stage.client.tap(MAYA, cardId, 'v1:start');
    await stage.bot.api.answerCallbackQuery(first.queryId);
    expect(await refusal(stage.bot.api.answerCallbackQuery(first.queryId))).toBe(TOO_OLD);
    const second = await stage.client.tap(MAYA, cardId, 'v1:start');
    stage.clock.pass(150_001);
    expect(await refusal(stage.bot.api.answerCallbackQuery(second.queryId))).toBe(TOO_OLD);
    expect(await refusal(stage.bot.api.answerCallbackQuery('1'))).toBe(TOO_OLD);
  });
});
