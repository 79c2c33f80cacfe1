import { findWobbles } from './find-wobbles.ts';
import { listCalls } from './list-calls.ts';
import { summariseChild } from './summarise-child.ts';
import { summariseStrands } from './summarise-strands.ts';
import type { WeekInput, WeekSummary } from './week.ts';

/** Three to four days a week is the dose in published work on incremental rehearsal (Burns 2005, as charted by NCII). */
const PRACTISED_DAYS = 3;

/**
 * Friday's digest for one class. Children come in the order of the class list, whatever order they are given in.
 * Missing is missing, never zero: an evening that was not marked adds nothing to any tally.
 *
 * @example
 * summariseWeek({ days, children: [] }).practisedThree; // 0
 */
export function summariseWeek(input: WeekInput): WeekSummary {
  const { days } = input;
  const children = input.children
    .map((child) => summariseChild(child, days))
    .sort((one, other) => one.number - other.number);
  const goal = Math.max(1, Math.min(PRACTISED_DAYS, days.length));
  return {
    days,
    joined: input.children.filter((child) => child.joined).length,
    practisedThree: children.filter(({ daysPractised }) => daysPractised >= goal).length,
    children,
    strands: summariseStrands(input),
    wobbling: findWobbles(input),
    ...listCalls(input.children),
    pages: children.reduce((total, { pages }) => total + (pages ?? 0), 0),
  };
}
