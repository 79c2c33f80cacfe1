import { setTimeout as delay } from 'node:timers/promises';
import type { Clock, Pace } from '../../db/index.ts';

/** The machine's own clock; here, in the composition root, and nowhere else. */
export const machineClock: Clock = { now: () => new Date() };

/** Real time and real waiting. */
export const realPace: Pace = {
  now: () => new Date(),
  sleep: async (milliseconds, signal) => {
    try {
      await delay(milliseconds, undefined, signal ? { signal } : {});
    } catch (error) {
      if (!signal?.aborted) throw error;
    }
  },
};

/** A clock that runs on but can be moved forward. */
export interface MovableClock extends Clock {
  /** Moves to an instant; an earlier one is ignored, since what was sent cannot be unsent. */
  moveTo(instant: Date): void;
}

/** A movable clock that shows `start` now. */
export function movableClock(start: Date, machine: Clock = machineClock): MovableClock {
  let ahead = start.getTime() - machine.now().getTime();
  const now = () => new Date(machine.now().getTime() + ahead);
  return {
    now,
    moveTo: (instant) => {
      ahead += Math.max(0, instant.getTime() - now().getTime());
    },
  };
}
