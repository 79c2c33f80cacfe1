import { Bot, GrammyError } from 'grammy';
import { RehearsalClient } from '../../../rehearsal/client.ts';
import {
  type Rehearsal,
  type RehearsalOptions,
  startRehearsal,
} from '../../../rehearsal/server.ts';

export const TOKEN = '0:rehearsal-kingfisher';
export const MONDAY_EVENING = new Date('2026-09-07T17:30:00Z');
export const MAYA = 4101;
export const TOBI = 4102;

/** A clock that only a test moves. */
export interface TestClock {
  now(): Date;
  /** Moves forward by milliseconds. */
  pass(ms: number): void;
  set(instant: Date): void;
}

export function createTestClock(start = MONDAY_EVENING): TestClock {
  let ms = start.getTime();
  return {
    now: () => new Date(ms),
    pass: (by) => {
      ms += by;
    },
    set: (instant) => {
      ms = instant.getTime();
    },
  };
}

export interface Stage {
  readonly rehearsal: Rehearsal;
  readonly client: RehearsalClient;
  readonly bot: Bot;
  readonly clock: TestClock;
}

/** A running rehearsal with two people who have not opened the chat. */
export async function createStage(
  options: Partial<RehearsalOptions> & { clock?: TestClock } = {},
): Promise<Stage> {
  const { clock = createTestClock(), ...rest } = options;
  const control = {
    now: () => clock.now(),
    moveTo: async (instant: Date) => clock.set(instant),
    stops: async () => [
      { id: 'nudge', label: 'nudge time 19:00', at: new Date('2026-09-07T18:00:00Z') },
    ],
  };
  const rehearsal = await startRehearsal({
    port: 0,
    token: TOKEN,
    botUsername: 'harbour_lane_bot',
    botName: 'Kingfisher evenings',
    control,
    ...rest,
  });
  const client = new RehearsalClient(rehearsal.url);
  await client.addAccount({ id: MAYA, name: 'Maya', note: "Wren's helper" });
  await client.addAccount({ id: TOBI, name: 'Tobi', note: "Otto's helper" });
  return { rehearsal, client, bot: botFor(rehearsal), clock };
}

/** A grammY bot that talks to the rehearsal. */
export function botFor(rehearsal: Rehearsal, token = rehearsal.token): Bot {
  return new Bot(token, { client: { apiRoot: rehearsal.apiRoot } });
}

/** Opens the chat of both people and forgets the updates that makes. */
export async function openBoth({ client, bot }: Stage): Promise<void> {
  await client.say(MAYA, '/start');
  await client.say(TOBI, '/start');
  await bot.api.getUpdates({ offset: -1 });
  const [last] = await bot.api.getUpdates();
  await bot.api.getUpdates({ offset: (last?.update_id ?? 0) + 1 });
}

/** The service's refusal of a call, as `code description`; throws when the call succeeds. */
export async function refusal(call: Promise<unknown>): Promise<string> {
  try {
    await call;
  } catch (error) {
    if (error instanceof GrammyError) return `${error.error_code} ${error.description}`;
    throw error;
  }
  throw new Error('the call was not refused');
}

export function buttons(...rows: { text: string; callback_data: string }[][]): {
  inline_keyboard: { text: string; callback_data: string }[][];
} {
  return { inline_keyboard: rows };
}

export const START = buttons([{ text: 'Start', callback_data: 'v1:start' }]);
