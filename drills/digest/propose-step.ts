import type { StrandSummary, Tally } from './week.ts';

/** A child with fewer marks than this can be lucky: nobody is called secure on less (our choice, no source). */
export const ENOUGH_ASKED = 8;
/** A class of fewer than three cannot be asked for three. */
const FEWEST_CHILDREN = 3;

/**
 * Proposes a step for one strand from each child's tally (only children with marks) and the number who joined.
 *
 * A child is secure with 9 in 10 right of at least 8; a strand moves on when 8 in 10 of the children with marks are
 * secure (accuracy of 90 to 95 % before moving on is common practice, no source). Half of those who joined must have
 * marks, and at least three, or all in a class of fewer; otherwise there is too little to tell.
 *
 * @example
 * proposeStep([{ right: 10, asked: 10 }], 1).proposal; // 'move_on'
 */
export function proposeStep(
  tallies: readonly Tally[],
  joined: number,
): Pick<StrandSummary, 'children' | 'secure' | 'tooFew' | 'proposal'> {
  const children = tallies.length;
  const secure = tallies.filter(isSecure).length;
  const tooFew = tallies.filter(({ asked }) => asked < ENOUGH_ASKED).length;
  const needed = Math.min(joined, Math.max(FEWEST_CHILDREN, Math.ceil(joined / 2)));
  if (children < Math.max(1, needed)) return { children, secure, tooFew, proposal: 'too_little' };
  // Whole numbers: 0.9 and 0.8 have no exact binary form, and a class sits on the border often.
  const moveOn = secure * 10 >= children * 8;
  return { children, secure, tooFew, proposal: moveOn ? 'move_on' : 'stay' };
}

function isSecure({ right, asked }: Tally): boolean {
  return asked >= ENOUGH_ASKED && right * 10 >= asked * 9;
}
