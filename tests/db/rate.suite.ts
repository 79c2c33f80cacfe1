import { describe, expect, it } from 'vitest';
import {
  BURST,
  claimStore,
  createTurnstile,
  dropExpectation,
  expectText,
  findFile,
  forgetChatSlots,
  forgetFile,
  type Haste,
  pauseSending,
  readExpectation,
  type Store,
  saveFile,
  takeSendSlot,
} from '../../db/index.ts';
import { bookChatSlot } from '../../db/rate/chat-slot.ts';
import { codeOf } from '../support/code-of.ts';
import { aChat } from '../support/people.ts';
import { runSql } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';
import { impatientPace } from '../support/world.ts';

const at = (ms: number) => new Date(MORNING.getTime() + ms);

/** The small tables of the engine and the bot. Runs on the store that inbox.test.ts opens. */
export function rateSuite(opened: () => Store): void {
  describe('places in the line', () => slots(opened));
  describe('places in a chat', () => chatSlots(opened));
  describe('the line of one process', () => lineOfOneProcess(opened));
  describe('a pause', () => pauses(opened));
  describe('what is remembered for a chat', () => expectations(opened));
  describe('an uploaded file', () => files(opened));
  describe('a database', () => ownership(opened));
}

let lastBot = 500;

function aBot(): number {
  lastBot += 1;
  return lastBot;
}

const RATE = 25;
const INTERVAL = 1_000 / RATE;

const ask = (store: Store, botId: number, ms: number, haste: Haste = 'bulk') =>
  takeSendSlot(store, { botId, haste, at: at(ms), perSecond: RATE });

async function askAll(store: Store, botId: number, times: readonly number[]): Promise<number[]> {
  // The line exists already, as a bot makes it before it does anything else.
  await pauseSending(store, botId, new Date(0));
  const waits: number[] = [];
  for (const ms of times) waits.push(await ask(store, botId, ms));
  return waits;
}

/**
 * ITU-T I.371's generic cell rate algorithm, virtual scheduling, from its description (quoted from memory): a cell conforms when
 * it is no earlier than its theoretical arrival time less the tolerance; that time moves on by the increment then, and stays
 * where it is for a cell that does not conform.
 */
function expectedWaits(times: readonly number[], tolerance = BURST.bulk * INTERVAL): number[] {
  let theoretical = Number.NEGATIVE_INFINITY;
  return times.map((now) => {
    const wait = Math.max(0, theoretical - tolerance - now);
    if (wait === 0) theoretical = Math.max(theoretical, now) + INTERVAL;
    return wait;
  });
}

function slots(opened: () => Store) {
  it('six in bulk may leave at once; the seventh is told how long to wait, and books nothing', async () => {
    const times = Array.from({ length: 9 }, () => 0);
    const waits = await askAll(opened(), aBot(), times);
    expect(waits).toEqual(expectedWaits(times));
    expect(waits).toEqual([0, 0, 0, 0, 0, 0, 40, 40, 40]);
  });

  it('messages that come as fast as allowed, or after a rest, never wait', async () => {
    const steady = Array.from({ length: 60 }, (_, index) => index * INTERVAL);
    expect(await askAll(opened(), aBot(), steady)).toEqual(steady.map(() => 0));
    const rested = [...Array.from({ length: 30 }, () => 0), 60_000];
    expect((await askAll(opened(), aBot(), rested)).at(-1)).toBe(0);
  });

  it('uneven arrivals wait as the algorithm says', async () => {
    const times = Array.from({ length: 80 }, (_, index) => Math.floor(index / 9) * 130);
    const waits = await askAll(opened(), aBot(), times);
    expect(waits).toEqual(expectedWaits(times));
    expect(Math.max(...waits)).toBeGreaterThan(0);
  });

  it('no more get a place of many who ask at once than places there are', async () => {
    const botId = aBot();
    await askAll(opened(), botId, []);
    const waits = await Promise.all(Array.from({ length: 60 }, () => ask(opened(), botId, 0)));
    expect(waits.filter((wait) => wait === 0)).toHaveLength(BURST.bulk + 1);
  });

  it('an answer leaves at once where bulk has to wait, and bulk then waits for it too', async () => {
    const botId = aBot();
    await askAll(
      opened(),
      botId,
      Array.from({ length: 6 }, () => 0),
    );
    expect(await ask(opened(), botId, 0)).toBe(INTERVAL);
    expect(await ask(opened(), botId, 0, 'answer')).toBe(0);
    expect(await ask(opened(), botId, 0)).toBe(2 * INTERVAL);
    for (let more = 1; more < BURST.answer - BURST.bulk; more += 1) {
      expect(await ask(opened(), botId, 0, 'answer')).toBe(0);
    }
    expect(await ask(opened(), botId, 0, 'answer')).toBe(INTERVAL);
  });

  it('bots have lines of their own, bot 0 too', async () => {
    const [busy, other] = [aBot(), aBot()];
    await askAll(
      opened(),
      busy,
      Array.from({ length: 50 }, () => 0),
    );
    expect(await askAll(opened(), other, [0])).toEqual([0]);
    const zero = await askAll(
      opened(),
      0,
      Array.from({ length: 7 }, () => 0),
    );
    expect(zero.at(-1)).toBe(INTERVAL);
  });

  it('a bot without a line gets one', async () => {
    const botId = aBot();
    expect(await ask(opened(), botId, 0)).toBe(1);
    expect(await ask(opened(), botId, 1)).toBe(0);
  });
}

function chatSlots(opened: () => Store) {
  it('three in bulk or four answers fit at once; what follows comes a second apart', async () => {
    const chat = { botId: aBot(), chatId: aChat() };
    const book = (haste: Haste, ms = 0) =>
      bookChatSlot(opened(), chat, { haste, at: at(ms), perSecond: 1 });
    expect([await book('bulk'), await book('bulk'), await book('bulk')]).toEqual([0, 0, 0]);
    expect(await book('answer')).toBe(0);
    expect(await book('bulk')).toBe(2_000);
    expect(await book('bulk', 60_000)).toBe(0);
  });

  it('are each chat’s and each bot’s own, and are forgotten when they have passed', async () => {
    const [one, chatId] = [aBot(), aChat()];
    const book = (botId: number, chat: number) =>
      bookChatSlot(opened(), { botId, chatId: chat }, { haste: 'bulk', at: at(0), perSecond: 1 });
    for (let sent = 0; sent < 4; sent += 1) await book(one, chatId);
    expect(await book(one, aChat())).toBe(0);
    expect(await book(aBot(), chatId)).toBe(0);
    const forget = (ms: number) =>
      forgetChatSlots(opened(), { botId: one, before: at(ms), limit: 9 });
    expect(await forget(2_000)).toBe(1);
    expect(await forget(5_000)).toBe(1);
    expect(await book(one, chatId)).toBe(0);
  });
}

function pauses(opened: () => Store) {
  it.each(['a new line', 'a line in use'])(
    'makes everyone in %s wait for its end, answers too',
    async (line) => {
      const botId = aBot();
      if (line === 'a line in use') await askAll(opened(), botId, [0]);
      await pauseSending(opened(), botId, at(5_000));
      for (const ms of [0, 2_000, 4_999]) {
        expect(await ask(opened(), botId, ms)).toBe(5_000 - ms);
        expect(await ask(opened(), botId, ms, 'answer')).toBe(5_000 - ms);
      }
      expect(await ask(opened(), botId, 60_000)).toBe(0);
    },
  );

  it('the longest one wins, whichever comes first', async () => {
    for (const order of [
      [3_000, 9_000],
      [9_000, 3_000],
    ]) {
      const botId = aBot();
      for (const ms of order) await pauseSending(opened(), botId, at(ms));
      expect(await ask(opened(), botId, 0)).toBe(9_000);
    }
  });

  it('ends without a stampede: no more leave at once than ever', async () => {
    const botId = aBot();
    await pauseSending(opened(), botId, at(10_000));
    const waits = await Promise.all(Array.from({ length: 60 }, () => ask(opened(), botId, 10_000)));
    expect(waits.filter((wait) => wait === 0)).toHaveLength(BURST.bulk + 1);
  });

  it('is told to every process that listens, also on another connection', async () => {
    const botId = aBot();
    const heard = new Promise<string>((resolve) => {
      void opened().peers.listen('paused', (news) => {
        if (news !== '') resolve(news);
      });
    });
    await opened().peers.leads('nothing');
    await pauseSending(opened(), botId, at(1_000));
    expect(await heard).toBe(`${botId} ${at(1_000).getTime()}`);
  });
}

function lineOfOneProcess(opened: () => Store) {
  it('lets answers pass before bulk that waits', async () => {
    const store = opened();
    const botId = aBot();
    await askAll(store, botId, []);
    const pace = impatientPace();
    const turnstile = createTurnstile({ store, botId, pace, perSecond: RATE });
    const left: string[] = [];
    const pass = async (haste: Haste, name: string) => {
      await turnstile.pass({ chatId: aChat(), haste, most: 60_000 });
      left.push(name);
    };
    // Held up together, so that all are in line when the first may leave.
    await turnstile.pause(1);
    const bulk = Array.from({ length: 10 }, (_, place) => pass('bulk', `b${place}`));
    const answers = Array.from({ length: 3 }, (_, place) => pass('answer', `a${place}`));
    await Promise.all([...bulk, ...answers]);
    expect(left).toHaveLength(13);
    // Six in bulk fit at once; by then every answer is in line.
    expect(left.slice(0, 9)).toEqual(expect.arrayContaining(['a0', 'a1', 'a2']));
  });

  it('sends nobody into a wait longer than they have', async () => {
    const botId = aBot();
    const turnstile = createTurnstile({ store: opened(), botId, pace: impatientPace() });
    await turnstile.pause(100);
    const asked = { chatId: aChat(), haste: 'bulk', most: 30_000 } as const;
    expect(await turnstile.pass(asked)).toBeGreaterThan(30_000);
    expect(await turnstile.passPause(30_000)).toBe(100_000);
    expect(await turnstile.passPause(100_000)).toBe(0);
  });
}

function expectations(opened: () => Store) {
  it('is the newest wish, until it is dropped', async () => {
    const chatId = aChat();
    const wish = (kind: string) => ({
      chatId,
      expectation: { kind, data: { step: 1 } },
      now: MORNING,
    });
    expect(await readExpectation(opened(), chatId)).toBeNull();
    await expectText(opened(), wish('title'));
    await expectText(opened(), wish('zone'));
    expect(await readExpectation(opened(), chatId)).toEqual({ kind: 'zone', data: { step: 1 } });
    expect(await readExpectation(opened(), aChat())).toBeNull();
    await dropExpectation(opened(), chatId);
    expect(await readExpectation(opened(), chatId)).toBeNull();
  });
}

function files(opened: () => Store) {
  it('is found by its content and its bot, replaced by a newer upload, and forgotten', async () => {
    const key = { hash: 'abc', botId: aBot() };
    const file = { fileId: 'f1', uniqueId: 'u1', bytes: 10, now: MORNING };
    expect(await findFile(opened(), key)).toBeNull();
    await saveFile(opened(), key, file);
    await saveFile(opened(), key, { ...file, fileId: 'f2' });
    expect(await findFile(opened(), key)).toEqual({ fileId: 'f2', uniqueId: 'u1' });
    expect(await findFile(opened(), { ...key, botId: aBot() })).toBeNull();
    await forgetFile(opened(), key);
    expect(await findFile(opened(), key)).toBeNull();
  });
}

function ownership(opened: () => Store) {
  it('that has just been taken makes nobody wait, whatever the school’s clock shows', async () => {
    await runSql(opened(), 'delete from rate');
    await claimStore(opened(), 0);
    // The sending rate runs on real time, which may be years behind a rehearsal's clock.
    expect(await ask(opened(), 0, Date.UTC(2020, 0, 1) - MORNING.getTime())).toBe(0);
    await runSql(opened(), 'delete from rate');
  });

  it('that a rehearsal used takes no real bot, and the other way round', async () => {
    await runSql(opened(), 'delete from rate');
    expect(await codeOf(claimStore(opened(), 0))).toBe('accepted');
    expect(await codeOf(claimStore(opened(), 0))).toBe('accepted');
    expect(await codeOf(claimStore(opened(), 77))).toBe('conflict');
    await runSql(opened(), 'delete from rate');
    expect(await codeOf(claimStore(opened(), 77))).toBe('accepted');
    expect(await codeOf(claimStore(opened(), 78))).toBe('accepted');
    expect(await codeOf(claimStore(opened(), 0))).toBe('conflict');
  });
}
