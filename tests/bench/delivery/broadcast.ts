import { autoRetry } from '@grammyjs/auto-retry';
import { apiThrottler } from '@grammyjs/transformer-throttler';
import { Api } from 'grammy';
import { fixed, say } from './figures.ts';
import type { BenchServer } from './server.ts';
import { onStage } from './stage.ts';
import { StandIn } from './stand-in.ts';

const A_SECOND = 30;

/** How a broadcast to so many families went, as the stand-in saw it. */
interface Broadcast {
  /** From the first message to the last, in milliseconds. */
  readonly ms: number;
  /** Messages that the service refused because they came too fast. */
  readonly refused: number;
}

/**
 * Has every family's evening sent at the service's own limit, in real time, by us, by a plain loop that repeats what was refused,
 * and through the chat library's throttler: how long it takes against the shortest time there is, and how often the service
 * had to say "too many".
 */
export async function benchBroadcast(server: BenchServer, families: number): Promise<void> {
  say(
    `Broadcast to ${families} families at ${A_SECOND} a second (shortest: ${fixed(families / A_SECOND, 0)} s).`,
  );
  report('ours', families, await ours(server, families));
  const plain = await alone(families, async (api, ids) => {
    api.config.use(autoRetry());
    for (const id of ids) await send(api, id);
  });
  report('a plain loop with auto-retry', families, plain);
  const throttled = await alone(families, async (api, ids) => {
    api.config.use(apiThrottler());
    await Promise.allSettled(ids.map((id) => send(api, id)));
  });
  report('the throttler', families, throttled);
}

/** A message like the one that brings an evening. */
export function send(api: Api, id: number) {
  return api.sendMessage(id, 'Wren: five doubles and counting in fives. About three minutes.', {
    reply_markup: {
      inline_keyboard: [
        [{ text: 'Start', callback_data: 'st:1' }],
        [
          { text: 'Later', callback_data: 'lt:1' },
          { text: 'Not today', callback_data: 'nt:1' },
        ],
      ],
    },
  });
}

function ours(server: BenchServer, families: number): Promise<Broadcast> {
  return onStage(server, { families, limited: true }, async ({ standIn, run, sql }) => {
    const started = performance.now();
    await run('send');
    const planning = run('tick');
    const sends = await standIn.sent(families);
    await planning;
    say(
      `  ours: planned and sent within ${fixed((performance.now() - started) / 1000, 0)} s of the start`,
    );
    const [row] =
      await sql`select count(*) filter (where status = 'sent')::int as sent from ledger`;
    if (row?.sent < families) say(`  ours: ${row?.sent} of ${families} are stored as sent so far`);
    return broadcast(sends, families);
  });
}

async function alone(
  families: number,
  sendAll: (api: Api, ids: readonly number[]) => Promise<void>,
): Promise<Broadcast> {
  const standIn = await StandIn.start(families, true);
  const { token, apiRoot, ids } = standIn;
  let delivered = 0;
  const api = new Api(token, { apiRoot });
  api.config.use(async (prev, method, payload, signal) => {
    const answer = await prev(method, payload, signal);
    if (answer.ok) delivered += 1;
    return answer;
  });
  await standIn.count();
  await sendAll(api, ids);
  const { sends } = await standIn.count();
  await standIn.close();
  if (delivered < families) say(`  only ${delivered} of ${families} arrived`);
  return broadcast(sends, delivered);
}

function broadcast(sends: readonly number[], delivered: number): Broadcast {
  const [first = 0] = sends;
  return { ms: (sends.at(-1) ?? first) - first, refused: sends.length - delivered };
}

function report(who: string, families: number, { ms, refused }: Broadcast): void {
  const ratio = ms / ((families / A_SECOND) * 1000);
  say(`${who}: ${fixed(ms / 1000)} s, ${fixed(ratio, 3)} of the shortest; ${refused} refused`);
}
