import { createRandom } from '../../drills/index.ts';
import type { Player } from './phone.ts';

/** What a family does on an evening of the demo week. */
export type Habit =
  | 'plays'
  | 'plays after the nudge'
  | 'asks for later'
  | 'not today'
  | 'is silent';

/** What each invented family does from Monday to Friday. Everybody else plays every evening. */
const HABITS: Readonly<Record<number, readonly Habit[]>> = {
  2002: ['plays', 'plays', 'asks for later', 'plays', 'plays'],
  2003: ['plays', 'is silent', 'plays', 'is silent', 'plays'],
  2004: ['is silent', 'plays', 'is silent', 'plays', 'is silent'],
  2007: ['plays after the nudge', 'plays', 'plays after the nudge', 'not today', 'plays'],
  2008: ['plays', 'not today', 'plays', 'plays', 'not today'],
  2010: ['is silent', 'is silent', 'is silent', 'is silent', 'is silent'],
  2011: ['plays', 'is silent', 'plays', 'is silent', 'is silent'],
};

/** What this family does on a day, 0 being Monday. */
export function habitOf(family: number, day: number): Habit {
  return HABITS[family]?.[day] ?? 'plays';
}

/**
 * An invented child: misses about one card in eight on Monday, fewer later in the week, more in the clock part. The same seed
 * gives the same child.
 */
export function inventedChild(seed: string, day: number): Player {
  const random = createRandom(`${seed} ${day}`);
  return (part, isRun) => {
    if (isRun) return random.next() < 0.4 ? [5 + random.int(5)] : [];
    const chance = Math.max(0.03, 0.14 - day * 0.025 + (part === 4 ? 0.15 : 0));
    return Array.from({ length: 10 }, (_, card) => card + 1).filter(() => random.next() < chance);
  };
}
