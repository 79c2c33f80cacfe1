import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import {
  type Clock,
  type Log,
  type Meter,
  problemOf,
  readQueues,
  type Store,
} from '../../db/index.ts';

/** The counts of a process, and those of the database it works on, for Prometheus. */
export interface Metrics extends Meter {
  readonly contentType: string;
  /** Everything as it stands now. Looks at the queues in the database; while that is away all else is told. */
  text(): Promise<string>;
}

/** What is looked up in the database when somebody asks. */
export interface MetricsDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
}

/** Seconds from a tap to its answer. Above two a person taps again; the service forgets a tap after some more. Our choice. */
const TAP_BUCKETS = [0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 30];
/** Seconds for a picture, in hundredths, to a long clip, some. */
const DRAWING_BUCKETS = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10];

/**
 * Opens the counts of one process. Labels are of closed lists: kinds of message, codes, HTTP statuses. Names follow the advice of
 * Prometheus ("Metric and label naming"): a prefix, base units, `_total` for what only grows.
 */
export function createMetrics(deps: MetricsDeps): Metrics {
  const registry = new Registry();
  collectDefaultMetrics({ register: registry });
  const counted = createCounts(registry);
  const lookAtQueues = createQueueGauges(registry, deps);
  return {
    ...counted,
    contentType: registry.contentType,
    text: async () => {
      await lookAtQueues();
      return registry.metrics();
    },
  };
}

function createCounts(registry: Registry): Meter {
  const registers = [registry];
  const counter = <L extends string>(name: string, help: string, labelNames: readonly L[] = []) =>
    new Counter<L>({ name: `suppersums_${name}`, help, labelNames: [...labelNames], registers });
  const histogram = <L extends string>(
    name: string,
    { help, buckets, labelNames }: { help: string; buckets: number[]; labelNames: L[] },
  ) => new Histogram<L>({ name: `suppersums_${name}`, help, labelNames, buckets, registers });
  const messages = counter('messages_total', 'Messages owed that have ended, by how.', [
    'kind',
    'outcome',
  ]);
  const problems = counter('message_problems_total', 'Why messages failed or are unknown.', [
    'problem',
  ]);
  const abandoned = counter('abandoned_total', 'Attempts whose process died; unknown since.');
  const refused = counter('too_many_total', 'Calls to which the service said "too many" (429).');
  const updates = counter('updates_total', 'Updates that came in and were stored.');
  const shed = counter('updates_shed_total', 'Updates left out because one account sent too many.');
  const calls = counter('webhook_calls_total', 'Calls to the webhook, by our answer.', ['status']);
  const taps = histogram('tap_seconds', {
    ...{ help: 'From a tap coming in to its answer.', buckets: TAP_BUCKETS, labelNames: [] },
  });
  const drawings = histogram('drawing_seconds', {
    ...{ help: 'To draw a picture or a clip.', buckets: DRAWING_BUCKETS, labelNames: ['what'] },
  });
  return {
    ended: ({ kind, outcome, problem }) => {
      messages.inc({ kind, outcome });
      if (problem !== undefined && outcome !== 'not_wanted') problems.inc({ problem });
    },
    abandoned: (attempts) => abandoned.inc(attempts),
    refused: () => refused.inc(),
    received: ({ stored, leftOut }) => {
      updates.inc(stored);
      shed.inc(leftOut);
    },
    answered: (milliseconds) => taps.observe(Math.max(0, milliseconds) / 1_000),
    drawn: (what, milliseconds) => drawings.observe({ what }, milliseconds / 1_000),
    called: (status) => calls.inc({ status: String(status) }),
  };
}

/** What the database says of the queues: the same whichever process is asked. */
function createQueueGauges(registry: Registry, { store, clock, log }: MetricsDeps) {
  const registers = [registry];
  const gauge = (name: string, help: string) =>
    new Gauge({ name: `suppersums_${name}`, help, registers });
  const up = gauge('database_up', '1 if the database answered.');
  const due = new Gauge({
    ...{ name: 'suppersums_due', help: 'Messages that are due and have not left.' },
    ...{ labelNames: ['kind'], registers },
  });
  const oldestDue = gauge('due_oldest_seconds', 'How long the oldest due message has waited.');
  const inbox = gauge('inbox', 'Updates that have not been handled.');
  const oldestInbox = gauge('inbox_oldest_seconds', 'How long the oldest update has waited.');
  return async () => {
    due.reset();
    try {
      const now = clock.now();
      const queues = await readQueues(store, now);
      for (const [kind, { waiting }] of queues.due) due.set({ kind }, waiting);
      const oldest = [...queues.due.values()].flatMap((queue) => queue.oldest ?? []);
      oldestDue.set(secondsSince(now, oldest));
      inbox.set(queues.inbox.waiting);
      oldestInbox.set(secondsSince(now, queues.inbox.oldest ? [queues.inbox.oldest] : []));
      up.set(1);
    } catch (error) {
      log.warn({ problem: problemOf(error) }, 'queues_not_read');
      up.set(0);
    }
  };
}

/** Seconds since the earliest of some instants; 0 when there is none. */
function secondsSince(now: Date, instants: readonly Date[]): number {
  return Math.max(0, ...instants.map((at) => now.getTime() - at.getTime())) / 1_000;
}
