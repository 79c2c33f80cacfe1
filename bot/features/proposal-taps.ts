import { createHash } from 'node:crypto';
import {
  AppError,
  acceptProposal,
  getPlans,
  type StoredPlan,
  type TeacherScope,
} from '../../db/index.ts';
import { type ProposedPlan, proposePlan, STRANDS, type Strand } from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { type DigestOf, type Offer, proposalsScreen } from '../screens/digest-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { accepted, earlierWeek, inUseAlready, movedOn } from '../texts/proposals.ts';
import { actBehind } from './act-behind.ts';
import { type DigestRead, digestFor, isOver } from './digest-source.ts';
import type { TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** Letters of a sign: one in four thousand million other changes has the same. */
const SIGN_LENGTH = 8;

/** The digest's proposals, and accepting them. */
export const proposalTaps: TapHandlers<'proposals' | 'acceptSteps'> = {
  proposals: (tap, { classId, day }) =>
    turn(tap, classId, async (scope) => {
      const read = await digestFor(tap.deps, scope, day);
      return readProposals(tap.deps, scope, { of: { classId, day }, read });
    }),
  acceptSteps: async (tap, { classId, day, of: what, sign }) => {
    const { deps } = tap;
    const scope = await teacherScope(deps.store, tap.userId, classId);
    const read = await digestFor(deps, scope, day);
    const of = { classId, day };
    const { isDone, said } = await accept(deps, scope, { read, what, sign });
    await tap.answer(said, isDone ? 'line' : 'alert');
    // A change that is not the one shown is never made: the screen shows what there is now.
    await tap.show(await readProposals(deps, scope, { of, read, said: isDone ? said : null }));
  },
};

/** Makes the change that a button stands for, or says why that is not what would be changed now. */
async function accept(
  { store, clock }: BotDeps,
  scope: TeacherScope,
  { read, what, sign }: { readonly read: DigestRead; readonly what: string; readonly sign: string },
): Promise<{ readonly isDone: boolean; readonly said: string }> {
  if (isOver(read)) return { isDone: false, said: earlierWeek() };
  const { active } = await getPlans(store, scope);
  const strand = STRANDS.find((each) => each === what);
  if (!active || (!strand && what !== 'all')) return { isDone: false, said: movedOn() };
  const { plan, steps } = proposed(active, read, strand);
  if (steps.length === 0) return { isDone: false, said: inUseAlready() };
  if (signOf(active, { plan, steps }) !== sign) return { isDone: false, said: movedOn() };
  try {
    await acceptProposal(store, scope, { plan, madeFrom: active.id, now: clock.now() });
    return { isDone: true, said: accepted(steps) };
  } catch (error) {
    // A co-teacher was quicker.
    if (error instanceof AppError && error.code === 'conflict') {
      return { isDone: false, said: movedOn() };
    }
    throw error;
  }
}

async function readProposals(
  { store, clock }: BotDeps,
  scope: TeacherScope,
  { of, read, said = null }: { of: DigestOf; read: DigestRead; said?: string | null },
): Promise<Screen> {
  const { active } = await getPlans(store, scope);
  const over = isOver(read);
  const offers = active && !over ? offersOf(active, read) : [];
  return proposalsScreen(of, {
    rungs: read.summary.rungs,
    isOver: over,
    steps: active ? proposed(active, read).steps : null,
    said,
    offers,
    undo: active && (await actBehind(store, scope, active.id, 'proposalAccepted', clock.now())),
  });
}

function offersOf(active: StoredPlan, read: DigestRead): Offer[] {
  const all = proposed(active, read);
  const strands = [...new Set(all.steps.map(({ strand }) => strand))];
  const each = strands.map((strand): Offer => {
    const own = proposed(active, read, strand);
    return { of: strand, sign: signOf(active, own), steps: own.steps };
  });
  const both: Offer[] =
    strands.length > 1 ? [{ of: 'all', sign: signOf(active, all), steps: all.steps }] : [];
  return [...both, ...each];
}

function proposed(active: StoredPlan, { summary }: DigestRead, strand?: Strand): ProposedPlan {
  return proposePlan(active.plan, summary, strand);
}

/** Stands for one change of one plan in a button, which has no room for more. */
function signOf({ id }: StoredPlan, { plan }: ProposedPlan): string {
  return createHash('sha256')
    .update(JSON.stringify([id, plan]))
    .digest('hex')
    .slice(0, SIGN_LENGTH);
}
