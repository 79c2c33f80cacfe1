import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Gate } from '../../rehearsal/server.ts';
import {
  botFor,
  createStage,
  MAYA,
  openBoth,
  refusal,
  START,
  type Stage,
} from './support/stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterEach(() => stage.rehearsal.close());

describe('the queue of updates', () => {
  it('numbers updates in sequence', async () => {
    await stage.client.say(MAYA, 'one');
    await stage.client.say(MAYA, 'two');
    const [first, second] = await stage.bot.api.getUpdates();
    expect(second?.update_id).toBe((first?.update_id ?? 0) + 1);
    expect([first?.message?.text, second?.message?.text]).toEqual(['one', 'two']);
  });

  it('gives an update again until an offset confirms it', async () => {
    await stage.client.say(MAYA, 'one');
    const [first] = await stage.bot.api.getUpdates();
    expect(await stage.bot.api.getUpdates()).toHaveLength(1);
    expect(await stage.bot.api.getUpdates({ offset: (first?.update_id ?? 0) + 1 })).toEqual([]);
    expect(stage.rehearsal.pendingUpdates()).toBe(0);
  });

  it('gives no more than the limit', async () => {
    for (const text of ['one', 'two', 'three']) await stage.client.say(MAYA, text);
    expect(await stage.bot.api.getUpdates({ limit: 2 })).toHaveLength(2);
  });

  it('keeps only the last ones for a negative offset', async () => {
    for (const text of ['one', 'two', 'three']) await stage.client.say(MAYA, text);
    const kept = await stage.bot.api.getUpdates({ offset: -1 });
    expect(kept.map(({ message }) => message?.text)).toEqual(['three']);
    expect(stage.rehearsal.pendingUpdates()).toBe(1);
  });

  it('leaves out kinds the bot did not ask for', async () => {
    await stage.bot.api.getUpdates({ allowed_updates: ['callback_query'] });
    await stage.client.say(MAYA, 'one');
    expect(stage.rehearsal.pendingUpdates()).toBe(0);
  });

  it('drops all of them with deleteWebhook when asked', async () => {
    await stage.client.say(MAYA, 'one');
    await stage.bot.api.deleteWebhook({ drop_pending_updates: true });
    expect(stage.rehearsal.pendingUpdates()).toBe(0);
    expect((await stage.bot.api.getWebhookInfo()).pending_update_count).toBe(0);
  });

  it('takes a raw update and keeps a repeated id', async () => {
    const { updateId } = await stage.client.injectUpdate({ message: { text: 7 } });
    await stage.client.injectUpdate({ update_id: updateId, message: null });
    const updates = await stage.bot.api.getUpdates();
    expect(updates.map(({ update_id }) => update_id)).toEqual([updateId, updateId]);
  });
});

describe('a waiting poll', () => {
  let arrived: () => void;
  let polled: Stage;
  beforeEach(async () => {
    arrived = () => {};
    const gate: Gate = async ({ method }) => {
      if (method === 'getUpdates') arrived();
      return 'apply';
    };
    polled = await createStage({ gate });
    await openBoth(polled);
  });
  afterEach(() => polled.rehearsal.close());

  /** Starts a poll and resolves when the rehearsal holds it. */
  async function holdPoll(): Promise<{ poll: ReturnType<Stage['bot']['api']['getUpdates']> }> {
    const held = new Promise<void>((resolve) => {
      arrived = resolve;
    });
    const poll = botFor(polled.rehearsal).api.getUpdates({ timeout: 50 });
    poll.catch(() => {});
    await held;
    return { poll };
  }

  it('wakes when something comes', async () => {
    const { poll } = await holdPoll();
    await polled.client.say(MAYA, 'here');
    expect((await poll)[0]?.message?.text).toBe('here');
  });

  it('ends with a conflict when a second one starts', async () => {
    const older = await holdPoll();
    const newer = await holdPoll();
    expect(await refusal(older.poll)).toBe(
      '409 Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
    );
    await polled.client.say(MAYA, 'here');
    expect(await newer.poll).toHaveLength(1);
  });

  it('ends with a conflict when a webhook is set', async () => {
    const { poll } = await holdPoll();
    await polled.bot.api.setWebhook('http://127.0.0.1:9/');
    expect(await refusal(poll)).toBe('409 Conflict: terminated by setWebhook request');
  });

  it('ends empty-handed when the rehearsal closes, or is cut off', async () => {
    const { poll } = await holdPoll();
    const end = poll.then(
      (updates) => updates.length,
      () => 'cut off',
    );
    await polled.rehearsal.close();
    expect([0, 'cut off']).toContain(await end);
  });
});

describe('lifetimes by the virtual clock', () => {
  it('a tap is gone after 150 seconds', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, 'Evening', { reply_markup: START });
    await stage.client.tap(MAYA, sent.message_id, 'v1:start');
    stage.clock.pass(149_000);
    expect(stage.rehearsal.pendingUpdates()).toBe(1);
    stage.clock.pass(1_000);
    expect(await stage.bot.api.getUpdates()).toEqual([]);
  });

  it('a message waits 24 hours and no longer', async () => {
    await stage.client.say(MAYA, 'one');
    stage.clock.pass(86_399_000);
    expect(stage.rehearsal.pendingUpdates()).toBe(1);
    stage.clock.pass(1_000);
    expect(stage.rehearsal.pendingUpdates()).toBe(0);
  });
});
