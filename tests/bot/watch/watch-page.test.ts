import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createMetrics } from '../../../bot/watch/metrics.ts';
import { createPulse, LONGEST_SILENCE_MS } from '../../../bot/watch/pulse.ts';
import { createWatchPage } from '../../../bot/watch/watch-page.ts';
import { type OpenStore, openServer } from '../../../db/index.ts';
import { runSql } from '../../support/raw-rows.ts';
import { createDatabase } from '../../support/stores.ts';
import { MORNING } from '../../support/term.ts';

const events: string[] = [];
const note = (_fields: unknown, event: string) => void events.push(event);
const log = { info: note, warn: note, error: note };
let now = MORNING;
const clock = { now: () => now };
const never = () => new Promise<never>(() => {});
const pulse = createPulse(clock);
let isRunning = false;
let store: OpenStore;
let get: (path: string) => Promise<{ status: number; text: string }>;

beforeAll(async () => {
  store = await openServer(await createDatabase(), () => {});
  const metrics = createMetrics({ store, clock, log });
  const pace = { now: clock.now, sleep: never };
  const page = createWatchPage({ store, pace, pulse, metrics, isRunning: () => isRunning });
  get = async (path) => {
    const answer = await page.request(path);
    return { status: answer.status, text: await answer.text() };
  };
  metrics.ended({ kind: 'nudge', outcome: 'failed', problem: 'too_late' });
  metrics.ended({ kind: 'nudge', outcome: 'not_wanted', problem: 'not_wanted' });
  metrics.refused();
  metrics.abandoned(2);
  metrics.received({ stored: 5, leftOut: 3 });
});
afterAll(() => store.close().catch(() => {}));

async function readiness() {
  const { status, text } = await get('/ready');
  return { code: status, ...JSON.parse(text) };
}

describe('whether a process is ready', () => {
  it('is no before everything is started, and yes then', async () => {
    expect(await readiness()).toMatchObject({ code: 503, loops: 'starting', database: 'ok' });
    isRunning = true;
    const ok = { status: 'ok', database: 'ok', migrations: 'ok', loops: 'ok' };
    expect(await readiness()).toEqual({ code: 200, ...ok });
  });

  it('is no while a part of it gives no sign', async () => {
    pulse.begin('work');
    now = new Date(MORNING.getTime() + LONGEST_SILENCE_MS.work + 1);
    expect(await readiness()).toMatchObject({ code: 503, status: 'not ready', loops: 'stuck' });
    pulse.beat('work');
    expect(await readiness()).toMatchObject({ code: 200 });
  });

  it('is no while a migration is missing', async () => {
    await runSql(store, 'update drizzle.__drizzle_migrations set created_at = created_at - 1');
    expect(await readiness()).toMatchObject({ code: 503, migrations: 'missing', database: 'ok' });
    await runSql(store, 'update drizzle.__drizzle_migrations set created_at = created_at + 1');
    expect(await readiness()).toMatchObject({ code: 200 });
  });
});

describe('the counts of a process', () => {
  it('are by kind and by reason; what was no longer wanted is no failure', async () => {
    const { text } = await get('/metrics');
    for (const line of [
      'suppersums_messages_total{kind="nudge",outcome="failed"} 1',
      'suppersums_messages_total{kind="nudge",outcome="not_wanted"} 1',
      'suppersums_message_problems_total{problem="too_late"} 1',
      'suppersums_too_many_total 1',
      'suppersums_abandoned_total 2',
      'suppersums_updates_total 5',
      'suppersums_updates_shed_total 3',
      'suppersums_database_up 1',
    ]) {
      expect(text.split('\n')).toContain(line);
    }
    expect(text).not.toContain('problem="not_wanted"');
  });
});

describe('while the database is away', () => {
  beforeAll(() => store.close());

  it('the process lives and is not ready', async () => {
    expect((await get('/live')).status).toBe(200);
    const away = { database: 'away', migrations: 'not known', loops: 'ok' };
    expect(await readiness()).toEqual({ code: 503, status: 'not ready', ...away });
  });

  it('its own counts are told all the same', async () => {
    const { text } = await get('/metrics');
    expect(text).toContain('suppersums_database_up 0');
    expect(text).toContain('suppersums_updates_total 5');
    expect(events).toContain('queues_not_read');
  });
});
