import type { Rung } from '../ladder/rung.ts';
import { RUNGS, rungsOf } from '../ladder/rungs.ts';
import { classRungs, couldPractise } from './class-rungs.ts';
import type { JudgedChild } from './judge-class.ts';
import { nextRung } from './next-rung.ts';
import { proposeStep } from './propose-step.ts';
import type { RungSummary } from './summary.ts';
import { tallyOf } from './tally.ts';

/**
 * The rungs the class practised this week (see classRungs), in the order of the ladder. The tally is everybody's; the judgement is of the
 * children who have a helper now, because only they go on practising.
 */
export function summariseRungs(everyone: readonly JudgedChild[]): RungSummary[] {
  const practised = classRungs(everyone);
  return RUNGS.filter(({ id }) => practised.has(id)).map((rung) => ({
    ...summariseRung(rung, everyone),
    next: nextRung(rung, rungsOf(rung.strand), practised),
  }));
}

function summariseRung(
  { id, strand }: Rung,
  everyone: readonly JudgedChild[],
): Omit<RungSummary, 'next'> {
  const parts = everyone.flatMap((each) => each.parts.filter(({ rung }) => rung === id));
  const judged = everyone.flatMap(({ child, levels }) => {
    const level = levels.get(id);
    const { childId, number, nickname } = child;
    return level !== undefined && child.joined ? [{ childId, number, nickname, level }] : [];
  });
  const joined = everyone.filter((each) => each.child.joined && couldPractise(each, id)).length;
  return { strand, rung: id, ...tallyOf(parts), ...proposeStep(judged, joined) };
}
