import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { LANES } from '../../bot/roots/connect-bot.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import {
  closePart,
  findEvening,
  findHelperByChat,
  openServer,
  startEvening,
} from '../../db/index.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { BotProcess } from '../support/bot-process.ts';
import { Phone } from '../support/demo-school.ts';
import { createDoor, type HeldCall } from '../support/held-calls.ts';
import { labelsOf } from '../support/phones.ts';
import { makeQuickSchool, type QuickSchool } from '../support/quick-school.ts';
import { readTable } from '../support/raw-rows.ts';
import { createDatabase } from '../support/stores.ts';
import { day } from '../support/term.ts';
import { openWorld, type World } from '../support/world.ts';

// Monday 14 September 2026, British Summer Time: 17:30 in London is 16:30 UTC.
const MORNING = '2026-09-14T09:00:00Z';
const EVENING = '2026-09-14T16:30:00Z';
/** Later starts: a clock never goes back, and an attempt without an end is given up after two minutes. */
const SECOND_START = '2026-09-14T16:31:00Z';
const THIRD_START = '2026-09-14T16:33:00Z';
const TODAY = day('2026-09-14');
/** Enough for three batches of the engine, cut short in the first and in the second. */
const FAMILIES = 60;
/** Messages answered before the first and before the second power cut. */
const FIRST = 19;
const SECOND = 20;

const door = createDoor();
let databaseUrl: string;
let world: World;
let school: QuickSchool;
let bot: BotProcess | undefined;

/** The store is a server that the test and the bot's process share; the chat service runs in the test. */
async function open(families: number): Promise<void> {
  databaseUrl = await createDatabase();
  const backend = { name: 'shared', open: () => openServer(databaseUrl, () => {}) };
  world = await openWorld({ start: MORNING, backend, gate: door.gate });
  school = await makeQuickSchool(world, { families });
}

/** Starts the bot as a process of its own, with its clock at an instant. */
function startBot(instant: string): BotProcess {
  bot = new BotProcess({
    BOT_TOKEN: world.rehearsal.token,
    API_ROOT: world.rehearsal.apiRoot,
    DATABASE_URL: databaseUrl,
    CLOCK_START: instant,
    LOG_LEVEL: 'warn',
  });
  return bot;
}

/** Asks the bot to stop, which it does when everything begun is settled. Returns what it wrote to its log. */
async function stopBot(): Promise<string> {
  const ended = await bot?.end('SIGTERM');
  expect(ended?.code).toBe(0);
  return ended?.stderr ?? '';
}

async function pullThePlug(): Promise<void> {
  expect(await bot?.end('SIGKILL')).toMatchObject({ code: null, signal: 'SIGKILL' });
}

function release(held: readonly HeldCall[], verdict: 'apply' | 'drop'): number[] {
  door.open();
  for (const call of held) call.release(verdict);
  return held.map((call) => Number(call.params.chat_id));
}

/** The bot's messages on each family's phone. */
async function received(): Promise<ReadonlyMap<number, readonly ChatMessage[]>> {
  const chats = new Map<number, readonly ChatMessage[]>();
  for (const { phones } of school.families) {
    const chat = await world.client.chat(phones[0]);
    chats.set(
      phones[0],
      chat.filter((message) => message.from === 'bot'),
    );
  }
  return chats;
}

async function phonesWith(messages: number): Promise<number[]> {
  return [...(await received())].flatMap(([phone, own]) =>
    own.length === messages ? [phone] : [],
  );
}

async function ledger(kind: string, status: string): Promise<number> {
  const rows = await readTable(world.store, 'ledger');
  return rows.filter((row) => row.kind === kind && row.status === status).length;
}

afterEach(async () => {
  // A test that failed half-way leaves nothing running.
  const ended = await bot?.end('SIGKILL');
  expect(ended?.stderr).not.toContain('Wren');
});

describe('an evening for sixty families during which the power fails twice', () => {
  let arrived: number[];
  let lost: number[];
  beforeAll(() => open(FAMILIES));
  afterAll(() => world.close());

  it('has six messages in flight when the power fails for the first time', async () => {
    const held = door.hold('sendMessage', FIRST, LANES);
    const running = startBot(EVENING);
    const inFlight = await running.until(held);
    await pullThePlug();
    arrived = release(inFlight, 'apply');
    expect(await phonesWith(1)).toHaveLength(FIRST + LANES);
    expect(await ledger('evening', 'sent')).toBe(FIRST);
    expect(await ledger('evening', 'attempting')).toBe(LANES);
  });

  it('goes on where it was after a start, without a second message for those in flight', async () => {
    const held = door.hold('sendMessage', SECOND, LANES);
    const running = startBot(SECOND_START);
    const inFlight = await running.until(held);
    await pullThePlug();
    lost = release(inFlight, 'drop');
    expect(await phonesWith(1)).toHaveLength(FIRST + LANES + SECOND);
    expect(await phonesWith(2)).toEqual([]);
    expect(await ledger('evening', 'attempting')).toBe(2 * LANES);
  });

  it('reaches everybody else after another start, and nobody twice', async () => {
    const rest = FAMILIES - FIRST - SECOND - 2 * LANES;
    const last = door.passed('sendMessage', rest);
    const running = startBot(THIRD_START);
    await running.until(last);
    await stopBot();
    expect((await phonesWith(0)).sort()).toEqual([...lost].sort());
    expect(await phonesWith(1)).toHaveLength(FAMILIES - LANES);
    expect(await ledger('evening', 'sent')).toBe(FAMILIES - 2 * LANES);
    expect(await ledger('evening', 'planned')).toBe(0);
  });

  it('nudges those who have not marked; for those whose message was lost it is the only one, with Start', async () => {
    const unmarked = new Set([...arrived, ...lost, ...(await phonesWith(1)).slice(-4)]);
    for (const { childId, phones } of school.families) {
      if (!unmarked.has(phones[0])) await practise(childId, phones[0]);
    }
    const nudges = door.passed('sendMessage', unmarked.size);
    const running = startBot('2026-09-14T18:01:00Z');
    await running.until(nudges);
    const [first] = lost;
    const answered = door.passed('answerCallbackQuery', 1);
    await world.client.tapLabel(first ?? 0, BUTTONS.start);
    await running.until(answered);
    await stopBot();
    expect(await ledger('evening', 'unknown')).toBe(2 * LANES);
    expect(await ledger('evening', 'attempting')).toBe(0);
    const chats = await received();
    for (const [phone, messages] of chats) {
      const onlyNudge = lost.includes(phone);
      expect(messages).toHaveLength(unmarked.has(phone) && !onlyNudge ? 2 : 1);
      expect(messages.filter(({ text }) => !text.includes('Still time'))).toHaveLength(
        onlyNudge && phone !== first ? 0 : 1,
      );
    }
    for (const phone of lost.slice(1)) {
      expect(chats.get(phone)?.flatMap(labelsOf)).toContain(BUTTONS.start);
    }
    expect((await new Phone(world, first ?? 0).last()).text).toContain('Part 1 of 2');
  });
});

/** Marks a family's first part past the chat. */
async function practise(childId: string, chatId: number): Promise<void> {
  const helper = await findHelperByChat(world.store, chatId);
  const helperId = helper?.id ?? '';
  const view = await findEvening(world.store, { helperId, childId, day: TODAY });
  const scope = { helperId, eveningId: view?.id ?? '' };
  const now = new Date('2026-09-14T17:00:00Z');
  await startEvening(world.store, scope, now);
  await closePart(world.store, scope, { part: 0, verdict: { kind: 'all_right' }, now });
}

describe('taps that wait while the power fails', () => {
  /** People whose taps are handled at the same time. */
  const HANDLED_TOGETHER = 8;
  beforeAll(() => open(12));
  afterAll(() => world.close());

  it('are each handled once and at once after the next start', async () => {
    await world.goTo(EVENING);
    const phones = school.families.map((family) => new Phone(world, family.phones[0]));
    for (const phone of phones) await phone.tap(BUTTONS.start);
    // Half of them report a perfect part; the other half are in the middle of marking and tap the second card.
    const [perfect, marking] = [phones.slice(0, 6), phones.slice(6)];
    for (const phone of marking) await phone.tap(BUTTONS.someMissed);
    for (const { id } of perfect) await world.client.tapLabel(id, BUTTONS.allRight);
    for (const { id } of marking) await world.client.tapLabel(id, '2. ');
    const updates = await readTable(world.store, 'inbox');
    const lastTap = Math.max(...updates.map((row) => Number(row.update_id))) + phones.length;

    const held = door.hold('answerCallbackQuery', 0, HANDLED_TOGETHER);
    const acknowledged = door.acknowledged(lastTap);
    const first = startBot('2026-09-14T16:31:00Z');
    const inFlight = await first.until(held);
    await first.until(acknowledged);
    expect(world.rehearsal.pendingUpdates()).toBe(0);
    await pullThePlug();
    release(inFlight, 'drop');
    const waiting = await readTable(world.store, 'inbox');
    expect(waiting.filter((row) => row.status === 'handling').length).toBeGreaterThanOrEqual(
      HANDLED_TOGETHER,
    );
    expect(waiting.filter((row) => row.status !== 'done')).toHaveLength(phones.length);

    const answered = door.passed('answerCallbackQuery', phones.length);
    // Sooner than an update counts as abandoned by itself.
    const second = startBot('2026-09-14T16:31:10Z');
    await second.until(answered);
    expect(await stopBot()).toBe('');
    const marks = await readTable(world.store, 'mark');
    expect(marks).toHaveLength(perfect.length * 5);
    expect(marks.every((row) => row.right === true && row.revision === 1)).toBe(true);
    for (const phone of perfect) expect((await phone.last()).text).toContain('Part 2 of 2');
    for (const phone of marking) {
      const missed = (await phone.buttons()).filter((label) => label.includes('✗'));
      expect(missed).toEqual([expect.stringContaining('2. ')]);
    }
    const left = await readTable(world.store, 'inbox');
    expect(left.filter((row) => row.status !== 'done')).toEqual([]);
  });
});
