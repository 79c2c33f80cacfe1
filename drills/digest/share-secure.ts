import { type Interval, wilson } from '../statistics/wilson.ts';
import type { Level } from './judge-security.ts';

/** The normal deviate that leaves 80 % in the middle. */
const Z_80 = 1.281552;

/**
 * How many of some children are secure, not yet, or had too few answers; the others are in between. `share` is the range in
 * which the share secure lies, at 80 %, if these children stand for the class.
 */
export interface ShareSecure {
  readonly children: number;
  readonly secure: number;
  readonly notYet: number;
  readonly tooFew: number;
  readonly share: Interval;
}

/**
 * Counts levels, one of each child.
 *
 * @example
 * shareSecure(['secure', 'not_yet']).secure; // 1
 */
export function shareSecure(levels: readonly Level[]): ShareSecure {
  const count = (of: Level) => levels.filter((level) => level === of).length;
  const secure = count('secure');
  return {
    children: levels.length,
    secure,
    notYet: count('not_yet'),
    tooFew: count('too_few'),
    share: wilson(secure, levels.length, Z_80),
  };
}
