import { LONG_SILENCE } from '../digest/silent-run.ts';

/*
 * One evening's way to its nudge, and the only one:
 *
 *   sent -> nudged        once, and nothing after it
 *   sent -> marked        any part is enough: the child has practised
 *   sent -> declined      "not today" is an answer
 *   sent -> reminded      the family asked for Later: that reminder is its second message
 *   sent -> paused        the family asked for quiet after it came
 *   sent -> left alone    two silent evenings came before: a third nudge would only teach the family to look away
 *
 * Every state but `sent` is final for the evening. Whether each helper may have one more is another question: mayPrompt.
 */

/** What is known about one evening when its nudge would be due. `silentRunBefore` leaves this evening out. */
export interface NudgeState {
  readonly marked: boolean;
  readonly declined: boolean;
  readonly alreadyNudged: boolean;
  readonly reminded: boolean;
  readonly paused: boolean;
  readonly silentRunBefore: number;
}

/** Whether to nudge, and why (not). */
export interface NudgeDecision {
  readonly nudge: boolean;
  readonly reason:
    | 'due'
    | 'marked'
    | 'declined'
    | 'already_nudged'
    | 'reminded'
    | 'paused'
    | 'silent';
}

/**
 * Decides one evening's nudge. Where several reasons against it hold, the first of marked, declined,
 * already nudged, reminded, paused, silent is named.
 *
 * @example
 * const answered = { marked: false, declined: false, alreadyNudged: false, reminded: false, paused: false };
 * decideNudge({ ...answered, silentRunBefore: 1 });
 * // { nudge: true, reason: 'due' }
 */
export function decideNudge(state: NudgeState): NudgeDecision {
  if (state.marked) return { nudge: false, reason: 'marked' };
  if (state.declined) return { nudge: false, reason: 'declined' };
  if (state.alreadyNudged) return { nudge: false, reason: 'already_nudged' };
  if (state.reminded) return { nudge: false, reason: 'reminded' };
  if (state.paused) return { nudge: false, reason: 'paused' };
  if (state.silentRunBefore >= LONG_SILENCE) {
    return { nudge: false, reason: 'silent' };
  }
  return { nudge: true, reason: 'due' };
}
