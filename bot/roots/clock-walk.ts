import type { MovableClock } from './clocks.ts';

/** When the clock is moved, the minutes between are not skipped but walked in steps, so that everything happens in order. */
const STEP_MS = 5 * 60_000;

/** Moves a clock forward step by step, one move at a time. */
export interface ClockWalk {
  /** Resolves when what fell due on the way is done, or after the step in which the walk was halted. */
  moveTo(target: Date): Promise<void>;
  /** Ends the move under way after its step, and all moves from now on before their first. */
  halt(): Promise<void>;
}

/**
 * `work` lets the app do what is due. `saved` is called after each step: a clock that was killed on its way and started anew
 * further back would live through hours whose messages have left.
 */
export function createClockWalk(
  clock: MovableClock,
  work: () => Promise<void>,
  saved: () => Promise<void>,
): ClockWalk {
  let isHalted = false;
  let underWay = Promise.resolve();
  const walk = async (target: Date): Promise<void> => {
    while (!isHalted && clock.now() < target) {
      clock.moveTo(new Date(Math.min(nextStep(clock.now()), target.getTime())));
      await work();
      await saved();
    }
  };
  return {
    moveTo: (target) => {
      underWay = walk(target);
      return underWay;
    },
    halt: async () => {
      isHalted = true;
      // How it ended is told to whoever asked for the move.
      await underWay.catch(() => {});
    },
  };
}

/** The next whole five minutes. */
function nextStep(now: Date): number {
  return Math.floor(now.getTime() / STEP_MS) * STEP_MS + STEP_MS;
}
