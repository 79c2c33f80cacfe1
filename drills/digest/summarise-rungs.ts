import type { Rung } from '../ladder/rung.ts';
import { RUNGS, rungsOf } from '../ladder/rungs.ts';
import type { MemoryModel } from '../memory/model.ts';
import { judgeSecurity } from './judge-security.ts';
import { nextRung } from './next-rung.ts';
import { practisedEvenings } from './practised-evenings.ts';
import { proposeStep } from './propose-step.ts';
import type { RungSummary } from './summary.ts';
import { tallyOf } from './tally.ts';
import type { ChildWeek, PartScore, WeekInput } from './week.ts';

/** A child beside what it was marked on this week. */
interface Practised {
  readonly child: ChildWeek;
  readonly parts: readonly PartScore[];
}

/**
 * The rungs somebody practised this week, in the order of the ladder. The tally is everybody's; the judgement is of the
 * children who have a helper now, because only they go on practising.
 */
export function summariseRungs(input: WeekInput, model: MemoryModel): RungSummary[] {
  const everyone = input.children.map((child) => ({
    child,
    parts: practisedEvenings(child, input.days).flatMap((evening) => evening.parts),
  }));
  const practised = new Set(everyone.flatMap(({ parts }) => parts.map(({ rung }) => rung)));
  return RUNGS.filter(({ id }) => practised.has(id)).map((rung) => ({
    ...summariseRung(rung, everyone, input, model),
    next: nextRung(rung, rungsOf(rung.strand), practised),
  }));
}

function summariseRung(
  rung: Rung,
  everyone: readonly Practised[],
  { children, today }: WeekInput,
  model: MemoryModel,
): Omit<RungSummary, 'next'> {
  const onRung = everyone
    .map(({ child, parts }) => ({
      child,
      parts: parts.filter((part) => part.rung === rung.id && part.asked > 0),
    }))
    .filter(({ parts }) => parts.length > 0);
  const judged = onRung
    .filter(({ child }) => child.joined)
    .map(({ child: { childId, number, nickname, memory }, parts }) => ({
      childId,
      number,
      nickname,
      level: judgeSecurity(rung, { memory, parts }, today, model).level,
    }));
  const joined = children.filter((child) => child.joined).length;
  return {
    strand: rung.strand,
    rung: rung.id,
    ...tallyOf(onRung.flatMap(({ parts }) => parts)),
    ...proposeStep(judged, joined),
  };
}
