import { type PlanPart, partOf, rungsInPart } from '../evening/plan-part.ts';
import { maxCardsOf, type WeekPlan } from '../evening/week-plan.ts';
import type { RungId, Strand } from '../ladder/rung.ts';
import { rungById, rungsOf } from '../ladder/rungs.ts';
import { nextRung } from './next-rung.ts';
import type { RungSummary, WeekSummary } from './summary.ts';

/** One step up: in part `part` of the plan, counted from 0, the rung `to` takes the place of `from`. */
export interface StepUp {
  readonly part: number;
  readonly strand: Strand;
  readonly from: RungId;
  readonly to: RungId;
}

/** A plan as the digest would have it, and every step that differs from the plan it was made from. */
export interface ProposedPlan {
  readonly plan: WeekPlan;
  readonly steps: readonly StepUp[];
}

/**
 * The plan with every rung that the digest would move up (see proposeStep) exchanged for the next of its strand; only of
 * `strand` when that is given. Everything else stays: a rung to stay on, one on which the class is split, one at the top of the
 * ladder, one that was practised but is not in the plan any more. No rung comes twice: one that the plan has already is passed
 * over.
 *
 * A part of its rung's usual size takes the new one's usual size; a size that the teacher chose stays, as far as the new rung
 * has so many cards.
 *
 * @example
 * proposePlan({ parts: [{ rung: 'halves.to10', cards: 5, seconds: 3 }] }, summary).steps;
 * // [{ part: 0, strand: 'halves', from: 'halves.to10', to: 'halves.to20' }]
 */
export function proposePlan(
  plan: WeekPlan,
  summary: Pick<WeekSummary, 'rungs'>,
  strand?: Strand,
): ProposedPlan {
  const rising = new Map(
    summary.rungs
      .filter((each) => strand === undefined || each.strand === strand)
      .filter(({ proposal }) => proposal.kind === 'move_up')
      .map((each) => [each.rung, each]),
  );
  const taken = new Set(plan.parts.flatMap(rungsInPart));
  const steps: StepUp[] = [];
  const parts = plan.parts.map((part, index) => {
    const rungs = rungsInPart(part).map((from) => {
      const to = stepFrom(rising.get(from), taken);
      if (to === null) return from;
      taken.add(to);
      steps.push({ part: index, strand: rising.get(from)?.strand ?? 'bonds', from, to });
      return to;
    });
    return steps.some((step) => step.part === index) ? resized(part, rungs) : part;
  });
  return { plan: { parts }, steps };
}

/** Where to go from a rung that moves up; null when it does not, or when every rung above is taken. */
function stepFrom(rung: RungSummary | undefined, taken: ReadonlySet<RungId>): RungId | null {
  if (!rung?.next) return null;
  if (!taken.has(rung.next)) return rung.next;
  const next = rungById(rung.next);
  return next && nextRung(next, rungsOf(next.strand), taken);
}

function resized(part: PlanPart, rungs: readonly RungId[]): PlanPart {
  const [before, after] = [rungById(part.rung), rungById(rungs[0] ?? part.rung)];
  const cards = part.cards === before?.cards ? (after?.cards ?? part.cards) : part.cards;
  const seconds =
    part.seconds === before?.seconds ? (after?.seconds ?? part.seconds) : part.seconds;
  const next = partOf(rungs, { cards, seconds });
  return { ...next, cards: Math.min(cards, maxCardsOf(next)) };
}
