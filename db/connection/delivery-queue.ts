import { SQL, sql } from 'drizzle-orm';
import { fromDrizzle, type Job, type PgBoss } from 'pg-boss';
import type { Db } from './db.ts';

const QUEUE = 'deliver';
const DEAD = 'deliver-dead';
const BATCH = 25;
/** A lane takes few jobs at a time: those behind a call that hangs wait with it, while the other lanes go on. */
const LANE_BATCH = 5;

/** Sends one planned message; must be safe to call twice for the same ledger id. */
export type DeliveryHandler = (ledgerId: string) => Promise<void>;

/**
 * The job engine, reduced to what this project asks of it. A job only wakes a sender up: the truth is the ledger row,
 * so a job that is lost or comes twice changes nothing.
 */
export interface DeliveryQueue {
  /** Enqueues inside the caller's transaction, so that a row and its job are written together or not at all. */
  enqueue(db: Db, ledgerIds: readonly string[]): Promise<void>;
  /** Keeps handling jobs until the engine stops. `lanes` messages are in flight at a time. */
  work(handler: DeliveryHandler, lanes: number): Promise<void>;
  /** Handles what is waiting now and returns how many jobs that were. */
  drain(handler: DeliveryHandler, lanes: number): Promise<number>;
}

interface Payload {
  ledgerId: string;
}

/** Creates the queues where they are missing. Failed jobs are retried with backoff, then kept as dead letters. */
export async function createDeliveryQueue(boss: PgBoss): Promise<DeliveryQueue> {
  await boss.createQueue(DEAD);
  await boss.createQueue(QUEUE, {
    retryLimit: 5,
    retryBackoff: true,
    deadLetter: DEAD,
    heartbeatSeconds: 60,
    notify: true,
  });
  return {
    enqueue: (db, ids) => enqueue(boss, db, ids),
    work: async (handler, lanes) => {
      await boss.work<Payload>(
        QUEUE,
        {
          batchSize: LANE_BATCH,
          localConcurrency: lanes,
          perJobResults: true,
          burstWhenBatchFull: true,
          pollingIntervalSeconds: 0.5,
        },
        (jobs) => runJobs(jobs, handler, 1),
      );
    },
    drain: (handler, lanes) => drain(boss, handler, lanes),
  };
}

async function enqueue(boss: PgBoss, db: Db, ledgerIds: readonly string[]): Promise<void> {
  if (ledgerIds.length === 0) return;
  const jobs = ledgerIds.map((ledgerId) => ({ data: { ledgerId } satisfies Payload }));
  await boss.insert(QUEUE, jobs, {
    db: fromDrizzle({ execute: (query) => rowsOf(db, query) }, sql),
  });
}

/** Runs the engine's statement on our transaction. The two drivers wrap their rows differently; the engine takes `{ rows }`. */
async function rowsOf(db: Db, query: unknown): Promise<{ rows: unknown[] }> {
  if (!(query instanceof SQL)) throw new TypeError('the job engine sent something that is not SQL');
  const result: unknown = await db.execute(query);
  if (Array.isArray(result)) return { rows: [...result] };
  if (
    typeof result === 'object' &&
    result !== null &&
    'rows' in result &&
    Array.isArray(result.rows)
  ) {
    return { rows: result.rows };
  }
  return { rows: [] };
}

async function drain(boss: PgBoss, handler: DeliveryHandler, lanes: number): Promise<number> {
  let handled = 0;
  for (;;) {
    const jobs = await boss.fetch<Payload>(QUEUE, { batchSize: BATCH });
    if (jobs.length === 0) return handled;
    for (const result of await runJobs(jobs, handler, lanes)) {
      if (result.status === 'completed') await boss.complete(QUEUE, result.id);
      else await boss.fail(QUEUE, result.id);
    }
    handled += jobs.length;
  }
}

interface JobResult {
  id: string;
  status: 'completed' | 'failed';
}

/** Runs a batch with at most `lanes` in flight. One bad job never stops the others. */
async function runJobs(
  jobs: readonly Job<Payload>[],
  handler: DeliveryHandler,
  lanes: number,
): Promise<JobResult[]> {
  const results: JobResult[] = [];
  const waiting = [...jobs];
  const lane = async () => {
    for (let job = waiting.shift(); job; job = waiting.shift()) {
      const status = await handler(job.data.ledgerId).then(
        () => 'completed' as const,
        () => 'failed' as const,
      );
      results.push({ id: job.id, status });
    }
  };
  await Promise.all(Array.from({ length: lanes }, lane));
  return results;
}
