import { describe, expect, it } from 'vitest';
import {
  activatePlan,
  getActivePlan,
  getPlans,
  readEvening,
  type Store,
  saveDraftPlan,
  undoAct,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { refusalOf } from '../support/code-of.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, aPlan } from '../support/practice.ts';
import { dumpAll } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { MORNING, PLAN, TUESDAY } from '../support/term.ts';
import { booksSuite } from './books.suite.ts';
import { pagesSuite } from './pages.suite.ts';

const OTHER_PLAN: WeekPlan = { parts: [{ rung: 'halves.to10', cards: 5, seconds: 4 }] };

describe.each(dearBackends)('on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('a week plan', () => plans(opened));
  describe('a week plan', () => takenBack(opened));
  describe('a workbook', () => booksSuite(opened));
  describe('a child’s place in its workbooks', () => pagesSuite(opened));
});

function plans(opened: () => Store) {
  it('is a draft until it is activated, and there is one draft at a time', async () => {
    const { scope, schoolClass } = await aClass(opened());
    expect(await getPlans(opened(), scope)).toEqual({ active: null, draft: null });
    await saveDraftPlan(opened(), scope, { plan: OTHER_PLAN, now: MORNING });
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: MORNING });
    const { active, draft } = await getPlans(opened(), scope);
    expect([active, draft?.plan]).toEqual([null, PLAN]);
    expect(await getActivePlan(opened(), schoolClass.id)).toBeNull();
    expect((await activatePlan(opened(), scope, MORNING)).plan).toEqual(PLAN);
    expect(await getPlans(opened(), scope)).toEqual({ active: draft, draft: null });
    expect(await getActivePlan(opened(), schoolClass.id)).toMatchObject({
      ...draft,
      since: MORNING,
    });
  });

  it('once activated takes the place of the one before', async () => {
    const classroom = await aClass(opened());
    const first = await aPlan(opened(), classroom, PLAN);
    await saveDraftPlan(opened(), classroom.scope, { plan: OTHER_PLAN, now: MORNING });
    await activatePlan(opened(), classroom.scope, MORNING);
    const { active } = await getPlans(opened(), classroom.scope);
    expect(active?.plan).toEqual(OTHER_PLAN);
    expect(active?.id).not.toBe(first.id);
  });

  it.each<[string, WeekPlan]>([
    ['without parts', { parts: [] }],
    ['with too many cards', { parts: [{ rung: 'doubles.to5', cards: 6, seconds: 3 }] }],
    ['with the same rung twice', { parts: [...PLAN.parts, ...PLAN.parts] }],
  ])('%s may be kept as a draft but not activated', async (_how, plan) => {
    const classroom = await aClass(opened());
    const active = await aPlan(opened(), classroom);
    await saveDraftPlan(opened(), classroom.scope, { plan, now: MORNING });
    const before = await dumpAll(opened());
    const activating = activatePlan(opened(), classroom.scope, MORNING);
    expect(await refusalOf(activating)).toBe('invalid: week plan');
    expect(await dumpAll(opened())).toEqual(before);
    expect(await getActivePlan(opened(), classroom.schoolClass.id)).toEqual(active);
  });

  it('cannot be activated without a draft', async () => {
    const { scope } = await aClass(opened());
    expect(await refusalOf(activatePlan(opened(), scope, MORNING))).toBe('not_found: draft plan');
  });

  it('activated later alters no evening that is planned already', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const { view } = await anEvening(opened(), classroom, family);
    await saveDraftPlan(opened(), classroom.scope, { plan: OTHER_PLAN, now: MORNING });
    await activatePlan(opened(), classroom.scope, MORNING);
    expect(await readEvening(opened(), view.id)).toEqual(view);
    const next = await anEvening(opened(), classroom, family, { on: TUESDAY });
    expect(next.view.drill.parts.map((part) => part.rung)).toEqual(['halves.to10']);
  });
}

function takenBack(opened: () => Store) {
  it('put in use can be taken back: the plan before it is in force since when it was, and it is the draft again', async () => {
    const classroom = await aClass(opened());
    const { scope, schoolClass } = classroom;
    const before = await aPlan(opened(), classroom, PLAN);
    const undo = (actId: string) =>
      undoAct(opened(), { teacherId: scope.teacherId, actId, now: MORNING });
    await saveDraftPlan(opened(), scope, { plan: OTHER_PLAN, now: MORNING });
    const { actId } = await activatePlan(opened(), scope, MORNING);
    await undo(actId);
    expect(await getActivePlan(opened(), schoolClass.id)).toEqual(before);
    expect((await getPlans(opened(), scope)).draft?.plan).toEqual(OTHER_PLAN);
    const again = await activatePlan(opened(), scope, MORNING);
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: MORNING });
    await undo(again.actId);
    expect((await getPlans(opened(), scope)).draft?.plan).toEqual(PLAN);
  });

  it('put in use as the first can be taken back, and not once another is in use', async () => {
    const { scope, schoolClass } = await aClass(opened());
    const undo = (actId: string) =>
      undoAct(opened(), { teacherId: scope.teacherId, actId, now: MORNING });
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: MORNING });
    const first = await activatePlan(opened(), scope, MORNING);
    await undo(first.actId);
    expect(await getActivePlan(opened(), schoolClass.id)).toBeNull();
    const second = await activatePlan(opened(), scope, MORNING);
    await saveDraftPlan(opened(), scope, { plan: OTHER_PLAN, now: MORNING });
    await activatePlan(opened(), scope, MORNING);
    expect(await refusalOf(undo(second.actId))).toBe('conflict: week plan');
  });
}
