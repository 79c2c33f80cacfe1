import type { SchoolDay } from '../calendar/school-day.ts';
import { chanceDone, firstDayWith } from './chance-done.ts';
import type { Pace } from './pace.ts';

/** Two children of ten are left out of the range, one on either side. */
const EARLIEST_SHARE = 0.1;
const LATEST_SHARE = 0.9;

/**
 * When a child's book will be done. `too_early`: too few evenings to say; `standing`: no page was done on any of them. Of a
 * `finish`, `middle` is the day at the mean pace, and the child is done between `earliest` and `latest` in about eight cases of
 * ten; null stands for a day after all that were looked at.
 */
export type Finish =
  | { readonly kind: 'done' | 'too_early' | 'standing' }
  | {
      readonly kind: 'finish';
      readonly earliest: SchoolDay | null;
      readonly middle: SchoolDay | null;
      readonly latest: SchoolDay | null;
    };

/**
 * Projects when the `left` pages of a book will be done, by a child's own pace, on the school days ahead in their order, weekends
 * and breaks left out. The middle holds within the range always; more pages done never move it to a later day. For the model
 * and its limits see {@link chanceDone}.
 *
 * @example
 * projectFinish({ left: 6, pace: { pages: 12, evenings: 6, spread: 0.5 }, days });
 * // { kind: 'finish', middle: days[2], ... }: two pages a day
 */
export function projectFinish(input: {
  readonly left: number;
  readonly pace: Pace | null;
  readonly days: readonly SchoolDay[];
}): Finish {
  const { left, pace, days } = input;
  if (left <= 0) return { kind: 'done' };
  if (pace === null) return { kind: 'too_early' };
  if (pace.pages === 0) return { kind: 'standing' };
  const chance = (ahead: number) => chanceDone(pace, left, ahead);
  const by = (share: number) => firstDayWith(chance, share, days.length) ?? days.length;
  const middle = Math.ceil((left * pace.evenings) / pace.pages) - 1;
  const dayAt = (place: number) => days[place] ?? null;
  return {
    kind: 'finish',
    earliest: dayAt(Math.min(by(EARLIEST_SHARE), middle)),
    middle: dayAt(middle),
    latest: dayAt(Math.max(by(LATEST_SHARE), middle)),
  };
}
