import postgres from 'postgres';
import { openServer } from '../../../db/index.ts';
import { tick } from '../../../jobs/tick.ts';
import { fixed, median, say, timed } from './figures.ts';
import { EVENING, generate } from './school.ts';
import type { BenchServer } from './server.ts';

/** Children whose evening is due at the moment that is measured, at every size. */
const DUE = 100;
const MINUTE_MS = 60_000;
const IDLE_TICKS = 15;

/** Evenings in the past at a size, scaled so that the database can be made within minutes; what is due always has two years. */
function historyAt(children: number): { due: number; others: number } {
  return { due: 380, others: children <= 10_000 ? 20 : children <= 200_000 ? 5 : 1 };
}

/**
 * Measures what a tick costs at different sizes of the whole while the same {@link DUE} children are due: the tick that plans
 * them, and the ticks after it, at which nothing is due.
 */
export async function benchPlanner(server: BenchServer, sizes: readonly number[]): Promise<void> {
  say(`Planner: ${DUE} evenings due at every size.`);
  const idle: number[] = [];
  for (const children of sizes) idle.push(await atSize(server, children));
  const [first] = idle;
  if (first === undefined) return;
  const ratios = idle.map((ms, at) => `${sizes[at]}: ${fixed(ms / first, 2)}`);
  say(`an idle tick against the one at ${sizes[0]} children: ${ratios.join(', ')}`);
}

async function atSize(server: BenchServer, children: number): Promise<number> {
  const url = await server.database();
  const store = await openServer(url, () => {});
  const sql = postgres(url, { max: 1, onnotice: () => {} });
  const history = historyAt(children);
  const made = await timed(() => generate(store, sql, { children, due: DUE, history }));
  let now = EVENING;
  const clock = { now: () => now };
  const log = {
    info: () => {},
    warn: () => {},
    error: (fields: object, event: string) => say(`${event} ${JSON.stringify(fields)}`),
  };
  const look = () => tick({ store, clock, log });
  const [size] =
    await sql`select (select count(*) from evening)::int evenings, (select count(*) from mark)::int marks,
    pg_size_pretty(pg_database_size(current_database())) size`;
  // The first tick of a process also opens connections.
  now = new Date(EVENING.getTime() - MINUTE_MS);
  await sql`update class set look_at = ${EVENING} where look_at = 'epoch' and archived_at is null`;
  await look();
  now = EVENING;
  const due = await timed(look);
  const idle: number[] = [];
  for (let i = 1; i <= IDLE_TICKS; i += 1) {
    now = new Date(EVENING.getTime() + i * MINUTE_MS);
    idle.push((await timed(look)).ms);
  }
  say(
    `${children} children (${size?.evenings} evenings, ${size?.marks} marks, ${size?.size}, made in ${fixed(made.ms / 1000, 0)} s): ` +
      `the tick that plans ${due.result.evenings} evenings ${fixed(due.ms / 1000, 2)} s, ` +
      `${fixed(due.ms / Math.max(1, due.result.evenings), 1)} ms each; a tick with nothing due ${fixed(median(idle))} ms`,
  );
  await sql.end();
  await store.close();
  return median(idle);
}
