import { LONG_SILENCE } from './silent-run.ts';
import type { Call } from './summary.ts';
import type { ChildWeek, WeekInput } from './week.ts';

/** A call list longer than this is not worked through in an afternoon (common practice, no source). */
export const FIRST_CALLS = 5;

const URGENCY: Readonly<Record<Call['reason'], number>> = {
  unreachable: 0,
  undelivered: 1,
  silent: 2,
  left: 3,
  not_joined: 4,
};

/**
 * Whom to phone: families that messages no longer reach, then those whose last two evenings or more this week were not
 * delivered for another reason, then those silent for two evenings or more, then those that left, then those that never
 * joined; within each the longest run first, then the class list. An evening of the day itself may still be on its way.
 *
 * @example
 * listCalls({ days, today, children: [] }); // []
 */
export function listCalls({ children, today }: Pick<WeekInput, 'children' | 'today'>): Call[] {
  return children
    .flatMap((child) => callFor(child, today))
    .sort(
      (one, other) =>
        URGENCY[one.reason] - URGENCY[other.reason] ||
        other.evenings - one.evenings ||
        one.number - other.number,
    );
}

function callFor(child: ChildWeek, today: WeekInput['today']): Call[] {
  const { childId, number, nickname } = child;
  const who = { childId, number, nickname };
  if (!child.joined) return [{ ...who, reason: child.left ? 'left' : 'not_joined', evenings: 0 }];
  if (!child.reachable) return [{ ...who, reason: 'unreachable', evenings: child.silentRun }];
  const undelivered = unsentRun(child, today);
  if (undelivered >= LONG_SILENCE) {
    return [{ ...who, reason: 'undelivered', evenings: undelivered }];
  }
  if (child.silentRun < LONG_SILENCE) return [];
  return [{ ...who, reason: 'silent', evenings: child.silentRun }];
}

/** How many of the latest evenings in a row were never delivered. */
function unsentRun({ evenings }: ChildWeek, today: WeekInput['today']): number {
  const before = evenings
    .filter(({ day }) => day < today)
    .toSorted((one, other) => (one.day < other.day ? -1 : 1));
  return before.length - 1 - before.findLastIndex(({ status }) => status !== 'unsent');
}
