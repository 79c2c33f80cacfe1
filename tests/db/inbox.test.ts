import { describe, expect, it } from 'vitest';
import { MAX_TRIES, purgeUpdates, type Store, storeUpdates } from '../../db/index.ts';
import { aBot, at, idsOf, NEVER } from '../support/an-inbox.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends } from '../support/stores.ts';
import { MORNING } from '../support/term.ts';
import { queuesSuite } from './queues.suite.ts';
import { rateSuite } from './rate.suite.ts';

describe.each(backends)('the inbox on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('as it fills', () => storing(opened));
  describe('as it is worked off', () => claiming(opened));
  describe('when updates end', () => ending(opened));
  describe('as it is watched', () => queuesSuite(opened));
  describe('beside it', () => rateSuite(opened));
});

function storing(opened: () => Store) {
  it('an update that comes again is stored once, and what came first stays', async () => {
    const bot = aBot(opened);
    expect(await bot.receive()).toBe(0);
    expect(await bot.receive(5, 6, 6)).toBe(2);
    const before = await bot.rows();
    const again = { updateId: 5, actorId: 8, payload: { text: 'other' } };
    const input = { botId: bot.botId, updates: [again], now: at(1) };
    expect(await storeUpdates(opened(), input)).toEqual({ stored: 0, leftOut: 0 });
    expect(await bot.rows()).toEqual(before);
  });

  it('an update with characters the database refuses is stored, each one replaced', async () => {
    const { botId, claim } = aBot(opened);
    const payload = { 'a\u0000': ['x\u0000y', '\ud800z', 'half past 🕜', 3, null, true] };
    const updates = [{ updateId: 1, actorId: null, payload }];
    expect((await storeUpdates(opened(), { botId, updates, now: MORNING })).stored).toBe(1);
    expect((await claim()).map((row) => row.payload)).toEqual([
      { 'a\ufffd': ['x\ufffdy', '\ufffdz', 'half past 🕜', 3, null, true] },
    ]);
  });

  it('two deliveries of the same updates at once store each once', async () => {
    const bot = aBot(opened);
    const stored = await Promise.all([bot.receive(1, 2, 3), bot.receive(1, 2, 3)]);
    expect(stored.reduce((sum, count) => sum + count)).toBe(3);
    expect(await bot.rows()).toHaveLength(3);
  });

  it('two bots may share an update id, and bot 0 is a bot', async () => {
    const [first, second, zero] = [aBot(opened), aBot(opened), aBot(opened, 0)];
    for (const bot of [first, second, zero]) expect(await bot.receive(11)).toBe(1);
    expect(idsOf(await zero.claim())).toEqual([11]);
    await zero.finish(11);
    expect((await zero.rows()).map((row) => row.status)).toEqual(['done']);
    expect((await first.rows()).map((row) => row.status)).toEqual(['pending']);
    expect(idsOf(await second.claim())).toEqual([11]);
  });
}

function claiming(opened: () => Store) {
  it('updates are taken in the order of their ids, no more than asked for, and each once', async () => {
    const bot = aBot(opened);
    for (const id of [9, 3, 7, 1, 5]) await bot.receiveFrom(id * 10, id);
    expect(idsOf(await bot.claim(MORNING, NEVER, 3))).toEqual([1, 3, 5]);
    const fresh = { receivedAt: MORNING, tries: 1, shed: false };
    expect(await bot.claim(MORNING, NEVER, 3)).toEqual([
      { updateId: 7, actorId: 70, payload: { text: 't7' }, ...fresh },
      { updateId: 9, actorId: 90, payload: { text: 't9' }, ...fresh },
    ]);
    expect(await bot.claim()).toEqual([]);
  });

  it('claims at once never take the same update', async () => {
    const bot = aBot(opened);
    const all = Array.from({ length: 40 }, (_, index) => index);
    await bot.receiveFrom(null, ...all);
    const taken = await Promise.all([1, 2, 3, 4].map(() => bot.claim(MORNING, NEVER, 10)));
    const ids = taken.flatMap(idsOf);
    expect(new Set(ids).size).toBe(ids.length);
    expect(taken.every((batch) => batch.length <= 10)).toBe(true);
    const rest = await bot.claim(MORNING, NEVER, 40);
    expect([...ids, ...idsOf(rest)].sort((a, b) => a - b)).toEqual(all);
  });

  it('an update that is put back is tried as often as allowed, then set aside with what it said', async () => {
    const bot = aBot(opened);
    await bot.receive(1);
    for (let tries = 1; tries <= MAX_TRIES; tries += 1) {
      expect((await bot.claim()).map((row) => row.tries)).toEqual([tries]);
      await bot.retry(1);
    }
    expect(await bot.claim()).toEqual([]);
    const [row] = await bot.rows();
    expect(row).toMatchObject({ status: 'failed', tries: MAX_TRIES, payload: { text: 't1' } });
  });

  it('a finished update forgets what it said and is not taken again', async () => {
    const bot = aBot(opened);
    await bot.receive(1);
    await bot.claim();
    await bot.finish(1);
    const [row] = await bot.rows();
    expect(row).toMatchObject({ status: 'done', payload: null });
    expect(await bot.claim(at(999), at(999))).toEqual([]);
  });
}

function ending(opened: () => Store) {
  it('purging deletes what ended before the limit, and nothing that is open', async () => {
    await purgeUpdates(opened(), at(999_999));
    const bot = aBot(opened);
    await bot.receiveFrom(null, 1, 2, 3, 4);
    await bot.claim(MORNING, NEVER, 3);
    await bot.finish(1, at(10));
    await bot.finish(2, at(20));
    expect(await purgeUpdates(opened(), at(20))).toBe(1);
    expect((await bot.rows()).map((row) => row.update_id)).toEqual([2, 3, 4]);
    expect(await purgeUpdates(opened(), at(21))).toBe(1);
    expect(await purgeUpdates(opened(), at(999_999))).toBe(0);
    expect((await bot.rows()).map((row) => row.status)).toEqual(['handling', 'pending']);
  });
}
