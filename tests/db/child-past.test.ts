import { describe, expect, it } from 'vitest';
import {
  acceptProposal,
  addBreak,
  closePart,
  createClass,
  declineEvening,
  getActivePlan,
  getPlans,
  moveChild,
  readChildPast,
  readWeek,
  type Store,
  saveDraftPlan,
  undoAct,
} from '../../db/index.ts';
import {
  addDays,
  reportChild,
  type SchoolDay,
  summariseWeek,
  type WeekPlan,
} from '../../drills/index.ts';
import { codeOf } from '../support/code-of.ts';
import { settleEvening } from '../support/deliveries.ts';
import {
  aChild,
  aClass,
  aFamily,
  aSecondClass,
  type Classroom,
  type Family,
  SETTINGS,
} from '../support/people.ts';
import { anEvening, aPlan, markPart } from '../support/practice.ts';
import { type RawRow, readTable } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { evening, FRIDAY, MONDAY, MORNING, PLAN, TUESDAY, WEDNESDAY } from '../support/term.ts';

const LONG_AGO = addDays(MONDAY, -70);
const FRIDAY_NIGHT = evening(FRIDAY, 240);

describe.each(dearBackends)('on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('a child’s past', () => pastSuite(opened));
  describe('a moved child’s past', () => movedSuite(opened));
  describe('how far back a child’s past goes', () => spanSuite(opened));
  describe('an accepted proposal', () => proposalSuite(opened));
});

/** An evening of three parts with a card missed in the first, six numbers said, and two pages. */
async function live(store: Store, classroom: Classroom, family: Family, on: SchoolDay) {
  const { scope, view } = await anEvening(store, classroom, family, { on });
  await settleEvening(store, view.id, 'sent', evening(on));
  const now = evening(on, 15);
  await markPart(store, scope, { part: 0, missed: [1], now });
  await closePart(store, scope, { part: 1, verdict: { kind: 'said', said: 6 }, now });
}

function readerOf(opened: () => Store) {
  return (classroom: Classroom, { child: { number } }: Family, weeks: number | null = 6) =>
    readChildPast(opened(), classroom.scope, { number, weeks, now: FRIDAY_NIGHT });
}

function movedSuite(opened: () => Store) {
  const read = readerOf(opened);

  it('goes along when the child moves, and both classes’ weeks can be read', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const wren = await aFamily(store, classroom);
    const otter = await aFamily(store, classroom, { nickname: 'Otter' });
    for (const family of [wren, otter]) await live(store, classroom, family, MONDAY);
    const { teacherId } = classroom.scope;
    const settings = { ...SETTINGS, title: 'Heron class' };
    const { id: toClassId } = await createClass(store, { teacherId, settings, now: MORNING });
    const { number } = wren.child;
    await moveChild(store, classroom.scope, { number, toClassId, now: evening(TUESDAY) });
    const weekOf = async (classId: string) => {
      const week = await readWeek(store, { classId, days: [MONDAY, TUESDAY], now: FRIDAY_NIGHT });
      return summariseWeek(week);
    };
    const [old, fresh] = [await weekOf(classroom.scope.classId), await weekOf(toClassId)];
    expect(old.children.map(({ nickname }) => nickname)).toEqual(['Otter']);
    expect(fresh.children.map(({ nickname }) => nickname)).toEqual(['Wren']);
    expect(fresh.strands.map(({ asked }) => asked)).toEqual(old.strands.map(({ asked }) => asked));
    const moved = { teacherId, classId: toClassId };
    const { past } = await readChildPast(store, moved, { number: 1, weeks: 6, now: FRIDAY_NIGHT });
    expect(past.evenings.map(({ day }) => day)).toEqual([MONDAY]);
    expect(await codeOf(read(classroom, wren))).toBe('not_found');
  });

  it('brings no step of the class it left into the digest of the class it came to', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const wren = await aFamily(store, classroom);
    await live(store, classroom, wren, MONDAY);
    const to = await aSecondClass(store, classroom);
    const plan = { parts: [{ rung: 'doubles.to10', cards: 5, seconds: 3 }] } as const;
    await aPlan(store, to, plan);
    const { scope } = await anEvening(store, to, await aFamily(store, to, { nickname: 'Otter' }));
    await markPart(store, scope, { part: 0, missed: [1], now: evening(MONDAY, 15) });
    const { number } = wren.child;
    const toClassId = to.scope.classId;
    await moveChild(store, classroom.scope, { number, toClassId, now: evening(TUESDAY) });
    const wanted = { classId: toClassId, days: [MONDAY, TUESDAY], now: FRIDAY_NIGHT };
    const { rungs } = summariseWeek(await readWeek(store, wanted));
    expect(rungs.map(({ rung }) => rung)).toEqual(['doubles.to10']);
  });
}

function pastSuite(opened: () => Store) {
  const read = readerOf(opened);

  it('holds the child’s own evenings, scores and memory, and nothing of another child', async () => {
    const classroom = await aClass(opened());
    const wren = await aFamily(opened(), classroom);
    const otter = await aFamily(opened(), classroom, { nickname: 'Otter' });
    for (const on of [MONDAY, TUESDAY]) await live(opened(), classroom, wren, on);
    await live(opened(), classroom, otter, MONDAY);
    const { scope } = await anEvening(opened(), classroom, wren, { on: WEDNESDAY });
    await declineEvening(opened(), scope, evening(WEDNESDAY, 10));
    const { child, past, heard } = await read(classroom, wren);
    expect(child.nickname).toBe('Wren');
    expect(heard).toBe(WEDNESDAY);
    expect(past.evenings.map(({ day, status }) => [day, status])).toEqual([
      [MONDAY, 'practised'],
      [TUESDAY, 'practised'],
      [WEDNESDAY, 'not_today'],
    ]);
    const marks = await ownMarks(opened(), wren.child.id);
    const asked = reportChild(past).strands.find(({ strand }) => strand === 'doubles');
    expect(asked).toMatchObject({
      right: marks.filter((mark) => mark.right === true).length,
      asked: marks.length,
    });
    const known = [...past.memory].filter(([, { asked: often }]) => often > 0);
    const steps = known.filter(([fact]) => fact.startsWith('next:'));
    expect(new Set(known.map(([fact]) => fact))).toEqual(
      new Set([...marks.map(({ fact }) => fact), ...steps.map(([fact]) => fact)]),
    );
  });

  it('counts school days from the first evening on, breaks left out, and today only when it is practised', async () => {
    const classroom = await aClass(opened());
    const wren = await aFamily(opened(), classroom);
    await live(opened(), classroom, wren, TUESDAY);
    expect((await read(classroom, wren)).past.days).toHaveLength(3);
    await addBreak(opened(), classroom.scope, {
      break: { first: WEDNESDAY, last: WEDNESDAY },
      title: 'Fair',
      now: MORNING,
    });
    expect((await read(classroom, wren)).past.days).toHaveLength(2);
    await live(opened(), classroom, wren, FRIDAY);
    expect(reportChild((await read(classroom, wren)).past)).toMatchObject({
      practised: 2,
      schoolDays: 3,
      last: FRIDAY,
    });
  });
}

function spanSuite(opened: () => Store) {
  const read = readerOf(opened);

  it('goes back as many weeks as asked for, or to the first evening', async () => {
    const classroom = await aClass(opened());
    const wren = await aFamily(opened(), classroom);
    for (const on of [LONG_AGO, MONDAY]) await live(opened(), classroom, wren, on);
    const days = async (weeks: number | null) =>
      (await read(classroom, wren, weeks)).past.evenings.map(({ day }) => day);
    expect(await days(6)).toEqual([MONDAY]);
    expect(await days(12)).toEqual([LONG_AGO, MONDAY]);
    expect(await days(null)).toEqual([LONG_AGO, MONDAY]);
  });

  it('of a child without an evening is empty', async () => {
    const classroom = await aClass(opened());
    const { number } = await aChild(opened(), classroom, 'Sorrel');
    const { past, heard } = await readChildPast(opened(), classroom.scope, {
      number,
      weeks: null,
      now: FRIDAY_NIGHT,
    });
    expect([past.days, past.evenings, past.memory.size, heard]).toEqual([[], [], 0, null]);
  });

  it('pages nobody spoke of are unknown', async () => {
    const classroom = await aClass(opened());
    const wren = await aFamily(opened(), classroom);
    await live(opened(), classroom, wren, MONDAY);
    expect((await read(classroom, wren)).past.evenings[0]?.pages).toBeNull();
  });

  it('a number that no child of the class has is not found', async () => {
    const classroom = await aClass(opened());
    const reading = readChildPast(opened(), classroom.scope, {
      number: 9,
      weeks: 6,
      now: FRIDAY_NIGHT,
    });
    expect(await codeOf(reading)).toBe('not_found');
  });
}

async function ownMarks(store: Store, childId: string): Promise<RawRow[]> {
  return (await readTable(store, 'mark')).filter((row) => row.child_id === childId);
}

function proposalSuite(opened: () => Store) {
  const HARDER: WeekPlan = { parts: [{ rung: 'doubles.to10', cards: 8, seconds: 3 }] };

  async function inUse() {
    const classroom = await aClass(opened());
    const { id: madeFrom } = await aPlan(opened(), classroom);
    const accept = (plan = HARDER) =>
      acceptProposal(opened(), classroom.scope, { plan, madeFrom, now: evening(MONDAY) });
    const active = () => getActivePlan(opened(), classroom.scope.classId);
    return { classroom, madeFrom, accept, active };
  }

  it('is in use from then on, is known as a proposal, and leaves the draft as it is', async () => {
    const { classroom, madeFrom, accept, active } = await inUse();
    await saveDraftPlan(opened(), classroom.scope, { plan: PLAN, now: MORNING });
    await accept();
    expect(await active()).toMatchObject({ plan: HARDER, since: evening(MONDAY) });
    expect((await getPlans(opened(), classroom.scope)).draft?.plan).toEqual(PLAN);
    const rows = await readTable(opened(), 'week_plan');
    const own = rows.filter((row) => row.class_id === classroom.scope.classId);
    expect(own.find((row) => row.id === madeFrom)?.status).toBe('past');
    expect(own.find((row) => row.status === 'active')?.source).toBe('proposal');
  });

  it('a second tap, or one of a co-teacher, is a conflict and changes nothing', async () => {
    const { accept, active } = await inUse();
    await accept();
    const before = await active();
    expect(await codeOf(accept())).toBe('conflict');
    expect(await active()).toEqual(before);
  });

  it('a faulty plan is refused and the old one stays', async () => {
    const { accept, active } = await inUse();
    const before = await active();
    expect(await codeOf(accept({ parts: [] }))).toBe('invalid');
    expect(await active()).toEqual(before);
  });

  it('taken back, the plan before it is in force as if it had never been away', async () => {
    const { classroom, accept, active } = await inUse();
    const before = await active();
    const { teacherId } = classroom.scope;
    const actId = await accept();
    await undoAct(opened(), { teacherId, actId, now: evening(MONDAY, 5) });
    expect(await active()).toEqual(before);
  });

  it('cannot be taken back once another plan was put in use', async () => {
    const { classroom, accept, active } = await inUse();
    const { teacherId } = classroom.scope;
    const actId = await accept();
    const { id: madeFrom = '' } = (await active()) ?? {};
    const now = evening(MONDAY, 5);
    await acceptProposal(opened(), classroom.scope, { plan: PLAN, madeFrom, now });
    const after = await active();
    expect(await codeOf(undoAct(opened(), { teacherId, actId, now }))).toBe('conflict');
    expect(await active()).toEqual(after);
  });
}
