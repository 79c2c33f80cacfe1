import { rungsInPart } from './plan-part.ts';
import type { WeekPlan } from './week-plan.ts';

/**
 * Whether two plans send the same: the same parts in the same order, each with the same rungs and size.
 *
 * @example
 * samePlan({ parts: [] }, { parts: [] }); // true
 */
export function samePlan(one: WeekPlan, other: WeekPlan): boolean {
  return spelled(one) === spelled(other);
}

function spelled({ parts }: WeekPlan): string {
  return parts
    .map((part) => `${rungsInPart(part).join('+')} ${part.cards} ${part.seconds}`)
    .join('|');
}
