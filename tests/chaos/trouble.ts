import { setTimeout as delay } from 'node:timers/promises';
import type { Random } from '../../drills/index.ts';
import type { Fault, RehearsalClient } from '../../rehearsal/client.ts';
import type { Cluster } from './cluster.ts';
import { ALL_POSTS, type Crew } from './crew.ts';
import type { Stall } from './facts.ts';
import { BY_FAULT } from './traffic.ts';

/** How often what goes wrong: mean times in milliseconds. */
export interface Rhythm {
  readonly strikeMs: number;
  readonly faultMs: number;
  readonly powerCutMs: number;
  /** How many calls in a row a fault strikes at most. */
  readonly mostCalls: number;
}

export interface TroubleDeps {
  readonly random: Random;
  readonly crew: Crew;
  readonly cluster: Cluster;
  readonly client: RehearsalClient;
  readonly rhythm: Rhythm;
  now(): Date;
  tell(line: string): void;
}

/** What went wrong on purpose. */
export interface Trouble {
  /** Ends it: nothing is down any more and no fault is left. */
  end(): Promise<void>;
}

/** For the summary, and for invariants that excuse what a down database keeps from being told. */
export interface Harm {
  faults: number;
  powerCuts: number;
  outages: Stall[];
}

const LONGEST_DOWN_MS = 2_500;

/** Makes things go wrong at random moments until it is ended: processes, Postgres, calls and updates. */
export function makeTrouble(deps: TroubleDeps, harm: Harm): Trouble {
  const over = new AbortController();
  const { random, crew, rhythm } = deps;
  const repeat = async (meanMs: number, work: () => Promise<void>) => {
    while (!over.signal.aborted) {
      await nap(-Math.log(1 - random.next()) * meanMs, over.signal);
      if (!over.signal.aborted) await work();
    }
  };
  const strike = async () => {
    const post = ALL_POSTS[random.int(ALL_POSTS.length)] ?? 'worker 1';
    await crew.strike(post);
    await nap(random.int(LONGEST_DOWN_MS), over.signal);
    await crew.start([post]);
  };
  const first = async () => {
    // Whatever else is drawn: some messages arrive and nobody knows, some never do.
    const count = 1 + random.int(rhythm.mostCalls);
    for (const mode of ['apply_then_drop', 'drop_before'] as const) {
      await deps.client.setFault({ method: 'sendMessage', mode, count });
    }
  };
  const running = [
    first(),
    // Two hands, so that two may be down together.
    repeat(2 * rhythm.strikeMs, strike),
    repeat(2 * rhythm.strikeMs, strike),
    repeat(rhythm.powerCutMs, () => cutPower(deps, harm)),
    repeat(rhythm.faultMs, async () => {
      const fault = drawFault(random, rhythm.mostCalls);
      harm.faults += 1;
      deps.tell(`fault ${JSON.stringify(fault)}`);
      await deps.client.setFault(fault);
    }),
  ];
  return {
    end: async () => {
      over.abort();
      await Promise.all(running);
      await deps.client.clearFaults();
      await crew.start(ALL_POSTS);
    },
  };
}

async function cutPower({ random, cluster, now, tell }: TroubleDeps, harm: Harm): Promise<void> {
  const from = now().getTime();
  tell('Postgres is killed');
  harm.powerCuts += 1;
  await cluster.strike(random.int(LONGEST_DOWN_MS));
  // Connections are made again within some seconds.
  harm.outages.push({ from, to: now().getTime() + 5_000 });
}

const METHODS = ['sendMessage', 'editMessageText', 'answerCallbackQuery', 'getUpdates', '*'];

/** Something that goes wrong with the next calls of a method, or with the next updates. */
export function drawFault(random: Random, mostCalls: number): Fault {
  const method = METHODS[random.int(METHODS.length)] ?? '*';
  const count = 1 + random.int(mostCalls);
  switch (random.int(9)) {
    case 0:
      return { method, count, mode: 'drop_before' };
    case 1:
    case 2:
      return { method, count, mode: 'apply_then_drop' };
    case 3:
      // Not of a poll: the bot waits a minute for its end, and nothing else would happen meanwhile.
      return {
        method: method === 'getUpdates' ? 'sendMessage' : method,
        count: 1,
        mode: 'apply_then_hang',
      };
    case 4:
      return { method, count, mode: 'http_502' };
    case 5: {
      const retryAfter = 1 + random.int(5);
      const description = `Too Many Requests: retry after ${retryAfter} ${BY_FAULT}`;
      return { method, count, mode: 'error', error: { code: 429, description, retryAfter } };
    }
    case 6:
      return { method, count, mode: 'slow', seconds: 0.2 + 3 * random.next() };
    case 7:
      return { method: '*', count, mode: 'duplicate_updates' };
    default:
      return { method: '*', count, mode: 'reorder_updates' };
  }
}

async function nap(ms: number, signal: AbortSignal): Promise<void> {
  await delay(ms, undefined, { signal }).catch(() => {});
}
