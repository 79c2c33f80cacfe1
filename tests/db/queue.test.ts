import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inTransaction } from '../../db/connection/transaction.ts';
import { type DeliveryJob, type OpenStore, REHEARSAL_BOT } from '../../db/index.ts';
import { type Backend, backends } from '../support/stores.ts';

describe.each(backends)('the queue on $name', (backend) => {
  describe('while nobody works', () => draining(backend));
  describe('with several in line', () => order(backend));
});

function newIds(count: number): string[] {
  return Array.from({ length: count }, () => randomUUID());
}

function jobsFor(ledgerIds: readonly string[], priority = 1): DeliveryJob[] {
  return ledgerIds.map((ledgerId) => ({ ledgerId, botId: REHEARSAL_BOT, priority }));
}

function draining(backend: Backend) {
  let store: OpenStore;
  beforeAll(async () => {
    store = await backend.open();
  });
  afterAll(() => store.close());

  const drained = async (lanes = 4) => {
    const seen: string[] = [];
    const handled = await store.queue.drain(REHEARSAL_BOT, async (id) => void seen.push(id), lanes);
    expect(handled).toBe(seen.length);
    return seen.sort();
  };

  it('an empty queue drains to nothing', async () => {
    await store.queue.enqueue(store.db, []);
    expect(await drained()).toEqual([]);
  });

  it('draining handles all that waits, over several batches, and each once', async () => {
    const ids = newIds(60);
    await store.queue.enqueue(store.db, jobsFor(ids));
    expect(await drained()).toEqual([...ids].sort());
    expect(await drained()).toEqual([]);
  });

  it('a transaction that rolls back leaves no job; one that is kept leaves its own', async () => {
    const [lost, kept] = [newIds(3), newIds(2)];
    const failing = inTransaction(store, async (inner) => {
      await inner.queue.enqueue(inner.db, jobsFor(lost));
      throw new Error('rolled back on purpose');
    });
    await expect(failing).rejects.toThrow('rolled back on purpose');
    expect(await drained()).toEqual([]);
    await inTransaction(store, (inner) => inner.queue.enqueue(inner.db, jobsFor(kept)));
    expect(await drained()).toEqual([...kept].sort());
  });

  it('no more messages are in flight than there are lanes', async () => {
    await store.queue.enqueue(store.db, jobsFor(newIds(9)));
    let inFlight = 0;
    let most = 0;
    await store.queue.drain(
      REHEARSAL_BOT,
      async () => {
        inFlight += 1;
        most = Math.max(most, inFlight);
        // Every lane gets its turn before any of them goes on.
        for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
        inFlight -= 1;
      },
      3,
    );
    expect(most).toBe(3);
  });

  it('a handler that throws fails its own job and no other', async () => {
    const ids = newIds(5);
    await store.queue.enqueue(store.db, jobsFor(ids));
    const done: string[] = [];
    await store.queue.drain(
      REHEARSAL_BOT,
      async (id) => {
        if (id === ids[2]) throw new Error('this one fails');
        done.push(id);
      },
      2,
    );
    expect(done.sort()).toEqual(ids.filter((id) => id !== ids[2]).sort());
  });
}

function order(backend: Backend) {
  let store: OpenStore;
  beforeAll(async () => {
    store = await backend.open();
  });
  afterAll(() => store.close());

  const drained = async (botId = REHEARSAL_BOT) => {
    const seen: string[] = [];
    await store.queue.drain(botId, async (id) => void seen.push(id), 1);
    return seen;
  };

  it('what is more urgent comes first, of equals what was owed first', async () => {
    const [digests, evenings] = [newIds(2), newIds(2)];
    for (const id of digests) await store.queue.enqueue(store.db, jobsFor([id], 0));
    for (const id of evenings) await store.queue.enqueue(store.db, jobsFor([id], 10));
    expect(await drained()).toEqual([...evenings, ...digests]);
  });

  it('a message whose job waits gets no second one, and another once that is done', async () => {
    const ids = newIds(1);
    for (const _ of [1, 2, 3]) await store.queue.enqueue(store.db, jobsFor(ids));
    expect(await drained()).toEqual(ids);
    await store.queue.enqueue(store.db, jobsFor(ids));
    expect(await drained()).toEqual(ids);
  });

  it('each bot’s messages wait in a queue of its own', async () => {
    const [own, other] = [newIds(2), newIds(2)];
    for (const botId of [71, 71, 72]) await store.queue.open(botId);
    const jobs = (ids: readonly string[], botId: number) =>
      jobsFor(ids).map((job) => ({ ...job, botId }));
    await store.queue.enqueue(store.db, [...jobs(own, 71), ...jobs(other, 72)]);
    expect((await drained(71)).sort()).toEqual([...own].sort());
    expect((await drained(72)).sort()).toEqual([...other].sort());
  });

  // Last, because from here on the worker takes every job.
  it('a worker picks up what is enqueued, and a failing job does not stop it', async () => {
    const ids = newIds(3);
    const wanted = new Set(ids.slice(1));
    await new Promise<void>((resolve, reject) => {
      const handle = async (id: string) => {
        if (id === ids[0]) throw new Error('this one fails');
        wanted.delete(id);
        if (wanted.size === 0) resolve();
      };
      store.queue
        .work(REHEARSAL_BOT, handle, 2)
        .then(() => store.queue.enqueue(store.db, jobsFor(ids)))
        .catch(reject);
    });
    expect([...wanted]).toEqual([]);
  });
}
