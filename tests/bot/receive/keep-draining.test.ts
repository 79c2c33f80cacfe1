import { beforeEach, describe, expect, it } from 'vitest';
import { keepDraining } from '../../../bot/receive/keep-draining.ts';
import { type Store, storeUpdates } from '../../../db/index.ts';
import { readTable } from '../../support/raw-rows.ts';
import { sharedStore } from '../../support/shared-store.ts';
import { embedded } from '../../support/stores.ts';
import { MORNING } from '../../support/term.ts';

/** A wait that the loop has begun. It ends when the test says so. */
interface Wait {
  readonly milliseconds: number;
  readonly signal: AbortSignal;
  end(): void;
}

const opened = sharedStore(embedded);
let lastBot = 500;
let now: Date;

beforeEach(() => {
  now = MORNING;
});

/** A running inbox of a bot of its own, whose handler fails so many times, then works. */
function start(store: Store, { failures }: { failures: number }) {
  lastBot += 1;
  const botId = lastBot;
  const handled = queue<number>();
  const waits = queue<Wait>();
  let left = failures;
  const loop = keepDraining({
    store,
    botId,
    clock: { now: () => now },
    log: { info: () => {}, warn: () => {}, error: () => {} },
    handler: {
      handle: async (update) => {
        left -= 1;
        if (left >= 0) throw new Error('not yet');
        handled.put(update.update_id);
      },
      apologise: async () => {},
      leftOut: async () => {},
    },
    sleep: (milliseconds, signal) =>
      new Promise((end) => {
        signal.addEventListener('abort', () => end());
        waits.put({ milliseconds, signal, end });
      }),
  });
  const receive = (updateId: number) => {
    const update = { updateId, actorId: updateId, payload: { update_id: updateId } };
    return storeUpdates(store, { botId, updates: [update], now });
  };
  return { loop, handled, waits, receive, botId };
}

/** What comes in one by one, to be waited for. */
function queue<T>() {
  const items: T[] = [];
  const takers: ((item: T) => void)[] = [];
  return {
    put: (item: T) => {
      const taker = takers.shift();
      if (taker) taker(item);
      else items.push(item);
    },
    take: () =>
      new Promise<T>((resolve) => {
        const item = items.shift();
        if (item === undefined) takers.push(resolve);
        else resolve(item);
      }),
    size: () => items.length,
  };
}

describe('a running inbox', () => {
  it('wakes by itself when the next try of a failed update is due', async () => {
    const { loop, handled, waits, receive } = start(opened(), { failures: 2 });
    await receive(1);
    loop.wake();
    for (const milliseconds of [5_000, 30_000]) {
      const wait = await waits.take();
      expect(wait.milliseconds).toBe(milliseconds);
      now = new Date(now.getTime() + milliseconds);
      wait.end();
    }
    expect(await handled.take()).toBe(1);
    await loop.stop();
    expect(waits.size()).toBe(0);
  });

  it('handles what comes meanwhile and waits once, for the same instant as before', async () => {
    const { loop, handled, waits, receive } = start(opened(), { failures: 1 });
    await receive(1);
    loop.wake();
    const first = await waits.take();
    now = new Date(now.getTime() + 2_000);
    await receive(2);
    loop.wake();
    expect(await handled.take()).toBe(2);
    const second = await waits.take();
    expect(first.signal.aborted).toBe(true);
    expect([second.milliseconds, second.signal.aborted]).toEqual([3_000, false]);
    await loop.stop();
  });

  it('ends its wait when it is stopped, and takes nothing afterwards', async () => {
    const { loop, handled, waits, receive, botId } = start(opened(), { failures: 1 });
    await receive(1);
    loop.wake();
    const wait = await waits.take();
    await loop.stop();
    expect(wait.signal.aborted).toBe(true);
    now = new Date(now.getTime() + 60_000);
    loop.wake();
    await loop.stop();
    expect(handled.size()).toBe(0);
    const rows = (await readTable(opened(), 'inbox')).filter((row) => row.bot_id === botId);
    expect(rows.map((row) => [row.status, row.tries])).toEqual([['pending', 1]]);
  });

  it('stops only when what is being handled has ended', async () => {
    const { loop, handled, receive } = start(opened(), { failures: 0 });
    await receive(1);
    await receive(2);
    loop.wake();
    await loop.stop();
    expect(handled.size()).toBe(2);
  });
});
