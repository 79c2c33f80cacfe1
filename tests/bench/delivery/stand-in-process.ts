import { RehearsalClient } from '../../../rehearsal/client.ts';
import { startRehearsal } from '../../../rehearsal/server.ts';
import type { Asked, Counted, Tapped, TapRun } from './stand-in.ts';

/** The stand-in in a process of its own, so that what it costs is not taken from who is measured. Started by stand-in.ts. */
const TOKEN = '0:rehearsal-bench';
const AT_ONCE = 16;

const calls: Record<string, number> = {};
let sends: number[] = [];
/** By id of a tap: who waits for its answer. One that was answered before anybody waited is there as a time. */
const waiting = new Map<string, (at: number) => void>();
const answered = new Map<string, number>();

async function main({
  first,
  people,
  limited,
}: {
  first: number;
  people: number;
  limited: boolean;
}) {
  const rehearsal = await startRehearsal({
    ...{ port: 0, token: TOKEN, botUsername: 'harbour_lane_bot', botName: 'Suppersums', limited },
    control: { now: () => new Date(), moveTo: async () => {}, stops: async () => [] },
    gate: async ({ method, params }) => {
      calls[method] = (calls[method] ?? 0) + 1;
      if (/^send(?!chataction)/i.test(method)) sends.push(performance.now());
      if (method === 'answerCallbackQuery') hear(String(params.callback_query_id));
      return 'apply';
    },
  });
  const client = new RehearsalClient(rehearsal.url);
  const ids = Array.from({ length: people }, (_, place) => first + place);
  await each(ids, AT_ONCE, async (id) => {
    await client.addAccount({ id, name: `Phone ${id}` });
    await client.say(id, '/start');
  });
  const poll = (query: string) => fetch(`${rehearsal.apiRoot}/bot${TOKEN}/getUpdates?${query}`);
  const { result } = await (await poll('offset=-1')).json();
  await poll(`offset=${(result[0]?.update_id ?? 0) + 1}`);
  process.on('message', async (asked: Asked & { key: number }) => {
    const answer = asked.do === 'count' ? count() : await tapAll(client, asked);
    process.send?.({ key: asked.key, answer });
  });
  process.send?.({ key: 0, answer: { apiRoot: rehearsal.apiRoot, token: TOKEN } });
}

function hear(query: string): void {
  const at = performance.now();
  answered.set(query, at);
  waiting.get(query)?.(at);
}

function count(): Counted {
  const counted = { calls: { ...calls }, sends: [...sends] };
  for (const method of Object.keys(calls)) calls[method] = 0;
  sends = [];
  return counted;
}

/** Taps a button on each phone's newest message, as many at a time as said or so many a second, and waits for the answers. */
async function tapAll(
  client: RehearsalClient,
  { ids, label, atOnce, perSecond }: TapRun,
): Promise<Tapped> {
  const start = performance.now();
  const waits: number[] = [];
  let last = start;
  const one = async (id: number) => {
    const before = performance.now();
    const { queryId } = await client.tapLabel(id, label);
    const at =
      answered.get(queryId) ?? (await new Promise<number>((go) => waiting.set(queryId, go)));
    waits.push(at - before);
    last = Math.max(last, at);
  };
  if (perSecond === undefined) await each(ids, atOnce, one);
  else {
    const all = ids.map(async (id, place) => {
      await new Promise((go) => setTimeout(go, (place * 1_000) / perSecond));
      await one(id);
    });
    await Promise.all(all);
  }
  return { waits, ms: last - start };
}

async function each<T>(
  items: readonly T[],
  atOnce: number,
  work: (item: T) => Promise<void>,
): Promise<void> {
  const left = [...items];
  const lane = async () => {
    for (let item = left.shift(); item !== undefined; item = left.shift()) await work(item);
  };
  await Promise.all(Array.from({ length: atOnce }, lane));
}

await main(JSON.parse(process.argv[2] ?? '{}'));
