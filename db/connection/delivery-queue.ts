import { SQL, sql } from 'drizzle-orm';
import { fromDrizzle, type JobWithMetadata, type PgBoss, type WorkOptions } from 'pg-boss';
import { REHEARSAL_BOT } from '../rate/claim-store.ts';
import type { Db } from './db.ts';

/** Jobs that failed to the end are kept here for a look; what is known of their messages stands in the ledger. */
const DEAD = 'deliver-dead';
const BATCH = 25;
/** A lane takes few jobs at a time: those behind a call that hangs wait with it, while the other lanes go on. */
const LANE_BATCH = 5;
/** A job is tried again so often, after about 1, 2, 4, 8 and 16 seconds. */
const RETRIES = 5;

/** A message to wake a sender up for. Of those that wait the one with the highest priority comes first. */
export interface DeliveryJob {
  readonly ledgerId: string;
  readonly botId: number;
  readonly priority: number;
}

/** Sends one planned message; must be safe to call twice for the same ledger id. `isLast`: if it throws, it is not called again. */
export type DeliveryHandler = (ledgerId: string, isLast: boolean) => Promise<void>;

/**
 * The job engine, reduced to what this project asks of it. A job only wakes a sender up: the truth is the ledger row,
 * so a job that is lost or comes twice changes nothing. Each bot has a queue of its own.
 */
export interface DeliveryQueue {
  /** Makes a bot's queue if there is none. Before anything is enqueued for the bot, and not inside a transaction. */
  open(botId: number): Promise<void>;
  /**
   * Enqueues inside the caller's transaction, so that a row and its job are written together or not at all. A message whose
   * job waits already gets no second one.
   */
  enqueue(db: Db, jobs: readonly DeliveryJob[]): Promise<void>;
  /** Keeps handling a bot's jobs until the engine stops. `lanes` messages are in flight at a time. */
  work(botId: number, handler: DeliveryHandler, lanes: number): Promise<void>;
  /** Takes no more of a bot's jobs; resolves once those that were taken have been handled. */
  rest(botId: number): Promise<void>;
  /** Handles what is waiting for a bot now and returns how many jobs that were. */
  drain(botId: number, handler: DeliveryHandler, lanes: number): Promise<number>;
}

/** How lanes take jobs; said as a type, so that the engine's own types hold us to what we answer. */
interface LaneOptions extends WorkOptions {
  readonly perJobResults: true;
  readonly includeMetadata: true;
}

interface Payload {
  ledgerId: string;
}

const queueOf = (botId: number) => `deliver-${botId}`;

/** The queues of an engine that has started. Failed jobs are retried with backoff, then kept as dead letters. */
export async function createDeliveryQueue(boss: PgBoss): Promise<DeliveryQueue> {
  await boss.createQueue(DEAD);
  const open = async (botId: number) => {
    await boss.createQueue(queueOf(botId), {
      // One job in line for a message.
      policy: 'short',
      ...{ retryLimit: RETRIES, retryDelay: 1, retryBackoff: true, deadLetter: DEAD },
      ...{ heartbeatSeconds: 60, notify: true },
    });
  };
  await open(REHEARSAL_BOT);
  return {
    open,
    enqueue: async (db, jobs) => {
      for (const botId of new Set(jobs.map((job) => job.botId))) {
        await enqueue(
          boss,
          db,
          queueOf(botId),
          jobs.filter((job) => job.botId === botId),
        );
      }
    },
    work: async (botId, handler, lanes) => {
      await boss.work<Payload, unknown, LaneOptions>(
        queueOf(botId),
        {
          batchSize: LANE_BATCH,
          localConcurrency: lanes,
          perJobResults: true,
          includeMetadata: true,
          burstWhenBatchFull: true,
          pollingIntervalSeconds: 0.5,
        },
        (jobs) => runJobs(jobs, handler, 1),
      );
    },
    rest: (botId) => boss.offWork(queueOf(botId), { wait: true }),
    drain: (botId, handler, lanes) => drain(boss, queueOf(botId), handler, lanes),
  };
}

async function enqueue(
  boss: PgBoss,
  db: Db,
  queue: string,
  jobs: readonly DeliveryJob[],
): Promise<void> {
  const rows = jobs.map(({ ledgerId, priority }) => ({
    ...{ priority, singletonKey: ledgerId },
    data: { ledgerId } satisfies Payload,
  }));
  await boss.insert(queue, rows, {
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

async function drain(
  boss: PgBoss,
  queue: string,
  handler: DeliveryHandler,
  lanes: number,
): Promise<number> {
  let handled = 0;
  for (;;) {
    const jobs = await boss.fetch<Payload>(queue, { batchSize: BATCH, includeMetadata: true });
    if (jobs.length === 0) return handled;
    for (const result of await runJobs(jobs, handler, lanes)) {
      if (result.status === 'completed') await boss.complete(queue, result.id);
      else await boss.fail(queue, result.id);
    }
    handled += jobs.length;
  }
}

interface JobResult {
  id: string;
  status: 'completed' | 'failed';
}

/** The more urgent first, then the older. */
function byTurn(a: JobWithMetadata<Payload>, b: JobWithMetadata<Payload>): number {
  return b.priority - a.priority || a.createdOn.getTime() - b.createdOn.getTime();
}

/** Runs a batch with at most `lanes` in flight. One bad job never stops the others. */
async function runJobs(
  jobs: readonly JobWithMetadata<Payload>[],
  handler: DeliveryHandler,
  lanes: number,
): Promise<JobResult[]> {
  const results: JobResult[] = [];
  // The engine takes the right ones, in no order.
  const waiting = [...jobs].sort(byTurn);
  const lane = async () => {
    for (let job = waiting.shift(); job; job = waiting.shift()) {
      const status = await handler(job.data.ledgerId, job.retryCount >= RETRIES).then(
        () => 'completed' as const,
        () => 'failed' as const,
      );
      results.push({ id: job.id, status });
    }
  };
  await Promise.all(Array.from({ length: lanes }, lane));
  return results;
}
