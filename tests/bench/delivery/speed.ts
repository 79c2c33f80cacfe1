import { Api } from 'grammy';
import type { Update } from 'grammy/types';
import { BUTTONS } from '../../../bot/texts/buttons.ts';
import { RehearsalClient } from '../../../rehearsal/client.ts';
import { send } from './broadcast.ts';
import { fixed, median, percentile, say } from './figures.ts';
import type { BenchServer } from './server.ts';
import { onStage, type Stage } from './stage.ts';
import { StandIn } from './stand-in.ts';

/** A rate that nobody reaches. */
const UNCAPPED = 100_000;
/** As many messages in flight as a sender of ours has, and as many taps in hand as a worker has. */
const LANES = 6;
const IN_HAND = 16;
/** Taps in the air at a time. */
const TAPPING = 48;

/**
 * With the stand-in's limits lifted: messages a second that one sender brings out, and taps a second that one worker handles,
 * each against the bare chat library making the same calls without a database.
 */
export async function benchSpeed(server: BenchServer, families: number): Promise<void> {
  say(`Speed without limits, ${families} families, one process of each role:`);
  const own = await onStage(server, { families, limited: false }, async (stage) => {
    await stage.plan();
    const before = await commits(stage);
    const prompts = await sendAll(stage, families, 1);
    const between = await commits(stage);
    const taps = await tapAll(stage, 1);
    const after = await commits(stage);
    say(
      `  transactions, reading ones too: ${fixed((between - before) / families)} a message, ` +
        `${fixed((after - between) / families)} a tap`,
    );
    return { prompts, ...taps };
  });
  say(`  calls a tap: ${JSON.stringify(own.calls)}`);
  const bare = await bareSpeed(families, own.calls);
  say(
    `messages: ours ${fixed(own.prompts)} a second, bare ${fixed(bare.prompts)}: ratio ${fixed(own.prompts / bare.prompts, 2)}`,
  );
  say(
    `taps: ours ${fixed(own.taps)} a second, bare ${fixed(bare.taps)}: ratio ${fixed(own.taps / bare.taps, 2)}`,
  );
}

/** Transactions that the database has ended so far, by its own statistics. */
async function commits({ sql }: Stage): Promise<number> {
  const [row] =
    await sql`select xact_commit::int as ended from pg_stat_database where datname = current_database()`;
  return Number(row?.ended);
}

/** The same with two and with four processes, against one. */
export async function benchProcesses(server: BenchServer, families: number): Promise<void> {
  say(`Processes, ${families} families, without limits:`);
  const rates: { prompts: number; taps: number }[] = [];
  for (const processes of [1, 2, 4]) {
    const rate = await onStage(server, { families, limited: false }, async (stage) => {
      await stage.plan();
      const prompts = await sendAll(stage, families, processes);
      return { prompts, taps: (await tapAll(stage, processes)).taps };
    });
    rates.push(rate);
    const [one = rate] = rates;
    say(
      `${processes}: ${fixed(rate.prompts)} messages a second (${fixed(rate.prompts / one.prompts, 2)} of one), ` +
        `${fixed(rate.taps)} taps a second (${fixed(rate.taps / one.taps, 2)} of one)`,
    );
  }
}

/** How long families who tap wait for the answer while a broadcast at the service's limit runs. */
export async function benchTaps(server: BenchServer, families: number): Promise<void> {
  const perSecond = 5;
  const waits = await onStage(
    server,
    { families, limited: true },
    async ({ standIn, run, plan }) => {
      await plan();
      await run('receive,work');
      await run('send');
      // Who taps has its message already, and the broadcast goes on beyond the last tap.
      const early = Math.floor(families / 4);
      await standIn.sent(early);
      const ids = await withMessage(standIn, Math.floor((families / 30 / 2) * perSecond));
      return (await standIn.tap({ ids, label: BUTTONS.start, atOnce: 1, perSecond })).waits;
    },
  );
  const [half, most] = [median(waits), percentile(waits, 0.99)];
  say(
    `taps during a broadcast to ${families}: answered after ${fixed(half, 0)} ms (median), ` +
      `${fixed(most, 0)} ms (99th of a hundred), ${waits.length} taps, ${perSecond} a second`,
  );
}

/** People whose evening has come: the bot's message is the newest in their chat. */
async function withMessage(standIn: StandIn, most: number): Promise<number[]> {
  const client = new RehearsalClient(standIn.apiRoot);
  const found: number[] = [];
  for (const id of standIn.ids) {
    if (found.length >= most) break;
    if ((await client.chat(id)).at(-1)?.from === 'bot') found.push(id);
  }
  return found;
}

async function sendAll(
  { standIn, run }: Stage,
  families: number,
  processes: number,
): Promise<number> {
  await standIn.count();
  const bots = await Promise.all(Array.from({ length: processes }, () => run('send', UNCAPPED)));
  const sends = await standIn.sent(families);
  for (const bot of bots) await bot.end('SIGTERM');
  return rateOf(sends);
}

async function tapAll({ standIn, run }: Stage, processes: number) {
  await run('receive');
  const workers = await Promise.all(Array.from({ length: processes }, () => run('work', UNCAPPED)));
  await standIn.count();
  const { ids } = standIn;
  const tapped = await standIn.tap({ ids, label: BUTTONS.start, atOnce: TAPPING });
  const { calls } = await standIn.count();
  for (const worker of workers) await worker.end('SIGTERM');
  const each = Object.entries(calls)
    .map(([method, times]): [string, number] => [method, Math.round(times / ids.length)])
    .filter(([method, times]) => times > 0 && !method.startsWith('get'));
  return { taps: (ids.length / tapped.ms) * 1000, calls: Object.fromEntries(each) };
}

function rateOf(sends: readonly number[]): number {
  const [first = 0] = sends;
  return ((sends.length - 1) / ((sends.at(-1) ?? first) - first)) * 1000;
}

async function bareSpeed(people: number, calls: Readonly<Record<string, number>>) {
  const standIn = await StandIn.start(people, false);
  const { token, apiRoot, ids } = standIn;
  const api = new Api(token, { apiRoot });
  await standIn.count();
  await inLanes(ids, LANES, (id) => send(api, id));
  const { sends } = await standIn.count();
  const stopping = new AbortController();
  const polling = pollBare(new Api(token, { apiRoot }), stopping.signal, (update) =>
    answerBare(api, update, calls),
  );
  const tapped = await standIn.tap({ ids, label: 'Start', atOnce: TAPPING });
  stopping.abort();
  await polling.catch(() => {});
  await standIn.close();
  return { prompts: rateOf(sends), taps: (ids.length / tapped.ms) * 1000 };
}

/** Polls and handles as many updates at a time as a worker of ours does. */
async function pollBare(api: Api, signal: AbortSignal, handle: (update: Update) => Promise<void>) {
  let offset = 0;
  const inHand = new Set<Promise<void>>();
  while (!signal.aborted) {
    const updates = await api.getUpdates({ offset, timeout: 1 });
    for (const update of updates) {
      offset = update.update_id + 1;
      while (inHand.size >= IN_HAND) await Promise.race(inHand);
      const work: Promise<void> = handle(update).finally(() => inHand.delete(work));
      inHand.add(work);
    }
  }
}

/** The same methods as often as ours, with texts and buttons of about the same size. */
async function answerBare(
  api: Api,
  update: Update,
  calls: Readonly<Record<string, number>>,
): Promise<void> {
  const query = update.callback_query;
  if (!query?.message) return;
  const { chat, message_id: messageId } = query.message;
  for (const [method, times] of Object.entries(calls)) {
    for (let time = 0; time < times; time += 1) {
      if (method === 'answerCallbackQuery') await api.answerCallbackQuery(query.id);
      else if (method.startsWith('send')) await send(api, chat.id);
      else
        await api.editMessageText(
          chat.id,
          messageId,
          `Wren: double four is eight. Card ${time + 1}.`,
        );
    }
  }
}

async function inLanes<T>(items: readonly T[], lanes: number, work: (item: T) => Promise<unknown>) {
  const left = [...items];
  const lane = async () => {
    for (let item = left.shift(); item !== undefined; item = left.shift()) await work(item);
  };
  await Promise.all(Array.from({ length: lanes }, lane));
}
