import { InputFile } from 'grammy';
import { describe, expect, it } from 'vitest';
import type { CallBody } from '../../rehearsal/bot-api/body.ts';
import { createRateLimits, uploadSpacing } from '../../rehearsal/rate-limits.ts';
import { createStage, MAYA, openBoth, refusal, TOBI } from './support/stage.ts';

/** A pace on which waiting moves time on at once. */
function fakePace() {
  let ms = 1_000_000;
  const slept: number[] = [];
  const sleep = async (by: number): Promise<void> => {
    slept.push(Math.round(by));
    ms += by;
  };
  const pass = (by: number): void => {
    ms += by;
  };
  return { now: () => ms, sleep, pass, slept };
}

function call(chatId: number, uploadBytes = 0): CallBody {
  const bytes = new Uint8Array(uploadBytes);
  const uploads = new Map(uploadBytes === 0 ? [] : [['file', { fileName: 'a', bytes }]]);
  return { params: { chat_id: chatId }, uploads };
}

/** How many calls in a row pass, up to `most`. */
async function passes(most: number, admit: (index: number) => Promise<void>): Promise<number> {
  for (let i = 0; i < most; i += 1) {
    try {
      await admit(i);
    } catch {
      return i;
    }
  }
  return most;
}

describe('rate limits', () => {
  it('let five messages into a chat and then one a second', async () => {
    const pace = fakePace();
    const limits = createRateLimits(pace, true);
    const send = () => limits.admit('sendMessage', call(MAYA));
    expect(await passes(9, send)).toBe(5);
    await expect(send()).rejects.toMatchObject({
      code: 429,
      message: 'Too Many Requests: retry after 1',
      retryAfter: 1,
    });
    await limits.admit('sendMessage', call(TOBI));
    pace.pass(1000);
    expect(await passes(9, send)).toBe(1);
    pace.pass(60_000);
    expect(await passes(9, send)).toBe(5);
  });

  it('let thirty messages out at once and then thirty a second', async () => {
    const pace = fakePace();
    const limits = createRateLimits(pace, true);
    const send = (index: number) => limits.admit('copyMessage', call(index));
    expect(await passes(99, send)).toBe(30);
    pace.pass(1000);
    expect(await passes(99, (index) => send(100 + index))).toBe(30);
  });

  it('count new messages, not edits, answers and polls', async () => {
    const limits = createRateLimits(fakePace(), true);
    for (const method of ['editMessageText', 'answerCallbackQuery', 'sendChatAction']) {
      expect(await passes(99, () => limits.admit(method, call(MAYA)))).toBe(99);
    }
  });

  it('are not kept when off, and begin anew when turned on', async () => {
    const limits = createRateLimits(fakePace(), false);
    const send = () => limits.admit('sendMessage', call(MAYA));
    expect(await passes(99, send)).toBe(99);
    limits.turn(true);
    expect(await passes(99, send)).toBe(5);
    limits.turn(true);
    expect(await passes(99, send)).toBe(5);
  });
});

describe('uploads of one size', () => {
  it('over 100,000 bytes are spaced by 0.2 to 0.9 seconds', () => {
    expect([100_001, 4_000_000, 50_000_000].map(uploadSpacing)).toEqual([200, 400, 900]);
  });

  it('take turns after a second, and are refused when the queue is longer than five', async () => {
    const pace = fakePace();
    const slept = (): number[] => pace.slept.splice(0);
    const limits = createRateLimits(
      { now: pace.now, sleep: async (ms) => void pace.slept.push(ms) },
      true,
    );
    const upload = (bytes: number) => limits.admit('editMessageMedia', call(MAYA, bytes));
    expect(await passes(99, () => upload(9_000_000))).toBe(7);
    expect(slept()).toEqual([800, 1700, 2600, 3500, 4400, 3000]);
    await expect(upload(9_000_000)).rejects.toMatchObject({ code: 429, retryAfter: 60 });
    await upload(9_000_001);
    expect(slept()).toEqual([3000]);
  });

  it('of 100,000 bytes and less do not wait', async () => {
    const pace = fakePace();
    const limits = createRateLimits(pace, true);
    expect(await passes(99, () => limits.admit('editMessageMedia', call(MAYA, 100_000)))).toBe(99);
    expect(pace.slept).toEqual([]);
  });
});

it('a bot is told in body and header when to come back, once the limits are on', async () => {
  const pace = fakePace();
  const stage = await createStage({ machineClock: pace.now, machineSleep: pace.sleep });
  await openBoth(stage);
  const { bot, client, rehearsal } = stage;
  for (let i = 0; i < 9; i += 1) await bot.api.sendMessage(MAYA, `before ${i}`);
  await client.setLimits(true);
  const picture = new InputFile(new Uint8Array(9), 'a.bin');
  for (let i = 0; i < 5; i += 1) await bot.api.sendDocument(MAYA, picture);
  const answer = await fetch(
    `${rehearsal.apiRoot}/bot${rehearsal.token}/sendMessage?chat_id=${MAYA}&text=x`,
  );
  expect([answer.status, answer.headers.get('retry-after')]).toEqual([429, '1']);
  expect(await answer.json()).toEqual({
    ok: false,
    error_code: 429,
    description: 'Too Many Requests: retry after 1',
    parameters: { retry_after: 1 },
  });
  expect(await refusal(bot.api.sendMessage(MAYA, 'x'))).toContain('429');
  await client.setLimits(false);
  await expect(bot.api.sendMessage(MAYA, 'after')).resolves.toBeTruthy();
  await rehearsal.close();
});
