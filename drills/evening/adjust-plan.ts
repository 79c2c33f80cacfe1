import { neighbourRung, placeOf } from '../ladder/neighbour-rung.ts';
import type { Rung, RungId } from '../ladder/rung.ts';
import { rungById } from '../ladder/rungs.ts';
import type { Adjustment } from './adjustment.ts';
import { partOf, rungsInPart } from './plan-part.ts';
import { maxCardsOf, PLAN_LIMITS, type WeekPlan } from './week-plan.ts';

/**
 * The plan that one child practises instead of the class's. It has the same parts in the same order, and what could be sent
 * before can be sent after.
 *
 * - Easier or harder: each rung, in a mixed part too, gives way to its neighbour (see neighbourRung). It stays where there is
 *   none, and where the neighbour is in the child's plan already, so that no rung comes twice.
 * - `fewer`: three cards of five, rounded up, and at least what a plan may ask for. Our choice, no source.
 * - A part asks for no more cards than its rungs have.
 * - `untimed` changes nothing here: the pace stays in the plan, and whoever shows the drill leaves it out.
 *
 * A rung that does not exist stays as it is: checkPlan says so.
 *
 * @example
 * adjustPlan(plan, { steps: -1, fewer: true, untimed: false }).parts[0];
 * // { rung: 'halves.to10', cards: 5, seconds: 3 } for halves.to20 with 8 cards
 */
export function adjustPlan(plan: WeekPlan, { steps, fewer }: Adjustment): WeekPlan {
  if (steps === 0 && !fewer) return plan;
  const moved = steps === 0 ? new Map<RungId, RungId>() : neighbours(plan, steps);
  return {
    parts: plan.parts.map((part) => {
      const rungs = rungsInPart(part).map((id) => moved.get(id) ?? id);
      const cards = fewer ? fewerCards(part.cards) : part.cards;
      const own = partOf(rungs, { cards, seconds: part.seconds });
      const isKnown = rungs.every((id) => rungById(id) !== null);
      return isKnown ? { ...own, cards: Math.min(cards, maxCardsOf(own)) } : own;
    }),
  };
}

/**
 * How many cards a child with fewer cards gets of `cards`.
 *
 * @example
 * fewerCards(10); // 6
 */
export function fewerCards(cards: number): number {
  return Math.min(cards, Math.max(PLAN_LIMITS.cards.min, Math.ceil((cards * 3) / 5)));
}

/** Which rung stands in for each rung of a plan. No two stand for one, and none for a rung that stays. */
function neighbours(plan: WeekPlan, direction: -1 | 1): ReadonlyMap<RungId, RungId> {
  // From the end that is moved to: by then it is known whether the rung there has made room.
  const rungs = [...new Set(plan.parts.flatMap(rungsInPart))]
    .flatMap((id) => rungById(id) ?? [])
    .sort((one, other) => direction * (placeOf(other) - placeOf(one)));
  const moved = new Map<RungId, RungId>();
  const taken = new Set<RungId>();
  for (const rung of rungs) {
    const to = stepTo(rung, direction, taken);
    moved.set(rung.id, to);
    taken.add(to);
  }
  return moved;
}

function stepTo(rung: Rung, direction: -1 | 1, taken: ReadonlySet<RungId>): RungId {
  const next = neighbourRung(rung, direction);
  return next && !taken.has(next.id) ? next.id : rung.id;
}
