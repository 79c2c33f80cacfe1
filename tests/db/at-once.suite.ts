import { expect, it } from 'vitest';
import {
  acceptProposal,
  activatePlan,
  followTerm,
  getActivePlan,
  loadDraft,
  planInForceAt,
  type Store,
  saveDraftPlan,
  startScheme,
  type TeacherScope,
  undoAct,
} from '../../db/index.ts';
import { addDays } from '../../drills/index.ts';
import { refusalOf } from '../support/code-of.ts';
import { aClass } from '../support/people.ts';
import { evening, FRIDAY, MONDAY, MORNING, PLAN } from '../support/term.ts';
import { aTerm, plan, WEEKS } from './a-term.ts';

const OTHER = plan('halves.to10');

/** Plans of one class that are changed from two sides at the same moment. */
export function atOnceSuite(opened: () => Store) {
  const inUse = async ({ classId }: TeacherScope) => {
    const active = await getActivePlan(opened(), classId);
    if (!active) throw new Error('no plan is in use');
    return active;
  };
  const load = (scope: TeacherScope, wanted = PLAN) =>
    loadDraft(opened(), scope, { plan: wanted, source: 'teacher', now: MORNING });

  it('two drafts become one, and a plan used while a proposal is accepted is the one in use', async () => {
    const { scope } = await aClass(opened());
    expect(await Promise.all([load(scope), load(scope)])).toEqual([null, null]);
    await activatePlan(opened(), scope, MORNING);
    const madeFrom = (await inUse(scope)).id;
    await load(scope, OTHER);
    const proposal = { plan: plan('bonds.to10'), madeFrom, now: MORNING };
    const [accepted, used] = await Promise.all([
      refusalOf(acceptProposal(opened(), scope, proposal)),
      activatePlan(opened(), scope, MORNING),
    ]);
    expect(['accepted', 'conflict: week plan']).toContain(accepted);
    expect(used.plan).toEqual(OTHER);
    expect((await inUse(scope)).plan).toEqual(OTHER);
  });

  it('the term’s week never takes the place of what the teacher uses in that moment', async () => {
    const { classroom, scope } = await aTerm(opened());
    const monday = new Date(`${addDays(MONDAY, 7)}T03:00:00Z`);
    await followTerm(opened(), classroom.schoolClass, MORNING);
    await load(scope);
    await Promise.all([
      followTerm(opened(), classroom.schoolClass, monday),
      activatePlan(opened(), scope, monday),
    ]);
    expect(await inUse(scope)).toMatchObject({ source: 'teacher', plan: PLAN });
  });

  it('a term is started once', async () => {
    const { scope } = await aClass(opened());
    const wanted = { firstDay: MONDAY, weeks: WEEKS, instead: null, now: MORNING };
    const start = () => startScheme(opened(), scope, wanted);
    const started = await Promise.all([start(), start()]);
    expect(started.filter((act) => act !== null)).toHaveLength(1);
  });

  it('a proposal that was accepted and taken back was in force at no time', async () => {
    const { scope } = await aClass(opened());
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: MORNING });
    await activatePlan(opened(), scope, MORNING);
    const madeFrom = (await inUse(scope)).id;
    const now = evening(MONDAY);
    const actId = await acceptProposal(opened(), scope, { plan: OTHER, madeFrom, now });
    expect((await planInForceAt(opened(), scope, now))?.plan).toEqual(OTHER);
    await undoAct(opened(), { teacherId: scope.teacherId, actId, now });
    expect((await planInForceAt(opened(), scope, evening(FRIDAY)))?.id).toBe(madeFrom);
  });
}
