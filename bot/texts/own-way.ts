import type { AdjustedChild } from '../../db/index.ts';
import {
  type Adjustment,
  adjustPlan,
  type PlanPart,
  rungById,
  type WeekPlan,
} from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { partTitle } from './part-title.ts';
import { bold, lines, name, type Text } from './words.ts';

/** What one child's evenings are like beside the class's: the plan in use as this child gets it. */
export function ownWay(child: AdjustedChild, plan: WeekPlan | null): Text {
  const { adjustment } = child;
  return lines(
    bold(say('own-way-title', { child: name(child.nickname) })),
    ...(plan ? partLines(plan, adjustment) : [say('own-way-no-plan')]),
    adjustment.untimed ? say('own-way-untimed') : null,
    say('own-way-from-next'),
  );
}

function partLines(plan: WeekPlan, adjustment: Adjustment): string[] {
  const { steps } = adjustment;
  const adjusted = adjustPlan(plan, adjustment);
  return adjusted.parts.map((part, index) => {
    const before = plan.parts[index];
    return `${index + 1}. ${partLine(part, before, steps)}`;
  });
}

function partLine(part: PlanPart, before: PlanPart | undefined, steps: number): string {
  const isRun = rungById(part.rung)?.kind === 'run';
  const count = part.cards;
  const amount = isRun ? say('plan-numbers', { count }) : say('plan-cards', { count });
  const line = { part: partTitle(part), amount };
  if (steps === 0 || !before) return say('own-way-part', line);
  if (partTitle(before) !== line.part) {
    return say('own-way-instead', { ...line, before: partTitle(before) });
  }
  return steps < 0 ? say('own-way-no-easier', line) : say('own-way-no-harder', line);
}

/** A word for a child's own page; null when its evenings are as the class's. */
export function ownWayLine({ steps, fewer, untimed }: Adjustment): string | null {
  const differs = [
    ...(steps < 0 ? [say('own-way-easier')] : []),
    ...(steps > 0 ? [say('own-way-harder')] : []),
    ...(fewer ? [say('own-way-fewer')] : []),
    ...(untimed ? [say('own-way-no-timing')] : []),
  ];
  return differs.length === 0 ? null : say('own-way-only', { changes: differs.join(', ') });
}
