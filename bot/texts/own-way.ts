import type { AdjustedChild } from '../../db/index.ts';
import { type Adjustment, adjustPlan, rungById, type WeekPlan } from '../../drills/index.ts';
import { partTitle } from './part-title.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** What one child's evenings are like beside the class's: the plan in use as this child gets it. */
export function ownWay(child: AdjustedChild, plan: WeekPlan | null): Text {
  const { adjustment } = child;
  return lines(
    bold(`${name(child.nickname)}: for this child only`),
    ...(plan ? partLines(plan, adjustment) : ['No week plan is in use yet.']),
    adjustment.untimed ? 'No timing: cards come as pictures, never as a clip.' : null,
    'From the next evening on. The family and the class’s teachers see it, nobody else.',
  );
}

function partLines(plan: WeekPlan, adjustment: Adjustment): string[] {
  const { steps } = adjustment;
  const adjusted = adjustPlan(plan, adjustment);
  return adjusted.parts.map((part, index) => {
    const before = plan.parts[index];
    const isRun = rungById(part.rung)?.kind === 'run';
    const size = isRun
      ? count(part.cards, 'number', 'numbers')
      : count(part.cards, 'card', 'cards');
    const line = `${index + 1}. ${partTitle(part)}, ${size}`;
    if (steps === 0 || !before) return line;
    if (partTitle(before) !== partTitle(part)) return `${line}, instead of ${partTitle(before)}`;
    return `${line} (no ${steps < 0 ? 'easier' : 'harder'} step here)`;
  });
}

/** A word for a child's own page; null when its evenings are as the class's. */
export function ownWayLine({ steps, fewer, untimed }: Adjustment): string | null {
  const differs = [
    ...(steps < 0 ? ['easier steps'] : []),
    ...(steps > 0 ? ['harder steps'] : []),
    ...(fewer ? ['fewer cards'] : []),
    ...(untimed ? ['no timing'] : []),
  ];
  return differs.length === 0 ? null : `For this child only: ${differs.join(', ')}`;
}
