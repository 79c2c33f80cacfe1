import { lines, type Text } from './words.ts';

/**
 * For an account that has tried too many codes. `minutes` is how long it waits, at least 1.
 *
 * @example
 * codesPaused(1); // 'Too many codes that do not work came from you. Try again in 1 minute, or ask the teacher for a new link.'
 */
export function codesPaused(minutes: number): string {
  const wait = minutes === 1 ? '1 minute' : `${minutes} minutes`;
  return `Too many codes that do not work came from you. Try again in ${wait}, or ask the teacher for a new link.`;
}

/** For somebody of whom more messages came at once than are kept waiting. */
export function leftOut(): Text {
  return lines(
    'A lot came from you at once, so I left some of it out.',
    'What I answered is kept. Wait a moment, then send /today or /class to see where things stand.',
  );
}
