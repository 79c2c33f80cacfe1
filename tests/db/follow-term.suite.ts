import { expect, it } from 'vitest';
import {
  activatePlan,
  addBreak,
  followTerm,
  getActivePlan,
  getPlans,
  loadDraft,
  removeBreak,
  retireScheme,
  type Store,
  saveDraftPlan,
  saveSchemeWeek,
  startScheme,
} from '../../db/index.ts';
import { addDays, type SchoolDay } from '../../drills/index.ts';

import { aClass, aFamily } from '../support/people.ts';
import { anEvening, aPlan } from '../support/practice.ts';
import { readTable } from '../support/raw-rows.ts';
import { day, evening, FRIDAY, MONDAY, MORNING, PLAN, TUESDAY } from '../support/term.ts';
import { aTerm, inForce, WEEKS } from './a-term.ts';

const nextMonday = addDays(MONDAY, 7);
/** Five in the morning, in the class's zone. */
const early = (on: SchoolDay) => new Date(`${on}T03:00:00Z`);

/** The plan of a term’s week, by the calendar alone. */
export function followTermSuite(opened: () => Store) {
  it('is put in force on its Monday, once, from two looks at the same time', async () => {
    const { classroom } = await aTerm(opened());
    const look = (on: SchoolDay) => followTerm(opened(), classroom.schoolClass, early(on));
    expect(await look(TUESDAY)).toBe(1);
    expect((await Promise.all([look(nextMonday), look(nextMonday)])).toSorted()).toEqual([2, null]);
    expect(await inForce(opened(), classroom)).toEqual(['scheme', 'doubles.to10']);
    const plans = (await readTable(opened(), 'week_plan')).filter(
      ({ class_id }) => class_id === classroom.schoolClass.id,
    );
    expect(plans.map(({ status }) => status).toSorted()).toEqual(['active', 'past']);
  });

  it('counts from the beginning of the week, so that a look that comes late still sends tonight', async () => {
    const { classroom } = await aTerm(opened());
    await followTerm(opened(), classroom.schoolClass, evening(nextMonday, 30));
    const active = await getActivePlan(opened(), classroom.schoolClass.id);
    expect(active?.since).toEqual(new Date('2026-09-20T22:00:00Z'));
  });

  it('is left out over the weekend, before the term and after its end', async () => {
    const { classroom } = await aTerm(opened(), nextMonday);
    const look = (at: Date) => followTerm(opened(), classroom.schoolClass, at);
    expect(await look(evening(FRIDAY))).toBeNull();
    expect(await look(early(addDays(FRIDAY, 2)))).toBeNull();
    expect(await look(early(nextMonday))).toBe(1);
    expect(await look(early(addDays(nextMonday, 28)))).toBeNull();
    expect(await inForce(opened(), classroom)).toEqual(['scheme', 'bonds.to10']);
  });

  it('gives way to a plan that the teacher chose for the week, and comes back the week after', async () => {
    const { classroom, scope } = await aTerm(opened());
    const look = (at: Date) => followTerm(opened(), classroom.schoolClass, at);
    await look(MORNING);
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: evening(FRIDAY, 1) });
    await activatePlan(opened(), scope, evening(FRIDAY, 1));
    expect(await look(evening(FRIDAY, 5))).toBeNull();
    expect(await look(early(nextMonday))).toBeNull();
    expect(await inForce(opened(), classroom)).toEqual(['teacher', 'doubles.to5']);
    expect(await look(early(addDays(nextMonday, 7)))).toBe(3);
  });

  it('gives way to a plan chosen in the holidays before the term, however long they are', async () => {
    const { classroom, scope } = await aTerm(opened(), nextMonday);
    const holidays = { first: MONDAY, last: FRIDAY };
    await addBreak(opened(), scope, { break: holidays, title: 'Holidays', now: MORNING });
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: early(TUESDAY) });
    await activatePlan(opened(), scope, early(TUESDAY));
    expect(await followTerm(opened(), classroom.schoolClass, early(nextMonday))).toBeNull();
    expect(await inForce(opened(), classroom)).toEqual(['teacher', 'doubles.to5']);
  });

  it('takes the place of a plan from before the last evening of the week before, or from before the term', async () => {
    const { classroom, scope } = await aTerm(opened());
    const look = (at: Date) => followTerm(opened(), classroom.schoolClass, at);
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: evening(FRIDAY, -1) });
    await activatePlan(opened(), scope, evening(FRIDAY, -1));
    expect(await look(early(nextMonday))).toBe(2);
    const older = await aClass(opened());
    await aPlan(opened(), older);
    const later = new Date(MORNING.getTime() + 1);
    const wish = { firstDay: MONDAY, weeks: WEEKS, instead: null, now: later };
    await startScheme(opened(), older.scope, wish);
    expect(await followTerm(opened(), older.schoolClass, later)).toBe(1);
    expect((await getActivePlan(opened(), older.schoolClass.id))?.since).toEqual(later);
  });
}

/** The plan of a term’s week, when the term, a break or the teacher moves. */
export function movedTermSuite(opened: () => Store) {
  it('follows a break that is added and removed, within the same week too', async () => {
    const { classroom, scope } = await aTerm(opened());
    const look = (at: Date) => followTerm(opened(), classroom.schoolClass, at);
    await look(MORNING);
    const { id: breakId } = await addBreak(opened(), scope, {
      break: { first: nextMonday, last: addDays(nextMonday, 4) },
      title: 'Half term',
      now: MORNING,
    });
    expect(await look(early(nextMonday))).toBeNull();
    expect(await look(early(addDays(nextMonday, 7)))).toBe(2);
    await removeBreak(opened(), scope, { breakId, now: evening(addDays(nextMonday, 7)) });
    expect(await look(evening(addDays(nextMonday, 8)))).toBe(3);
    const active = await getActivePlan(opened(), classroom.schoolClass.id);
    expect(active?.since).toEqual(evening(addDays(nextMonday, 8)));
  });

  it('follows an edit of the week from then on, and alters no evening that was sent', async () => {
    const { classroom, scope } = await aTerm(opened());
    const look = (at: Date) => followTerm(opened(), classroom.schoolClass, at);
    await look(MORNING);
    const family = await aFamily(opened(), classroom);
    const sent = await anEvening(opened(), classroom, family);
    const now = evening(MONDAY, 5);
    await saveSchemeWeek(opened(), scope, { week: 1, plan: PLAN, now });
    expect(await look(now)).toBe(1);
    expect((await getActivePlan(opened(), classroom.schoolClass.id))?.since).toEqual(now);
    expect(sent.view.drill.parts.map(({ rung }) => rung)).toEqual(['bonds.to10']);
    const next = await anEvening(opened(), classroom, family, { on: TUESDAY });
    expect(next.view.drill.parts.map(({ rung }) => rung)).toEqual(
      PLAN.parts.map(({ rung }) => rung),
    );
  });

  it('gives way to another week’s plan that the teacher took from the term and uses, until the term is changed', async () => {
    const { classroom, scope } = await aTerm(opened());
    const look = (minutes: number) =>
      followTerm(opened(), classroom.schoolClass, evening(nextMonday, minutes));
    const [first = PLAN] = WEEKS;
    await loadDraft(opened(), scope, { plan: first, source: 'scheme', now: MORNING });
    expect(await look(-60)).toBe(2);
    await activatePlan(opened(), scope, evening(nextMonday, -30));
    expect(await look(-20)).toBeNull();
    expect(await inForce(opened(), classroom)).toEqual(['scheme', 'bonds.to10']);
    await saveSchemeWeek(opened(), scope, { week: 2, plan: PLAN, now: evening(nextMonday, -10) });
    expect(await look(0)).toBe(2);
    expect(await inForce(opened(), classroom)).toEqual(['scheme', 'doubles.to5']);
  });

  it('leaves the teacher’s draft alone', async () => {
    const { classroom, scope } = await aTerm(opened());
    await saveDraftPlan(opened(), scope, { plan: PLAN, now: MORNING });
    await followTerm(opened(), classroom.schoolClass, MORNING);
    expect((await getPlans(opened(), scope)).draft?.plan).toEqual(PLAN);
  });

  it('is none of a term that was ended, nor of a class without one', async () => {
    const { classroom, scope } = await aTerm(opened());
    await retireScheme(opened(), scope, MORNING);
    const bare = await aClass(opened());
    for (const { schoolClass } of [classroom, bare]) {
      expect(await followTerm(opened(), schoolClass, early(day('2026-09-15')))).toBeNull();
    }
  });
}
