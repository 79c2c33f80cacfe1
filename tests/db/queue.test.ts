import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inTransaction } from '../../db/connection/transaction.ts';
import type { OpenStore } from '../../db/index.ts';
import { type Backend, backends } from '../support/stores.ts';

describe.each(backends)('the queue on $name', (backend) => {
  describe('while nobody works', () => draining(backend));
});

function newIds(count: number): string[] {
  return Array.from({ length: count }, () => randomUUID());
}

function draining(backend: Backend) {
  let store: OpenStore;
  beforeAll(async () => {
    store = await backend.open();
  });
  afterAll(() => store.close());

  const drained = async (lanes = 4) => {
    const seen: string[] = [];
    const handled = await store.queue.drain(async (id) => void seen.push(id), lanes);
    expect(handled).toBe(seen.length);
    return seen.sort();
  };

  it('an empty queue drains to nothing', async () => {
    await store.queue.enqueue(store.db, []);
    expect(await drained()).toEqual([]);
  });

  it('draining handles all that waits, over several batches, and each once', async () => {
    const ids = newIds(60);
    await store.queue.enqueue(store.db, ids);
    expect(await drained()).toEqual([...ids].sort());
    expect(await drained()).toEqual([]);
  });

  it('a transaction that rolls back leaves no job; one that is kept leaves its own', async () => {
    const [lost, kept] = [newIds(3), newIds(2)];
    const failing = inTransaction(store, async (inner) => {
      await inner.queue.enqueue(inner.db, lost);
      throw new Error('rolled back on purpose');
    });
    await expect(failing).rejects.toThrow('rolled back on purpose');
    expect(await drained()).toEqual([]);
    await inTransaction(store, (inner) => inner.queue.enqueue(inner.db, kept));
    expect(await drained()).toEqual([...kept].sort());
  });

  it('no more messages are in flight than there are lanes', async () => {
    await store.queue.enqueue(store.db, newIds(9));
    let inFlight = 0;
    let most = 0;
    await store.queue.drain(async () => {
      inFlight += 1;
      most = Math.max(most, inFlight);
      // Every lane gets its turn before any of them goes on.
      for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
      inFlight -= 1;
    }, 3);
    expect(most).toBe(3);
  });

  it('a handler that throws fails its own job and no other', async () => {
    const ids = newIds(5);
    await store.queue.enqueue(store.db, ids);
    const done: string[] = [];
    await store.queue.drain(async (id) => {
      if (id === ids[2]) throw new Error('this one fails');
      done.push(id);
    }, 2);
    expect(done.sort()).toEqual(ids.filter((id) => id !== ids[2]).sort());
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
        .work(handle, 2)
        .then(() => store.queue.enqueue(store.db, ids))
        .catch(reject);
    });
    expect([...wanted]).toEqual([]);
  });
}
