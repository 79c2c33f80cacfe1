import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { openServer } from '../../db/index.ts';
import { BotProcess } from '../support/bot-process.ts';
import { createDoor } from '../support/held-calls.ts';
import { makeQuickSchool, type QuickSchool } from '../support/quick-school.ts';
import { readTable } from '../support/raw-rows.ts';
import { createDatabase } from '../support/stores.ts';
import { openWorld, type World } from '../support/world.ts';

// Monday 14 September 2026, British Summer Time: 17:30 in London is 16:30 UTC.
const MORNING = '2026-09-14T09:00:00Z';
const EVENING = '2026-09-14T16:30:00Z';
const FAMILIES = 12;
/** Every role twice, spread over four processes. */
const PROCESSES = ['receive,tick', 'work', 'work,send', 'receive,send,tick'];

const door = createDoor();
let databaseUrl: string;
let world: World;
let school: QuickSchool;
let bots: BotProcess[] = [];

beforeAll(async () => {
  databaseUrl = await createDatabase();
  const backend = { name: 'shared', open: () => openServer(databaseUrl, () => {}) };
  world = await openWorld({ start: MORNING, backend, gate: door.gate });
  school = await makeQuickSchool(world, { families: FAMILIES });
});

afterAll(async () => {
  for (const bot of bots) await bot.end('SIGKILL');
  await world.close();
});

function startAll(): void {
  bots = PROCESSES.map(
    (roles) =>
      new BotProcess(
        {
          BOT_TOKEN: world.rehearsal.token,
          API_ROOT: world.rehearsal.apiRoot,
          DATABASE_URL: databaseUrl,
          CLOCK_START: EVENING,
          LOG_LEVEL: 'warn',
        },
        [`--role=${roles}`],
      ),
  );
}

/** Waits for something the processes do together; the first that ends instead rejects. */
async function untilAll<T>(event: Promise<T>): Promise<T> {
  return Promise.race(bots.map((bot) => bot.until(event)));
}

async function count(table: string, fits: (row: Readonly<Record<string, unknown>>) => boolean) {
  return (await readTable(world.store, table)).filter(fits).length;
}

describe('four processes that share the work of one bot', () => {
  it('bring every family its evening once, and leave nothing waiting', async () => {
    const sent = door.passed('sendMessage', FAMILIES);
    startAll();
    const welcomes = await Promise.all(bots.map((bot) => bot.running));
    expect(welcomes[0]).toContain('does receive, tick as @');
    await untilAll(sent);
    for (const { phones } of school.families) {
      const chat = await world.client.chat(phones[0]);
      expect(chat.filter(({ from }) => from === 'bot').length).toBeLessThanOrEqual(1);
    }
  });

  it('answer every tap once, each person’s in order, whoever of them handles it', async () => {
    for (const label of [BUTTONS.start, BUTTONS.allRight]) await tapAll(label);
    expect(await count('part_score', () => true)).toBe(FAMILIES);
    expect(await count('mark', (row) => row.right === true && row.revision === 1)).toBe(
      5 * FAMILIES,
    );
    expect(await count('inbox', (row) => row.status !== 'done')).toBe(0);
    expect(await count('ledger', (row) => row.status !== 'sent')).toBe(0);
  });

  it('go on receiving and planning without the one that did so', async () => {
    const [first, ...others] = bots;
    await first?.end('SIGKILL');
    bots = others;
    await tapAll(BUTTONS.allSaid);
    expect(await count('part_score', () => true)).toBe(2 * FAMILIES);
  });

  it('stop when asked, with nothing to complain of', async () => {
    for (const bot of bots) {
      expect(await bot.end('SIGTERM')).toMatchObject({ code: 0, stderr: '' });
    }
  });
});

/** Taps on every family's phone, and waits until all are answered and everything is handled. */
async function tapAll(label: string): Promise<void> {
  const answered = door.passed('answerCallbackQuery', FAMILIES);
  await Promise.all(school.families.map(({ phones }) => world.client.tapLabel(phones[0], label)));
  await untilAll(answered);
  await untilAll(settled());
}

/** Resolves once every update is handled. */
async function settled(): Promise<void> {
  while ((await count('inbox', (row) => row.status !== 'done')) > 0) {
    await new Promise((turn) => setImmediate(turn));
  }
}
