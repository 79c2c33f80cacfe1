import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import postgres from 'postgres';
import { openServer } from '../../../db/index.ts';
import { BotProcess } from '../../support/bot-process.ts';
import { pause } from './figures.ts';
import { CHILDREN_IN_CLASS, EVENING, generate } from './school.ts';
import type { BenchServer } from './server.ts';
import { StandIn } from './stand-in.ts';

/** A stand-in and a school of as many families, whose evening is due now. */
export interface Stage {
  readonly standIn: StandIn;
  readonly sql: postgres.Sql;
  /** Starts a process of the bot and waits until it is ready. */
  run(roles: string, sendsASecond?: number): Promise<BotProcess>;
  /** Plans the evening of every family, with nobody sending. */
  plan(): Promise<void>;
}

/** Families as a whole number of classes. */
export function wholeClasses(families: number): number {
  return Math.max(1, Math.round(families / CHILDREN_IN_CLASS)) * CHILDREN_IN_CLASS;
}

/** Sets a stage, has it used and clears it away, whatever happens. */
export async function onStage<T>(
  server: BenchServer,
  { families, limited }: { families: number; limited: boolean },
  use: (stage: Stage) => Promise<T>,
): Promise<T> {
  const url = await server.database();
  const store = await openServer(url, () => {});
  const sql = postgres(url, { max: 1, onnotice: () => {} });
  const none = { due: 0, others: 0 };
  await generate(store, sql, { children: families, due: families, history: none });
  await store.close();
  const standIn = await StandIn.start(families, limited);
  const folder = await mkdtemp(join(tmpdir(), 'suppersums-bench-data-'));
  const bots: BotProcess[] = [];
  const opened = performance.now();
  const run = async (roles: string, sendsASecond?: number) => {
    // All processes of a stage read the same clock.
    const now = new Date(EVENING.getTime() + performance.now() - opened);
    const bot = new BotProcess(
      {
        ...{ BOT_TOKEN: standIn.token, API_ROOT: standIn.apiRoot, DATABASE_URL: url },
        ...{ LOG_LEVEL: 'error', CLOCK_START: now.toISOString(), DATA_DIR: folder },
        ...(sendsASecond === undefined ? {} : { SENDS_A_SECOND: String(sendsASecond) }),
      },
      [`--role=${roles}`],
    );
    bots.push(bot);
    await bot.running;
    return bot;
  };
  const plan = async () => {
    const planner = await run('tick');
    for (;;) {
      const [row] = await sql`select count(*)::int as planned from ledger`;
      if (row?.planned >= families) break;
      await pause(500);
    }
    await planner.end('SIGTERM');
  };
  try {
    return await use({ standIn, sql, run, plan });
  } finally {
    for (const bot of bots) await bot.end('SIGTERM');
    await standIn.close();
    await sql.end();
    await rm(folder, { recursive: true, force: true });
  }
}
