import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openReceiver, type Receiver } from './support/receiver.ts';
import {
  createStage,
  createTestClock,
  MAYA,
  openBoth,
  refusal,
  START,
  type Stage,
  TOBI,
} from './support/stage.ts';
import { until } from './support/until.ts';

let stage: Stage;
let receiver: Receiver;
beforeAll(async () => {
  // Nothing goes on by itself: what waits is sent when the virtual clock moves.
  stage = await createStage({ machineSleep: () => new Promise(() => {}) });
  await openBoth(stage);
});
afterAll(() => stage.rehearsal.close());
beforeEach(async () => {
  receiver = await openReceiver();
});
afterEach(async () => {
  await stage.bot.api.deleteWebhook({ drop_pending_updates: true });
  await receiver.close();
});

const info = () => stage.bot.api.getWebhookInfo();
const failed = (answer: number | string) =>
  until(info, ({ last_error_message: words = '' }) => words.includes(String(answer)));
const pass = (seconds: number) =>
  stage.client.moveTo(new Date(stage.clock.now().getTime() + seconds * 1000));

/** The text of the next message the webhook is sent. */
async function nextText(): Promise<unknown> {
  const { message } = (await receiver.next()).update;
  return typeof message === 'object' && message !== null && 'text' in message ? message.text : null;
}

async function raw(method: string, query = ''): Promise<unknown> {
  const { apiRoot, token } = stage.rehearsal;
  return (await fetch(`${apiRoot}/bot${token}/${method}${query}`)).json();
}

describe('a webhook', () => {
  it('gets updates with the secret in a header, and may answer with a call', async () => {
    await stage.bot.api.setWebhook(receiver.url, { secret_token: 'kingfisher-7' });
    receiver.answers({ body: { method: 'sendMessage', chat_id: MAYA, text: 'Hello Maya' } });
    await stage.client.say(MAYA, 'hello');
    await stage.client.say(MAYA, 'again');
    const first = await receiver.next();
    expect(first.headers).toMatchObject({
      'content-type': 'application/json',
      'x-telegram-bot-api-secret-token': 'kingfisher-7',
    });
    expect(first.update).toMatchObject({ message: { text: 'hello', chat: { id: MAYA } } });
    expect(await nextText()).toBe('again');
    expect((await stage.client.chat(MAYA)).map(({ text }) => text)).toContain('Hello Maya');
    const empty = await until(info, ({ pending_update_count: count }) => count === 0);
    expect(empty).not.toHaveProperty('last_error_date');
    expect(empty).toMatchObject({ url: receiver.url, max_connections: 40 });
  });

  it('gets what was waiting, without a header when there is no secret', async () => {
    await stage.client.say(MAYA, 'early');
    await stage.bot.api.setWebhook(receiver.url);
    const { headers, update } = await receiver.next();
    expect(update).toMatchObject({ message: { text: 'early' } });
    expect(headers).not.toHaveProperty('x-telegram-bot-api-secret-token');
  });
});

describe('setting a webhook', () => {
  it('says whether it was set, set already, deleted or deleted already', async () => {
    const query = `?url=${receiver.url}`;
    expect([
      await raw('setWebhook', query),
      await raw('setWebhook', query),
      await raw('deleteWebhook'),
      await raw('deleteWebhook'),
      await raw('setWebhook', '?url='),
    ]).toEqual(
      [
        'Webhook was set',
        'Webhook is already set',
        'Webhook was deleted',
        'Webhook is already deleted',
        'Webhook is already deleted',
      ].map((description) => ({ ok: true, result: true, description })),
    );
  });

  it('ends polling, and deleting it lets polling begin', async () => {
    await stage.bot.api.setWebhook(receiver.url);
    expect(await refusal(stage.bot.api.getUpdates())).toBe(
      "409 Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
    );
    await stage.bot.api.deleteWebhook();
    await expect(stage.bot.api.getUpdates()).resolves.toEqual([]);
  });

  it('hangs up on the one before, so that nothing waits for it', async () => {
    const old = await openReceiver();
    old.answers({ after: new Promise(() => {}) });
    await stage.bot.api.setWebhook(old.url);
    await stage.client.say(MAYA, 'unanswered');
    await old.next();
    await stage.bot.api.setWebhook(receiver.url);
    expect(await nextText()).toBe('unanswered');
    await old.close();
  });

  it('takes an address on this computer, by HTTP, and a secret of 1 to 256 characters', async () => {
    const set = (url: string, secret_token?: string): Promise<string> =>
      refusal(stage.bot.api.setWebhook(url, secret_token === undefined ? {} : { secret_token }));
    const bad = '400 Bad Request: bad webhook: ';
    const { url } = receiver;
    expect(await set('https://example.org/')).toBe(
      `${bad}the rehearsal calls addresses of this computer only`,
    );
    expect(await set('ftp://127.0.0.1/')).toBe(`${bad}An HTTPS URL must be provided for webhook`);
    expect(await set(url, 'no spaces')).toContain('secret token contains unallowed characters');
    expect(await set(url, 'x'.repeat(257))).toContain('secret token is too long');
    expect((await info()).url).toBe('');
    await stage.bot.api.setWebhook(url, { secret_token: 'x'.repeat(256), max_connections: 1000 });
    expect((await info()).max_connections).toBe(100);
  });
});

describe('an update a webhook fails to take', () => {
  it('comes again at once and then after 2, 4 and 8 seconds by the virtual clock', async () => {
    await stage.bot.api.setWebhook(receiver.url);
    receiver.answers(...[500, 501, 502, 503].map((status) => ({ status })));
    await stage.client.say(MAYA, 'one');
    expect([await nextText(), await nextText()]).toEqual(['one', 'one']);
    await failed(501);
    await pass(2);
    expect(await nextText()).toBe('one');
    await failed(502);
    await pass(4);
    expect(await nextText()).toBe('one');
    await failed(503);
    expect((await info()).pending_update_count).toBe(1);
    await pass(8);
    expect(await nextText()).toBe('one');
    await until(info, ({ pending_update_count: count }) => count === 0);
  });

  it('holds up its own chat, not another, nor the taps of the same person', async () => {
    const card = await stage.bot.api.sendMessage(MAYA, 'Evening', { reply_markup: START });
    await stage.bot.api.setWebhook(receiver.url);
    receiver.answers({ status: 500 }, { status: 501 });
    await stage.client.say(MAYA, 'one');
    expect([await nextText(), await nextText()]).toEqual(['one', 'one']);
    await failed(501);
    await stage.client.say(MAYA, 'two');
    await stage.client.tap(MAYA, card.message_id, 'v1:start');
    expect((await receiver.next()).update).toHaveProperty('callback_query');
    await stage.client.say(TOBI, 'three');
    expect(await nextText()).toBe('three');
    await pass(2);
    expect([await nextText(), await nextText()]).toEqual(['one', 'two']);
  });

  it('waits as long as Retry-After says, and is gone when it expires', async () => {
    const card = await stage.bot.api.sendMessage(MAYA, 'Evening', { reply_markup: START });
    await stage.bot.api.setWebhook(receiver.url);
    receiver.answers({ status: 503, headers: { 'retry-after': '100' } }, { status: 504 });
    await stage.client.tap(MAYA, card.message_id, 'v1:start');
    await receiver.next();
    await failed(503);
    await pass(100);
    await receiver.next();
    await failed(504);
    await pass(50);
    expect((await info()).pending_update_count).toBe(0);
  });

  it('ends the webhook when that says for 23 hours that it is gone', async () => {
    await stage.bot.api.setWebhook(receiver.url);
    receiver.answers({ status: 410 }, { status: 410, words: 'Gone again' }, { status: 410 });
    await stage.client.say(MAYA, 'one');
    expect([await nextText(), await nextText()]).toEqual(['one', 'one']);
    await failed('410 Gone again');
    expect((await info()).url).toBe(receiver.url);
    await pass(23 * 3600 + 1);
    expect(await nextText()).toBe('one');
    await until(info, ({ url }) => url === '');
    expect((await stage.bot.api.getUpdates())[0]?.message?.text).toBe('one');
  });
});

describe('a webhook with one connection', () => {
  it('gets one update at a time, whoever sent it', async () => {
    let release = (): void => {};
    const after = new Promise<void>((resolve) => {
      release = resolve;
    });
    const setting = { max_connections: 1 };
    await stage.bot.api.setWebhook(receiver.url, setting);
    receiver.answers({ after });
    await stage.client.say(MAYA, 'one');
    expect(await nextText()).toBe('one');
    await stage.client.say(TOBI, 'two');
    await stage.bot.api.deleteWebhook({ drop_pending_updates: true });
    release();
    await stage.bot.api.setWebhook(receiver.url, setting);
    await stage.client.say(TOBI, 'three');
    expect(await nextText()).toBe('three');
  });
});

it('what an older webhook answers late is not held against the new one', async () => {
  let release = (): void => {};
  const after = new Promise<void>((resolve) => {
    release = resolve;
  });
  await stage.bot.api.setWebhook(receiver.url);
  receiver.answers({ status: 500, after });
  await stage.client.say(MAYA, 'one');
  expect(await nextText()).toBe('one');
  await stage.bot.api.setWebhook(`${receiver.url}/new`);
  release();
  expect(await nextText()).toBe('one');
  const later = await until(info, ({ pending_update_count: count }) => count === 0);
  expect(later).not.toHaveProperty('last_error_message');
});

it('a webhook gets an update twice, with one id, by a fault', async () => {
  await stage.bot.api.setWebhook(receiver.url);
  await stage.client.setFault({ method: '*', mode: 'duplicate_updates', count: 1 });
  await stage.client.say(MAYA, 'one');
  const [first, second] = [await receiver.next(), await receiver.next()];
  expect(second.update).toEqual(first.update);
  expect(first.update).toMatchObject({ message: { text: 'one' } });
});

it('what waits is sent by itself as time goes on', async () => {
  const clock = createTestClock();
  const machineSleep = async (ms: number): Promise<void> => clock.pass(ms);
  const running = await createStage({ clock, machineSleep });
  await openBoth(running);
  const start = clock.now().getTime();
  receiver.answers({ status: 500 }, { status: 501 }, { status: 502 });
  await running.bot.api.setWebhook(receiver.url);
  await running.client.say(MAYA, 'one');
  for (let i = 0; i < 4; i += 1) expect(await nextText()).toBe('one');
  expect(clock.now().getTime() - start).toBe(6000);
  await running.rehearsal.close();
});
