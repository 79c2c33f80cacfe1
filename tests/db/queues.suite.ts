import { expect, it } from 'vitest';
import { isMigrated, readQueues, type Store } from '../../db/index.ts';
import { aBot, at } from '../support/an-inbox.ts';

/** What waits in the inbox. What is due is seen in tests/jobs. */
export function queuesSuite(opened: () => Store) {
  it('an update waits until it is handled, however often it is taken', async () => {
    const bot = aBot(opened);
    const before = (await readQueues(opened(), at(1))).inbox.waiting;
    await bot.receive(1, 2);
    await bot.claim();
    const both = (await readQueues(opened(), at(1))).inbox;
    expect(both.waiting - before).toBe(2);
    expect(both.oldest).toBeInstanceOf(Date);
    await bot.finish(1);
    await bot.retry(2, at(60));
    expect((await readQueues(opened(), at(1))).inbox.waiting - before).toBe(1);
    await bot.claim(at(60));
    await bot.setAside(2);
    expect((await readQueues(opened(), at(61))).inbox.waiting).toBe(before);
  });

  it('a store that was opened has all migrations', async () => {
    expect(await isMigrated(opened())).toBe(true);
  });
}
