/**
 * How one evening ended: marked, put off by the family for the day, not answered at all, or never sent to them.
 */
export type EveningStatus = 'practised' | 'not_today' | 'silent' | 'unsent';

/**
 * From this many silent evenings in a row on, messages have had their chance: the nudge falls away and the family stands on
 * the teacher's call list. Our choice.
 */
export const LONG_SILENCE = 2;

/** How far back silence is followed, in days: two school weeks and a break between them. */
export const SILENCE_DAYS = 28;

/**
 * How many of the latest evenings in a row went unanswered; the newest stands last. An unsent evening is passed over:
 * a family cannot be silent about a message it never got.
 *
 * @example
 * silentRun([{ status: 'practised' }, { status: 'silent' }, { status: 'unsent' }, { status: 'silent' }]); // 2
 */
export function silentRun(evenings: readonly { readonly status: EveningStatus }[]): number {
  const sent = evenings.filter(({ status }) => status !== 'unsent');
  const lastAnswered = sent.findLastIndex(({ status }) => status !== 'silent');
  return sent.length - 1 - lastAnswered;
}
