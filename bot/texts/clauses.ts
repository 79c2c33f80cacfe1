import { say } from '../language/index.ts';

/**
 * Things that hold commas themselves, or whole clauses, in one sentence; `more` is how many are left out.
 *
 * @example
 * clauses(['doubles to 5 + 5', 'clock (half past)'], 2); // 'doubles to 5 + 5; clock (half past); and 2 more'
 */
export function clauses(items: readonly string[], more = 0): string {
  const shown = items.join(say('clauses-between'));
  return more > 0 ? say('clauses-and-more', { shown, more }) : shown;
}
