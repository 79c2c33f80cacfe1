import {
  PLAN_LIMITS,
  type PlanPart,
  partOf,
  type RungId,
  rungById,
  rungsInPart,
} from '../../drills/index.ts';
import { unpackPlace } from '../callback/plan-place.ts';
import { noRoomApart } from '../texts/plan.ts';
import { openDesk } from './plan-desk.ts';
import { atDesk, change, fitCards } from './plan-taps.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';

/** Taking a mixed part apart, one step or all of it. */
export const mixTaps: TapHandlers<'planTakeOut' | 'planApart'> = {
  planTakeOut: (tap, { classId, part, rung }) =>
    atDesk(tap, classId, part, (desk) =>
      change(desk, part, (old) => {
        const rungs = rungsInPart(old);
        const left = rungs.filter((each) => each !== rung);
        // A second quick tap finds nothing to take out, and the last step always stays.
        if (left.length === rungs.length || left.length === 0) return old;
        const fewer = partOf(left, old);
        return { ...fewer, cards: fitCards(fewer, fewer.cards) };
      }),
    ),
  planApart: apart,
};

/** Makes a part of its own of each step that was mixed, in its usual size; the first keeps the part's. */
async function apart(
  tap: Tap,
  { classId, part: place, rungs: expected }: { classId: string; part: number; rungs: number },
): Promise<void> {
  const { week, part: index } = unpackPlace(place);
  const scope = await teacherScope(tap.deps.store, tap.userId, classId);
  const desk = await openDesk(tap, scope, week);
  const { parts } = desk.plan;
  const part = parts[index];
  const rungs = part ? rungsInPart(part) : [];
  if (part && rungs.length === expected && expected > 1) {
    const after = parts.length + rungs.length - 1;
    if (after > PLAN_LIMITS.parts.max) return tap.answer(noRoomApart(after), 'alert');
    await desk.save({ parts: parts.toSpliced(index, 1, ...ownParts(part)) });
  }
  await tap.answer();
  await tap.show(await openDesk(tap, scope, week).then((changed) => changed.show()));
}

function ownParts(part: PlanPart): PlanPart[] {
  const [first, ...others] = rungsInPart(part);
  const own = partOf(first ? [first] : [], part);
  return [{ ...own, cards: fitCards(own, own.cards) }, ...others.map(usualPart)];
}

function usualPart(id: RungId): PlanPart {
  const { cards, seconds } = rungById(id) ?? PART_SIZE;
  return { rung: id, cards, seconds };
}

/** For a step that this release does not have: checkPlan names it. */
const PART_SIZE = { cards: 10, seconds: 3 };
