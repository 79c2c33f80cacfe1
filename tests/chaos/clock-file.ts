import { readFileSync, renameSync, writeFileSync } from 'node:fs';

/** From an instant of the machine's clock on, the school's clock is so many milliseconds ahead of it. */
interface Step {
  readonly from: number;
  readonly ahead: number;
}

/** What is read of the file is at most this old. */
const FRESH_MS = 50;
/** A move is written down so long before it happens, so that every process makes it at the same instant. */
const NOTICE_MS = 250;

const machineNow = Date.now;

/**
 * A clock that several processes share through a small file: milliseconds since 1970. Whoever holds it reads the file again
 * when it is asked, so a process that was busy does not miss a move.
 */
export function readClock(file: string): () => number {
  let steps: readonly Step[] = [];
  let readAt = Number.NEGATIVE_INFINITY;
  return () => {
    const now = machineNow();
    if (now - readAt >= FRESH_MS) {
      steps = JSON.parse(readFileSync(file, 'utf8'));
      readAt = now;
    }
    return now + (steps.findLast(({ from }) => from <= now)?.ahead ?? 0);
  };
}

/** The hand that moves the clock of a file. */
export interface ClockHand {
  now(): Date;
  /** Goes to an instant; resolves when every process is there. */
  moveTo(instant: Date): Promise<void>;
}

/** Starts a shared clock at an instant. */
export function openClock(file: string, start: Date): ClockHand {
  let last: Step = { from: 0, ahead: start.getTime() - machineNow() };
  const write = (steps: readonly Step[]) => {
    writeFileSync(`${file}.new`, JSON.stringify(steps));
    renameSync(`${file}.new`, file);
  };
  write([last]);
  const read = readClock(file);
  return {
    now: () => new Date(read()),
    moveTo: async (instant) => {
      const from = machineNow() + NOTICE_MS;
      const next = { from, ahead: instant.getTime() - from };
      write([last, next]);
      last = next;
      await new Promise((resolve) => setTimeout(resolve, NOTICE_MS + FRESH_MS));
    },
  };
}
