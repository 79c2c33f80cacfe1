import { MEMORY_MODEL } from '../memory/default-model.ts';
import type { MemoryModel } from '../memory/model.ts';
import { findWobbles } from './find-wobbles.ts';
import { judgeClass } from './judge-class.ts';
import { listCalls } from './list-calls.ts';
import { listSlower } from './list-slower.ts';
import { summariseChild } from './summarise-child.ts';
import { summariseRungs } from './summarise-rungs.ts';
import { summariseStrands } from './summarise-strands.ts';
import type { WeekSummary } from './summary.ts';
import type { WeekInput } from './week.ts';

/** Three to four days a week is the dose in published work on incremental rehearsal (Burns 2005, as charted by NCII). */
const PRACTISED_DAYS = 3;

/**
 * Friday's digest for one class. Children come in the order of the class list, whatever order they are given in; `model` is the
 * one their memory was kept with. Missing is missing, never zero: an evening that was not marked adds nothing to any tally.
 *
 * @example
 * summariseWeek({ days, today, children: [] }).practisedThree; // 0
 */
export function summariseWeek(input: WeekInput, model: MemoryModel = MEMORY_MODEL): WeekSummary {
  const { days } = input;
  const judged = judgeClass(input, model);
  const children = judged
    .map((each) => summariseChild(each, days))
    .sort((one, other) => one.number - other.number);
  const joined = new Set(input.children.flatMap((child) => (child.joined ? [child.childId] : [])));
  const goal = Math.max(1, Math.min(PRACTISED_DAYS, days.length));
  return {
    days,
    joined: joined.size,
    left: input.children.filter((child) => child.left).length,
    practisedThree: children.filter(
      ({ childId, daysPractised }) => joined.has(childId) && daysPractised >= goal,
    ).length,
    children,
    strands: summariseStrands(children, judged, days),
    rungs: summariseRungs(judged),
    wobbling: findWobbles(input),
    calls: listCalls(input),
    slower: listSlower(input),
    pages: children.reduce((total, { pages }) => total + (pages ?? 0), 0),
  };
}
