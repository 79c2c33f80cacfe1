import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import postgres from 'postgres';
import { SENDS_A_SECOND } from '../../db/index.ts';
import { RehearsalClient } from '../../rehearsal/client.ts';
import { type Rehearsal, startRehearsal } from '../../rehearsal/server.ts';
import { type ClockHand, openClock } from './clock-file.ts';
import { type Cluster, startCluster } from './cluster.ts';
import { type Crew, createCrew } from './crew.ts';
import type { Stall } from './facts.ts';
import { makeSchool, type School } from './school.ts';
import { createTraffic, type Traffic } from './traffic.ts';

const TOKEN = '0:rehearsal-chaos';

/** The service's limit: about thirty new messages a second. */
const SERVICE_RATE = 30;

/** Everything real and everything simulated, put together. */
export interface Stage {
  readonly clock: ClockHand;
  readonly cluster: Cluster;
  readonly crew: Crew;
  readonly rehearsal: Rehearsal;
  readonly client: RehearsalClient;
  readonly traffic: Traffic;
  readonly school: School;
  readonly sql: postgres.Sql;
  /** The service's rate here, in new messages a second. */
  readonly perSecond: number;
  /** Says what happens as it happens, to whoever wants to hear it. */
  tell(line: string): void;
  /** Takes the stalls of this process so far. */
  takeStalls(): Stall[];
  close(): Promise<void>;
}

/** `timesFaster`: the sending rate, the bot's and the service's, as a multiple of the real one. */
export interface StageOptions {
  readonly start: Date;
  readonly families: number;
  readonly timesFaster: number;
  /** Hears what happens as it happens. */
  tell(line: string): void;
}

/** Starts Postgres, the stand-in and a school; the bot's processes are still to be started. */
export async function openStage(options: StageOptions): Promise<Stage> {
  const { start, families, timesFaster, tell } = options;
  const folder = await mkdtemp(join(tmpdir(), 'suppersums-chaos-'));
  const clockFile = join(folder, 'clock');
  const clock = openClock(clockFile, start);
  const cluster = await startCluster(folder);
  const traffic = createTraffic(timesFaster);
  const rehearsal = await startService(clock, traffic, options);
  const client = new RehearsalClient(rehearsal.url);
  const place = { databaseUrl: cluster.url, client, now: clock.now() };
  const school = await makeSchool(place, families);
  await fetch(`${rehearsal.apiRoot}/bot${TOKEN}/deleteWebhook?drop_pending_updates=true`);
  const preload = pathToFileURL(join(import.meta.dirname, 'child-clock.ts'));
  preload.searchParams.set('file', clockFile);
  const settings = {
    ...{ BOT_TOKEN: TOKEN, API_ROOT: rehearsal.apiRoot, DATABASE_URL: cluster.url },
    ...{ LOG_LEVEL: 'warn', DATA_DIR: join(folder, 'data') },
    SENDS_A_SECOND: String(SENDS_A_SECOND * timesFaster),
  };
  const crew = createCrew({ settings, preload: preload.href, tell });
  const sql = postgres(cluster.url, { max: 2, connect_timeout: 5, onnotice: () => {} });
  const stalls = watchStalls(clock);
  return {
    ...{ clock, cluster, crew, rehearsal, client, traffic, school, sql, tell },
    perSecond: SERVICE_RATE * timesFaster,
    takeStalls: stalls.take,
    close: async () => {
      stalls.stop();
      await crew.end();
      await sql.end({ timeout: 1 });
      await rehearsal.close();
      await cluster.stop();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

function startService(
  clock: ClockHand,
  traffic: Traffic,
  { start, timesFaster }: StageOptions,
): Promise<Rehearsal> {
  const machineStart = Date.now();
  return startRehearsal({
    ...{ port: 0, token: TOKEN, botUsername: 'harbour_lane_bot', botName: 'Suppersums' },
    control: { now: clock.now, moveTo: clock.moveTo, stops: async () => [] },
    // The limits of the service run faster together with the bot's rate, and jump with the clock.
    machineClock: () => machineStart + timesFaster * (clock.now().getTime() - start.getTime()),
    limited: true,
    logged: traffic.logged,
  });
}

const LOOK_MS = 20;
const STALL_MS = 60;

/** Notes when this process, and with it the stand-in, could not look at what arrived. */
function watchStalls(clock: ClockHand): { take(): Stall[]; stop(): void } {
  let stalls: Stall[] = [];
  let last = performance.now();
  const timer = setInterval(() => {
    const now = performance.now();
    const lengthMs = now - last - LOOK_MS;
    last = now;
    if (lengthMs < STALL_MS) return;
    const to = clock.now().getTime();
    stalls.push({ from: to - lengthMs - LOOK_MS, to });
  }, LOOK_MS);
  return {
    take: () => {
      const taken = stalls;
      stalls = [];
      return taken;
    },
    stop: () => clearInterval(timer),
  };
}
