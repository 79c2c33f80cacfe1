import { setTimeout as delay } from 'node:timers/promises';
import type { MovableClock } from '../../bot/roots/clocks.ts';
import type { Clock, Pace } from '../../db/index.ts';
import { readClock } from './clock-file.ts';

/* Takes the place of bot/roots/clocks.ts in the bot's processes, and so has the same exports. */

const read = readClock(new URL(import.meta.url).searchParams.get('file') ?? '');
const now = () => new Date(read());

export const machineClock: Clock = { now };

/** Waiting takes its time; what time it is then is said by the shared clock. */
export const realPace: Pace = {
  now,
  sleep: async (milliseconds, signal) => {
    try {
      await delay(milliseconds, undefined, signal ? { signal } : {});
    } catch (error) {
      if (!signal?.aborted) throw error;
    }
  },
};

/** Only the suite moves the clock. */
export function movableClock(): MovableClock {
  return { now, moveTo: () => {} };
}
