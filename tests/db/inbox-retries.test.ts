import { describe, expect, it } from 'vitest';
import { HANDLER_TRIES, MAX_TRIES, purgeUpdates, type Store } from '../../db/index.ts';
import { aBot, at, idsOf, NEVER } from '../support/an-inbox.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends } from '../support/stores.ts';
import { MORNING } from '../support/term.ts';

describe.each(backends)('the inbox on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('when a handler fails', () => failing(opened));
  describe('when a handler has failed for good', () => givenUp(opened));
  describe('when a handler dies', () => abandoned(opened));
  describe('when a handler is slow', () => overtaken(opened));
});

function overtaken(opened: () => Store) {
  it('a slow process’s word no longer counts once another has taken the update', async () => {
    const bot = aBot(opened);
    await bot.receive(1);
    await bot.claim(MORNING);
    // A minute later the update counts as abandoned, and somebody else takes it.
    expect(idsOf(await bot.claim(at(61), at(60)))).toEqual([1]);
    await bot.retry(1, at(70), at(62), 1);
    expect(await bot.rows()).toMatchObject([{ status: 'handling', tries: 2 }]);
    await bot.finish(1, at(63), 2);
    await bot.retry(1, at(70), at(64), 1);
    expect(await bot.rows()).toMatchObject([{ status: 'done', payload: null }]);
  });
}

function failing(opened: () => Store) {
  it('an update put back is not taken before its time, and says when that is', async () => {
    const bot = aBot(opened);
    await bot.receive(1);
    expect(await bot.nextTry()).toBeNull();
    await bot.claim();
    await bot.retry(1, at(5));
    expect(await bot.claim(at(4))).toEqual([]);
    expect(await bot.nextTry(at(4))).toEqual(at(5));
    expect(await bot.nextTry(at(5))).toBeNull();
    expect((await bot.claim(at(5))).map((row) => row.tries)).toEqual([2]);
  });

  it('the same person’s later updates wait for it, other people’s and nobody’s do not', async () => {
    const bot = aBot(opened);
    await bot.receiveFrom(7, 1, 4);
    await bot.receiveFrom(8, 2, 5);
    await bot.receiveFrom(null, 3, 6);
    await bot.claim(MORNING, NEVER, 3);
    await bot.retry(1, at(5));
    await bot.finish(2);
    await bot.retry(3, at(5));
    expect(idsOf(await bot.claim(at(1)))).toEqual([5, 6]);
    expect(idsOf(await bot.claim(at(5)))).toEqual([1, 3, 4]);
  });

  it('nothing of a person is taken while an older update of theirs is being handled', async () => {
    const bot = aBot(opened);
    await bot.receive(1);
    await bot.claim();
    await bot.receive(2);
    expect(await bot.claim()).toEqual([]);
    await bot.finish(1);
    expect(idsOf(await bot.claim())).toEqual([2]);
  });

  it('claims at once never take a person’s updates apart', async () => {
    const bot = aBot(opened);
    await bot.receive(...Array.from({ length: 20 }, (_, index) => index));
    const taken = await Promise.all([1, 2, 3, 4].map(() => bot.claim(MORNING, NEVER, 5)));
    expect(taken.filter((batch) => batch.length > 0).map(idsOf)).toEqual([[0, 1, 2]]);
  });

  it('updates that were taken and not begun go back as if they had not been taken', async () => {
    const bot = aBot(opened);
    await bot.receive(1, 2, 3);
    const before = await bot.rows();
    await bot.claim();
    await bot.finish(1);
    await bot.putBack();
    await bot.putBack(1, 2, 3);
    const rows = await bot.rows();
    expect(rows.map((row) => [row.status, row.tries])).toEqual([
      ['done', 1],
      ['pending', 0],
      ['pending', 0],
    ]);
    expect(rows[1]).toMatchObject({ ...before[1], claimed_at: rows[1]?.claimed_at });
  });
}

function givenUp(opened: () => Store) {
  it('one that only waits for its apology holds nothing up', async () => {
    const bot = aBot(opened);
    await bot.receive(1, 2);
    for (let tries = 1; tries < HANDLER_TRIES; tries += 1) {
      expect(idsOf(await bot.claim(MORNING, NEVER, 1))).toEqual([1]);
      // Handled, it lets nothing of the same person past.
      expect(await bot.claim()).toEqual([]);
      await bot.retry(1);
    }
    await bot.claim(MORNING, NEVER, 1);
    await bot.retry(1, at(9));
    expect(idsOf(await bot.claim())).toEqual([2]);
    expect(idsOf(await bot.claim(at(9)))).toEqual([1]);
  });

  it('one set aside keeps what it said and is not taken again', async () => {
    const bot = aBot(opened);
    await bot.receive(1, 2);
    await bot.claim(MORNING, NEVER, 1);
    await bot.setAside(1);
    expect((await bot.rows())[0]).toMatchObject({ status: 'failed', payload: { text: 't1' } });
    expect(idsOf(await bot.claim(at(999), at(999)))).toEqual([2]);
  });
}

function abandoned(opened: () => Store) {
  it('a start takes up at once what was being handled, of its own bot only, and counts the try', async () => {
    const [bot, other] = [aBot(opened), aBot(opened)];
    await bot.receive(1, 2);
    await other.receive(1);
    await bot.claim(MORNING, NEVER, 1);
    await other.claim();
    expect(await bot.claim(at(1))).toEqual([]);
    expect(await bot.resume()).toBe(1);
    expect((await bot.claim(at(1))).map((row) => [row.updateId, row.tries])).toEqual([
      [1, 2],
      [2, 1],
    ]);
    expect(await other.claim(at(1))).toEqual([]);
  });

  it('an update whose handling began before the limit is taken again, a younger one is not', async () => {
    const bot = aBot(opened);
    await bot.receive(1);
    await bot.claim(at(0));
    expect(await bot.claim(at(60), at(0))).toEqual([]);
    expect((await bot.claim(at(60), at(1))).map((row) => row.tries)).toEqual([2]);
    expect(await bot.claim(at(61), at(60))).toEqual([]);
  });

  it('an update that outlives no handler is set aside after its last try, and then purged', async () => {
    const bot = aBot(opened);
    await bot.receive(1);
    for (let tries = 1; tries <= MAX_TRIES; tries += 1) {
      expect(await bot.claim(at(tries * 10), at(tries * 10))).toHaveLength(1);
    }
    expect((await bot.rows()).map((row) => row.status)).toEqual(['handling']);
    expect(await bot.claim(at(100), at(100))).toEqual([]);
    expect((await bot.rows()).map((row) => row.status)).toEqual(['failed']);
    await purgeUpdates(opened(), at(101));
    expect(await bot.rows()).toEqual([]);
  });
}
