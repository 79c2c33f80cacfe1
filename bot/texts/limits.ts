import { say } from '../language/index.ts';
import { lines, type Text } from './words.ts';

/**
 * For an account that has tried too many codes. `minutes` is how long it waits, at least 1.
 *
 * @example
 * codesPaused(1); // 'Too many codes that do not work came from you. Try again in 1 minute, or ask the teacher for a new link.'
 */
export function codesPaused(minutes: number): string {
  return say('limits-codes-paused', { wait: say('words-minutes', { count: minutes }) });
}

/** For somebody of whom more messages came at once than are kept waiting. */
export function leftOut(): Text {
  return lines(say('limits-left-out'), say('limits-what-is-kept'));
}
