import { expect, it } from 'vitest';
import {
  activatePlan,
  dropDraft,
  getActivePlan,
  getPlans,
  loadDraft,
  planInForceAt,
  type Store,
  saveDraftPlan,
  undoAct,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { readTable } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, MORNING, PLAN } from '../support/term.ts';

const OTHER: WeekPlan = { parts: [{ rung: 'halves.to10', cards: 5, seconds: 4 }] };
const MIXED: WeekPlan = {
  parts: [{ rung: 'doubles.to10', also: ['halves.to10'], cards: 6, seconds: 3 }],
};

/** A whole plan taken into the draft. */
export function loadDraftSuite(opened: () => Store) {
  const draftOf = async (scope: Parameters<typeof getPlans>[1]) =>
    (await getPlans(opened(), scope)).draft;

  it('says where it comes from until it is edited', async () => {
    const { scope, schoolClass } = await aClass(opened());
    const act = await loadDraft(opened(), scope, { plan: PLAN, source: 'scheme', now: MORNING });
    expect(act).toBeNull();
    expect((await draftOf(scope))?.source).toBe('scheme');
    await activatePlan(opened(), scope, MORNING);
    expect((await getActivePlan(opened(), schoolClass.id))?.source).toBe('scheme');
    await loadDraft(opened(), scope, { plan: OTHER, source: 'proposal', now: MORNING });
    await saveDraftPlan(opened(), scope, { plan: OTHER, now: MORNING });
    expect((await draftOf(scope))?.source).toBe('teacher');
  });

  it('or dropped, gives the draft back that had to go, once', async () => {
    const { scope } = await aClass(opened());
    await saveDraftPlan(opened(), scope, { plan: OTHER, now: MORNING });
    const { teacherId } = scope;
    const loaded = await loadDraft(opened(), scope, { plan: PLAN, source: 'scheme', now: MORNING });
    const undone = await undoAct(opened(), { teacherId, actId: loaded ?? '', now: MORNING });
    expect(undone.again).toBe(false);
    expect(await draftOf(scope)).toMatchObject({ plan: OTHER, source: 'teacher' });
    const dropped = await dropDraft(opened(), scope, MORNING);
    expect(await draftOf(scope)).toBeNull();
    expect(await dropDraft(opened(), scope, MORNING)).toBeNull();
    await undoAct(opened(), { teacherId, actId: dropped ?? '', now: MORNING });
    expect((await draftOf(scope))?.plan).toEqual(OTHER);
  });

  it('is the one in force at an instant when last week’s is asked for', async () => {
    const { scope } = await aClass(opened());
    expect(await planInForceAt(opened(), scope, evening(FRIDAY))).toBeNull();
    for (const [plan, now] of [
      [PLAN, MORNING],
      [OTHER, evening(FRIDAY, 1)],
    ] as const) {
      await saveDraftPlan(opened(), scope, { plan, now });
      await activatePlan(opened(), scope, now);
    }
    expect((await planInForceAt(opened(), scope, evening(FRIDAY)))?.plan).toEqual(PLAN);
    expect((await planInForceAt(opened(), scope, evening(FRIDAY, 1)))?.plan).toEqual(OTHER);
  });
}

/** A mixed part, from the plan to its score. */
export function mixedPartSuite(opened: () => Store) {
  it('is kept in the plan and in the evening, and scored under a blueprint of its own', async () => {
    const classroom = await aClass(opened());
    await saveDraftPlan(opened(), classroom.scope, { plan: MIXED, now: MORNING });
    await activatePlan(opened(), classroom.scope, MORNING);
    const stored = await getActivePlan(opened(), classroom.schoolClass.id);
    expect(stored?.plan).toEqual(MIXED);
    const { view, scope } = await anEvening(
      opened(),
      classroom,
      await aFamily(opened(), classroom),
    );
    expect(view.drill.parts[0]).toMatchObject({ rung: 'doubles.to10', also: ['halves.to10'] });
    await markPart(opened(), scope, { part: 0, missed: [2], now: evening(MONDAY, 5) });
    const [score] = (await readTable(opened(), 'part_score')).filter(
      (row) => row.evening_id === view.id,
    );
    expect(score).toMatchObject({
      blueprint: 'doubles.to10+halves.to10|6',
      strand: 'doubles',
      right: 5,
      asked: 6,
    });
  });
}
