import { parseArgs } from 'node:util';
import { machineClock, realPace } from '../../../bot/roots/clocks.ts';
import { createApp } from '../../../bot/roots/create-app.ts';
import { openEmbedded } from '../../../db/index.ts';
import { RehearsalClient } from '../../../rehearsal/client.ts';
import { startRehearsal } from '../../../rehearsal/server.ts';
import { median, percentile, say } from './figures.ts';
import { createReplies, type Replies } from './replies.ts';

const FLOODER = 9_001;
const CALM = [9_101, 9_102, 9_103, 9_104] as const;

interface Stage {
  readonly client: RehearsalClient;
  readonly replies: Replies;
}

/**
 * Measures how long others wait for an answer while one account floods the bot, against how long they wait without it, in one
 * run on the embedded database. `--updates` is the size of the flood, `--asks` how often each of four others asks.
 */
async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      updates: { type: 'string', default: '1000' },
      asks: { type: 'string', default: '15' },
    },
  });
  const asks = wholeNumber('asks', values.asks);
  const updates = wholeNumber('updates', values.updates);
  await onStage(async (stage) => {
    await askAll(stage, 5);
    const quiet = await askAll(stage, asks);
    const flood = startFlood(stage, updates);
    const flooded = await askAll(stage, asks);
    const isOver = await flood;
    report('without a flood', quiet);
    report(`while one account sends ${updates}`, flooded);
    say(`median with the flood / without: ${(median(flooded) / median(quiet)).toFixed(2)}`);
    say(
      `95th of a hundred with / without: ${(percentile(flooded, 0.95) / percentile(quiet, 0.95)).toFixed(2)}`,
    );
    say(
      `the flooding account was answered ${stage.replies.count(FLOODER)} times; the flood was sent in ${isOver} ms`,
    );
  });
}

async function onStage(work: (stage: Stage) => Promise<void>): Promise<void> {
  const replies = createReplies();
  const store = await openEmbedded(undefined, () => {});
  const token = '0:rehearsal';
  const rehearsal = await startRehearsal({
    port: 0,
    token,
    botUsername: 'harbour_lane_bot',
    botName: 'Suppersums',
    control: { now: machineClock.now, moveTo: async () => {}, stops: async () => [] },
    gate: replies.gate,
  });
  const log = { info: () => {}, warn: () => {}, error: () => {} };
  const app = await createApp({
    store,
    clock: machineClock,
    pace: realPace,
    log,
    tokens: [token],
    apiRoot: rehearsal.apiRoot,
  });
  const client = new RehearsalClient(rehearsal.url);
  await app.start((error) => say(String(error)));
  for (const id of [FLOODER, ...CALM]) {
    await client.addAccount({ id, name: `Phone ${id}` });
    const answered = replies.next(id);
    await client.say(id, '/start');
    await answered;
  }
  await work({ client, replies });
  await app.stop();
  await rehearsal.close();
  await store.close();
}

/** Everybody asks for help at the same time, so many times; returns how long each waited, in milliseconds. */
async function askAll({ client, replies }: Stage, times: number): Promise<number[]> {
  const waits: number[] = [];
  for (let i = 0; i < times; i += 1) {
    const round = CALM.map(async (id) => {
      const answered = replies.next(id);
      const start = performance.now();
      await client.say(id, '/help');
      await answered;
      waits.push(performance.now() - start);
    });
    await Promise.all(round);
  }
  return waits;
}

/** Sends the flood as fast as the service takes it; resolves to how long that took, in milliseconds. */
async function startFlood({ client }: Stage, updates: number): Promise<number> {
  const start = performance.now();
  for (let sent = 0; sent < updates; sent += 50) {
    const some = Array.from({ length: Math.min(50, updates - sent) }, () =>
      client.say(FLOODER, '/help'),
    );
    await Promise.all(some);
  }
  return Math.round(performance.now() - start);
}

function report(what: string, waits: readonly number[]): void {
  const [half, most] = [median(waits), percentile(waits, 0.95)].map((value) => value.toFixed(0));
  say(
    `${what}: others wait ${half} ms (median), ${most} ms (95th of a hundred), ${waits.length} answers`,
  );
}

function wholeNumber(name: string, text: string): number {
  const value = Number(text);
  if (Number.isInteger(value) && value >= 1 && value <= 100_000) return value;
  throw new RangeError(`Got ${text} for --${name}: give a whole number from 1 to 100000.`);
}

main().catch((error) => {
  say(error instanceof Error ? error.message : String(error));
  process.exit(1);
});
