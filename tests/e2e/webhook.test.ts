import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { openServer } from '../../db/index.ts';
import { BotProcess } from '../support/bot-process.ts';
import { freePort } from '../support/free-port.ts';
import { createDoor } from '../support/held-calls.ts';
import { labelsOf } from '../support/phones.ts';
import { makeQuickSchool, type QuickSchool } from '../support/quick-school.ts';
import { readTable } from '../support/raw-rows.ts';
import { createDatabase } from '../support/stores.ts';
import { openWorld, type World } from '../support/world.ts';

// Monday 14 September 2026, British Summer Time: 17:30 in London is 16:30 UTC.
const MORNING = '2026-09-14T09:00:00Z';
const EVENING = '2026-09-14T16:30:00Z';
const FAMILIES = 3;

const door = createDoor();
let folder: string;
let databaseUrl: string;
let world: World;
let school: QuickSchool;
let address: string;
let port: number;
let bot: BotProcess;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-webhook-'));
  databaseUrl = await createDatabase();
  const backend = { name: 'shared', open: () => openServer(databaseUrl, () => {}) };
  world = await openWorld({ start: MORNING, backend, gate: door.gate });
  school = await makeQuickSchool(world, { families: FAMILIES });
  port = await freePort();
  address = `http://127.0.0.1:${port}`;
});
afterAll(async () => {
  await bot.end('SIGKILL');
  await world.close();
  await rm(folder, { recursive: true, force: true });
});

function startBot(): BotProcess {
  bot = new BotProcess({
    BOT_TOKEN: world.rehearsal.token,
    API_ROOT: world.rehearsal.apiRoot,
    DATABASE_URL: databaseUrl,
    CLOCK_START: EVENING,
    LOG_LEVEL: 'warn',
    DATA_DIR: folder,
    WEBHOOK_URL: address,
    WEBHOOK_PORT: String(port),
    HEALTH_PORT: String(port),
  });
  return bot;
}

const phoneOf = (family: number): number => school.families[family]?.phones[0] ?? 0;
const tap = (family: number, label: string) => world.client.tapLabel(phoneOf(family), label);
const page = async (path: string) => {
  const answer = await fetch(`${address}${path}`);
  return { status: answer.status, text: await answer.text() };
};

/** Resolves once the updates of the service have been taken, and all of them handled. */
async function handled(): Promise<void> {
  const isOpen = async () =>
    world.rehearsal.pendingUpdates() > 0 ||
    (await readTable(world.store, 'inbox')).some((row) => row.status !== 'done');
  while (await isOpen()) await new Promise((turn) => setImmediate(turn));
}

async function shownTo(family: number): Promise<string[]> {
  const chat = await world.client.chat(phoneOf(family));
  const last = chat.filter(({ from }) => from === 'bot').at(-1);
  return last ? labelsOf(last) : [];
}

describe('a bot to which the service brings the updates', () => {
  it('answers taps, and says that it is alive and ready', async () => {
    const sent = door.passed('sendMessage', FAMILIES);
    const running = startBot();
    expect(await running.running).toContain(`It can be watched at ${address}/ready.`);
    await running.until(sent);
    const answered = door.passed('answerCallbackQuery', 2);
    await tap(0, BUTTONS.start);
    await tap(1, BUTTONS.start);
    await running.until(answered);
    await running.until(handled());
    expect(await shownTo(0)).toContain(BUTTONS.allRight);
    expect(await page('/live')).toEqual({ status: 200, text: '{"status":"ok"}' });
    const ready = await page('/ready');
    expect(ready.status).toBe(200);
    const state = { status: 'ok', database: 'ok', migrations: 'ok', loops: 'ok' };
    expect(JSON.parse(ready.text)).toEqual(state);
    expect((await page('/elsewhere')).status).toBe(404);
  });

  it('counts what it does, and everything that the dashboard shows', async () => {
    const { text } = await page('/metrics');
    expect(text).toContain('suppersums_database_up 1');
    expect(text).toContain(
      `suppersums_messages_total{kind="evening",outcome="sent"} ${FAMILIES}\n`,
    );
    expect(text).toContain('suppersums_updates_total 2\n');
    expect(text).toContain('suppersums_webhook_calls_total{status="200"} 2\n');
    expect(text).toContain('suppersums_tap_seconds_count 2\n');
    expect(text).toContain('suppersums_inbox 0\n');
    expect(text).toMatch(/suppersums_drawing_seconds_count\{what="(picture|clip)"\} [1-9]/);
    // Text exposition format 0.0.4 of Prometheus ("Exposition formats"): comments, or a name, labels and a number.
    const sample =
      /^[a-z_:][\w:]*(\{\w+="[^"\\]*"(,\w+="[^"\\]*")*\})? (NaN|[+-]?[\d.e+-]+|[+-]Inf)$/i;
    const lines = text.split('\n').filter((line) => line !== '' && !line.startsWith('# '));
    expect(lines.filter((line) => !sample.test(line))).toEqual([]);
    expect(wantedByDashboard().filter((name) => !isServed(text, name))).toEqual([]);
    expect(wantedByDashboard().length).toBeGreaterThan(12);
  });

  it('tells nothing of anybody in its counts', async () => {
    const { text } = await page('/metrics');
    const labels = [...text.matchAll(/="(?<label>[^"]*)"/g)].map(({ groups }) => groups?.label);
    expect(labels).toContain('evening');
    for (const { nickname, phones, childId } of school.families) {
      expect(text).not.toContain(nickname);
      expect(text).not.toContain(childId);
      // Counts have digits of their own; what a count is about stands in its labels.
      expect(labels).not.toContain(String(phones[0]));
    }
    expect(text).not.toContain(world.rehearsal.token);
  });
});

describe('a bot that is to stop while taps come', () => {
  it('finishes the tap in hand when it is to stop, and leaves a later one with the service', async () => {
    const held = door.hold('answerCallbackQuery', 0, 1);
    await tap(0, BUTTONS.allRight);
    const [call] = await bot.until(held);
    const ended = bot.end('SIGTERM');
    await untilGone();
    await tap(2, BUTTONS.start);
    door.open();
    call?.release('apply');
    expect(await ended).toMatchObject({ code: 0, stderr: '' });
    expect((await readTable(world.store, 'inbox')).every((row) => row.status === 'done')).toBe(
      true,
    );
    expect(await shownTo(0)).toContain(BUTTONS.allSaid);
    expect(world.rehearsal.pendingUpdates()).toBe(1);
    // Every lock has ended with its connection, and with it the process.
    expect(await readTable(world.store, 'part_score')).toHaveLength(1);
  });

  it('gets it at the next start', async () => {
    const running = startBot();
    await running.running;
    await running.until(handled());
    expect(await shownTo(2)).toContain(BUTTONS.allRight);
  });
});

/** Resolves once the port is closed. */
async function untilGone(): Promise<void> {
  for (;;) {
    const isThere = await page('/live').then(
      () => true,
      () => false,
    );
    if (!isThere) return;
  }
}

const dashboard = z.object({
  panels: z.array(z.object({ targets: z.array(z.object({ expr: z.string() })) })),
});

/** The metrics that the example dashboard asks for, each with the labels it is cut by. */
function wantedByDashboard(): string[] {
  const file = join(import.meta.dirname, '..', '..', 'bot', 'guides', 'dashboard.json');
  const { panels } = dashboard.parse(JSON.parse(readFileSync(file, 'utf8')));
  const asked = panels.flatMap(({ targets }) => targets.flatMap(({ expr }) => namesIn(expr)));
  return [...new Set(asked)];
}

function namesIn(expression: string): string[] {
  return expression.match(/\b(?:suppersums|process|nodejs)_\w+/g) ?? [];
}

/** A metric is served when it is described, though nothing of it has happened yet. */
function isServed(text: string, name: string): boolean {
  return text.includes(`# TYPE ${name.replace(/_bucket$/, '')} `);
}
