import {
  activatePlan,
  closePart,
  type EveningView,
  findEvening,
  getActivePlan,
  type HelperScope,
  openMarking,
  planEvening,
  type Store,
  saveDraftPlan,
  toggleMissed,
} from '../../db/index.ts';
import type { SchoolDay, WeekPlan } from '../../drills/index.ts';
import type { Classroom, Family } from './people.ts';
import { evening, MONDAY, MORNING, PLAN } from './term.ts';

/** Puts a plan in force for the class, unless it has one. */
export async function aPlan(store: Store, classroom: Classroom, plan: WeekPlan = PLAN) {
  const active = await getActivePlan(store, classroom.schoolClass.id);
  if (active) return active;
  await saveDraftPlan(store, classroom.scope, { plan, now: MORNING });
  await activatePlan(store, classroom.scope, MORNING);
  const stored = await getActivePlan(store, classroom.schoolClass.id);
  if (!stored) throw new Error('the plan is not in force after activating it');
  return stored;
}

/** Everything `planEvening` needs for a child, at the class's time, from the plan in force. */
export async function eveningInput(
  store: Store,
  classroom: Classroom,
  family: Pick<Family, 'child'>,
  { on = MONDAY }: { on?: SchoolDay } = {},
) {
  return {
    childId: family.child.id,
    classId: classroom.schoolClass.id,
    day: on,
    plan: await aPlan(store, classroom),
    expiresAt: evening(on, 180),
    now: evening(on),
  };
}

/** Plans an evening and returns it with the scope of the family's first helper. */
export async function anEvening(
  store: Store,
  classroom: Classroom,
  family: Family,
  options: { on?: SchoolDay } = {},
): Promise<{ view: EveningView; scope: HelperScope }> {
  const input = await eveningInput(store, classroom, family, options);
  await planEvening(store, input);
  const view = await findEvening(store, {
    helperId: family.helper.id,
    childId: family.child.id,
    day: input.day,
  });
  if (!view) throw new Error('the evening is not there after planning it');
  return { view, scope: { helperId: family.helper.id, eveningId: view.id } };
}

/** Marks a part the way a helper does: open it, tap the missed cards, done. Opened again, it taps only the difference. */
export async function markPart(
  store: Store,
  scope: HelperScope,
  { part, missed, now }: { part: number; missed: readonly number[]; now: Date },
  before: readonly number[] = [],
): Promise<void> {
  await openMarking(store, scope, { part, now });
  const taps = [...missed, ...before].filter(
    (card) => missed.includes(card) !== before.includes(card),
  );
  for (const card of taps) await toggleMissed(store, scope, { part, card, now });
  await closePart(store, scope, { part, verdict: { kind: 'tapped' }, now });
}
