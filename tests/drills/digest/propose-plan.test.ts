import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nextRung } from '../../../drills/digest/next-rung.ts';
import {
  checkPlan,
  type Proposal,
  proposePlan,
  RUNGS,
  type RungId,
  type RungSummary,
  rungById,
  rungsInPart,
  rungsOf,
  samePlan,
  type WeekPlan,
} from '../../../drills/index.ts';

/** What the digest says of a rung, as far as a plan is made from it. */
function summary(
  id: RungId,
  kind: Proposal['kind'],
  practised: readonly RungId[] = [id],
): RungSummary {
  const rung = rungById(id);
  if (!rung) throw new Error(`no such rung: ${id}`);
  const proposal: Proposal = kind === 'split' ? { kind, smaller: 'secure', group: [] } : { kind };
  return {
    strand: rung.strand,
    rung: id,
    right: 8,
    asked: 10,
    children: 5,
    secure: 5,
    notYet: 0,
    tooFew: 0,
    share: { lower: 0.6, upper: 1 },
    proposal,
    next: nextRung(rung, rungsOf(rung.strand), new Set(practised)),
  };
}

const up = (...ids: RungId[]) => ({ rungs: ids.map((id) => summary(id, 'move_up', ids)) });
const plan = (...ids: RungId[]): WeekPlan => ({
  parts: ids.map((rung) => {
    const known = rungById(rung);
    return { rung, cards: known?.cards ?? 0, seconds: known?.seconds ?? 0 };
  }),
});

describe('the plan that the digest proposes', () => {
  test('has the next rung where most are secure, and says which step that was', () => {
    const before: WeekPlan = { parts: [{ rung: 'halves.to10', cards: 5, seconds: 3 }] };
    expect(proposePlan(before, up('halves.to10'))).toEqual({
      plan: { parts: [{ rung: 'halves.to20', cards: 10, seconds: 3 }] },
      steps: [{ part: 0, strand: 'halves', from: 'halves.to10', to: 'halves.to20' }],
    });
  });

  test.each<Proposal['kind']>(['stay', 'split', 'too_little'])(
    'is the same plan where the digest says “%s”',
    (kind) => {
      const before = plan('halves.to10', 'clock.half');
      const { plan: after, steps } = proposePlan(before, { rungs: [summary('halves.to10', kind)] });
      expect(after).toEqual(before);
      expect(steps).toEqual([]);
    },
  );

  test('stays as it is at the top of the ladder, and for a rung that is not in it any more', () => {
    const before = plan('halves.tens');
    expect(proposePlan(before, up('halves.tens')).steps).toEqual([]);
    expect(proposePlan(before, up('bonds.to10')).steps).toEqual([]);
  });

  test('accepted once, it does not move up again by the same digest', () => {
    const { plan: after } = proposePlan(plan('halves.to10'), up('halves.to10'));
    expect(proposePlan(after, up('halves.to10')).steps).toEqual([]);
  });

  test('passes over a rung that the plan has already', () => {
    const before = plan('halves.to10', 'halves.to20');
    const { steps } = proposePlan(before, up('halves.to10'));
    expect(steps.map(({ to }) => to)).toEqual(['halves.to40']);
  });

  test('gives two rungs of a strand two next ones', () => {
    const { plan: after, steps } = proposePlan(
      plan('doubles.to5', 'doubles.to10'),
      up('doubles.to5', 'doubles.to10'),
    );
    expect(after.parts.map(({ rung }) => rung)).toEqual(['doubles.to20', 'doubles.tens']);
    expect(steps).toHaveLength(2);
  });

  test('moves up one strand alone when that is asked', () => {
    const before = plan('halves.to10', 'bonds.to10');
    const { steps } = proposePlan(before, up('halves.to10', 'bonds.to10'), 'bonds');
    expect(steps.map(({ strand }) => strand)).toEqual(['bonds']);
  });
});

describe('a part that moves up', () => {
  test('keeps a size that the teacher chose, as far as the new rung has so many cards', () => {
    const chosen = { rung: 'clock.half', cards: 6, seconds: 8 } as const;
    const [part] = proposePlan({ parts: [chosen] }, up('clock.half')).plan.parts;
    expect(part).toEqual({ rung: 'clock.mixed', cards: 6, seconds: 8 });
    const many = { rung: 'bonds.to10', cards: 20, seconds: 3 } as const;
    const [fewer] = proposePlan({ parts: [many] }, up('bonds.to10')).plan.parts;
    expect(fewer).toEqual({ rung: 'bonds.make10', cards: 11, seconds: 3 });
  });

  test('moves up one rung of a mixed part and leaves it mixed', () => {
    const before: WeekPlan = {
      parts: [{ rung: 'doubles.to10', also: ['halves.to10'], cards: 10, seconds: 3 }],
    };
    const { plan: after, steps } = proposePlan(before, up('halves.to10'));
    expect(after.parts).toEqual([
      { rung: 'doubles.to10', also: ['halves.to20'], cards: 10, seconds: 3 },
    ]);
    expect(steps).toEqual([{ part: 0, strand: 'halves', from: 'halves.to10', to: 'halves.to20' }]);
  });

  test('can be sent whenever the plan before could, and differs from it only by its steps', () => {
    const anyPlan = fc
      .uniqueArray(fc.constantFrom(...RUNGS), { minLength: 1, maxLength: 6 })
      .map((rungs) => plan(...rungs.map(({ id }) => id)));
    fc.assert(
      fc.property(anyPlan, fc.infiniteStream(fc.boolean()), (before, moves) => {
        const ids = before.parts.flatMap(rungsInPart);
        const rising = ids.filter(() => moves.next().value === true);
        const { plan: after, steps } = proposePlan(before, {
          rungs: rising.map((id) => summary(id, 'move_up', ids)),
        });
        expect(checkPlan(after)).toEqual([]);
        expect(samePlan(before, after)).toBe(steps.length === 0);
        for (const { from, to, strand } of steps) {
          expect(rising).toContain(from);
          const ladder = rungsOf(strand).map(({ id }) => id);
          expect(ladder.indexOf(to)).toBeGreaterThan(ladder.indexOf(from));
        }
      }),
      { numRuns: 100 },
    );
  });
});
