import { describe, expect, it } from 'vitest';
import {
  claimStore,
  dropExpectation,
  expectText,
  findFile,
  forgetFile,
  pauseSending,
  readExpectation,
  SENDS_A_SECOND,
  type Store,
  saveFile,
  takeSendSlot,
} from '../../db/index.ts';
import { codeOf } from '../support/code-of.ts';
import { aChat } from '../support/people.ts';
import { runSql } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';

const INTERVAL = 1_000 / SENDS_A_SECOND;
const at = (ms: number) => new Date(MORNING.getTime() + ms);

/** The small tables of the engine and the bot. Runs on the store that inbox.test.ts opens. */
export function rateSuite(opened: () => Store): void {
  describe('places in the line', () => slots(opened));
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

async function take(store: Store, botId: number, times: readonly number[]): Promise<number[]> {
  const waits: number[] = [];
  for (const ms of times) waits.push(await takeSendSlot(store, botId, at(ms)));
  return waits;
}

/**
 * ITU-T I.371's generic cell rate algorithm, virtual scheduling, from its description (quoted from memory): a cell conforms when
 * it is no earlier than its theoretical arrival time less the tolerance; that time moves on by the increment.
 */
function expectedWaits(times: readonly number[], tolerance = 1_000): number[] {
  let theoretical = Number.NEGATIVE_INFINITY;
  return times.map((now) => {
    const due = Math.max(theoretical, now);
    theoretical = due + INTERVAL;
    return Math.max(0, due - tolerance - now);
  });
}

function slots(opened: () => Store) {
  it('26 messages may leave at once; from the 27th on each waits its turn', async () => {
    const times = Array.from({ length: 40 }, () => 0);
    const waits = await take(opened(), aBot(), times);
    expect(waits).toEqual(expectedWaits(times));
    expect(waits.filter((wait) => wait === 0)).toHaveLength(26);
    expect(waits.slice(26, 29)).toEqual([40, 80, 120]);
  });

  it('messages that come as fast as allowed, or after a rest, never wait', async () => {
    const steady = Array.from({ length: 60 }, (_, index) => index * INTERVAL);
    expect(await take(opened(), aBot(), steady)).toEqual(steady.map(() => 0));
    const rested = [...Array.from({ length: 30 }, () => 0), 60_000];
    expect((await take(opened(), aBot(), rested)).at(-1)).toBe(0);
  });

  it('uneven arrivals wait as the algorithm says', async () => {
    const times = Array.from({ length: 80 }, (_, index) => Math.floor(index / 9) * 130);
    const waits = await take(opened(), aBot(), times);
    expect(waits).toEqual(expectedWaits(times));
    expect(Math.max(...waits)).toBeGreaterThan(0);
  });

  it('takers at once get a place each', async () => {
    const botId = aBot();
    const waits = await Promise.all(
      Array.from({ length: 60 }, () => takeSendSlot(opened(), botId, at(0))),
    );
    const expected = expectedWaits(Array.from({ length: 60 }, () => 0));
    expect(waits.sort((a, b) => a - b)).toEqual(expected);
  });

  it('bots have lines of their own, bot 0 too', async () => {
    const [busy, other] = [aBot(), aBot()];
    await take(
      opened(),
      busy,
      Array.from({ length: 50 }, () => 0),
    );
    expect(await take(opened(), other, [0])).toEqual([0]);
    const zero = await take(
      opened(),
      0,
      Array.from({ length: 27 }, () => 0),
    );
    expect(zero.at(-1)).toBe(INTERVAL);
  });
}

function pauses(opened: () => Store) {
  it.each(['a new line', 'a line in use'])(
    'makes everyone in %s wait for its end',
    async (line) => {
      const botId = aBot();
      if (line === 'a line in use') await take(opened(), botId, [0]);
      await pauseSending(opened(), botId, at(5_000));
      expect(await take(opened(), botId, [0, 2_000, 4_999])).toEqual([5_000, 3_000, 1]);
      expect(await take(opened(), botId, [60_000])).toEqual([0]);
    },
  );

  it('the longest one wins, whichever comes first', async () => {
    for (const order of [
      [3_000, 9_000],
      [9_000, 3_000],
    ]) {
      const botId = aBot();
      for (const ms of order) await pauseSending(opened(), botId, at(ms));
      expect(await take(opened(), botId, [0])).toEqual([9_000]);
    }
  });

  it.each(['a new line', 'a line in use'])(
    'in %s ends without a stampede: no more leave at once than ever',
    async (line) => {
      const botId = aBot();
      if (line === 'a line in use') await take(opened(), botId, [0]);
      await pauseSending(opened(), botId, at(10_000));
      const times = Array.from({ length: 100 }, (_, index) => index * 100);
      const waits = await take(opened(), botId, times);
      const starts = times.map((ms, index) => ms + (waits[index] ?? 0));
      expect(Math.min(...starts)).toBe(10_000);
      expect(starts.filter((start) => start === 10_000)).toHaveLength(26);
      expect(starts.at(-1)).toBe(10_000 + (100 - 26) * INTERVAL);
    },
  );
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
    expect(await takeSendSlot(opened(), 0, new Date('2020-01-01T00:00:00Z'))).toBe(0);
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
