import type { Clock } from '../../db/index.ts';

/** What a process keeps doing, and after how many milliseconds without a sign of it it counts as stuck. */
export const LONGEST_SILENCE_MS = {
  /** A long poll lasts 25 s, a call that hangs 60 s. */
  receive: 120_000,
  /** The inbox is looked at every 5 s; while all hands are full until a handler ends. */
  work: 60_000,
  /** The clock's work is looked at each minute; after a long pause of the whole school a look takes longer. */
  tick: 600_000,
} as const;

/** See {@link LONGEST_SILENCE_MS}. */
export type Loop = keyof typeof LONGEST_SILENCE_MS;

/** Signs of life of the parts of a process that run by themselves. */
export interface Pulse {
  /** Expects signs of a part from now on. */
  begin(loop: Loop): void;
  beat(loop: Loop): void;
  /** Parts of which nothing was heard for too long. */
  silent(): Loop[];
}

/** A pulse by the machine's clock: a school's clock may be moved. */
export function createPulse(clock: Clock): Pulse {
  const last = new Map<Loop, number>();
  const beat = (loop: Loop) => void last.set(loop, clock.now().getTime());
  return {
    begin: beat,
    beat,
    silent: () => {
      const now = clock.now().getTime();
      return [...last].flatMap(([loop, at]) => (now - at > LONGEST_SILENCE_MS[loop] ? [loop] : []));
    },
  };
}
