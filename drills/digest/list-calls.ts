import { LONG_SILENCE } from './silent-run.ts';
import type { Call } from './summary.ts';
import type { ChildWeek } from './week.ts';

/** A call list longer than this is not worked through in an afternoon (common practice, no source). */
const MOST_CALLS = 5;

const URGENCY: Readonly<Record<Call['reason'], number>> = {
  unreachable: 0,
  silent: 1,
  left: 2,
  not_joined: 3,
};

/**
 * Whom to phone, at most five: families that messages no longer reach, then those silent for two evenings or more, then those
 * that left, then those that never joined; within each the longest silence first, then the class list. `moreCalls` were left
 * out.
 */
export function listCalls(children: readonly ChildWeek[]): { calls: Call[]; moreCalls: number } {
  const all = children
    .flatMap(callFor)
    .sort(
      (one, other) =>
        URGENCY[one.reason] - URGENCY[other.reason] ||
        other.evenings - one.evenings ||
        one.number - other.number,
    );
  const calls = all.slice(0, MOST_CALLS);
  return { calls, moreCalls: all.length - calls.length };
}

function callFor(child: ChildWeek): Call[] {
  const { childId, number, nickname } = child;
  const who = { childId, number, nickname };
  if (!child.joined) return [{ ...who, reason: child.left ? 'left' : 'not_joined', evenings: 0 }];
  if (!child.reachable) return [{ ...who, reason: 'unreachable', evenings: child.silentRun }];
  if (child.silentRun < LONG_SILENCE) return [];
  return [{ ...who, reason: 'silent', evenings: child.silentRun }];
}
