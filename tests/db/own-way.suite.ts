import { expect, it } from 'vitest';
import {
  getAdjustment,
  previewDrill,
  readWeek,
  type Store,
  setAdjustment,
} from '../../db/index.ts';
import { type Adjustment, summariseWeek, UNADJUSTED } from '../../drills/index.ts';
import { codeOf } from '../support/code-of.ts';
import { aClass, aFamily, aTeacher, type Classroom } from '../support/people.ts';
import { anEvening, aPlan, markPart } from '../support/practice.ts';
import { runSql } from '../support/raw-rows.ts';
import { recompose } from '../support/recompose.ts';
import { evening, MONDAY, MORNING, PLAN, TUESDAY } from '../support/term.ts';

function setting(opened: () => Store) {
  return ({ scope }: Pick<Classroom, 'scope'>, number: number, change: Partial<Adjustment>) =>
    setAdjustment(opened(), scope, { number, change, now: MORNING });
}

/** What a teacher changes for one child only. */
export function ownWaySuite(opened: () => Store) {
  const set = setting(opened);

  it('a child’s evenings are as the class’s until something is set; what is not named stays', async () => {
    const classroom = await aClass(opened());
    const { child } = await aFamily(opened(), classroom);
    const read = async () =>
      (await getAdjustment(opened(), classroom.scope, child.number)).adjustment;
    expect(await read()).toEqual(UNADJUSTED);
    await set(classroom, child.number, { steps: 1 });
    await set(classroom, child.number, { fewer: true });
    await set(classroom, child.number, { fewer: true });
    expect(await read()).toEqual({ steps: 1, fewer: true, untimed: false });
    await set(classroom, child.number, { steps: 0 });
    expect(await read()).toEqual({ steps: 0, fewer: true, untimed: false });
    expect(await codeOf(set(classroom, 99, { steps: 1 }))).toBe('not_found');
  });

  it('a co-teacher sees it and may change it, a teacher of another class may not', async () => {
    const classroom = await aClass(opened());
    const { child } = await aFamily(opened(), classroom);
    const [colleague, stranger] = [await aTeacher(opened()), await aTeacher(opened())];
    const { classId } = classroom.scope;
    await runSql(
      opened(),
      `insert into class_teacher values ('${classId}', '${colleague.id}', 'co', now())`,
    );
    await set(classroom, child.number, { untimed: true });
    const scopeOf = ({ id: teacherId }: typeof colleague) => ({ scope: { classId, teacherId } });
    const { adjustment } = await set(scopeOf(colleague), child.number, { fewer: true });
    expect(adjustment).toEqual({ steps: 0, fewer: true, untimed: true });
    const strange = set(scopeOf(stranger), child.number, { fewer: false });
    expect(await codeOf(strange)).toBe('not_found');
  });

  it('counts from the next evening on, for this child only, and the sent one stays', async () => {
    const classroom = await aClass(opened());
    const wren = await aFamily(opened(), classroom);
    const otter = await aFamily(opened(), classroom, { nickname: 'Otter' });
    const sent = await anEvening(opened(), classroom, wren);
    await set(classroom, wren.child.number, { fewer: true, untimed: true });
    expect((await anEvening(opened(), classroom, wren)).view.drill).toEqual(sent.view.drill);
    const next = await anEvening(opened(), classroom, wren, { on: TUESDAY });
    const { drill } = next.view;
    expect(drill.adjusted).toEqual({ steps: 0, fewer: true, untimed: true });
    expect(
      drill.parts.map((part) => (part.kind === 'facts' ? part.cards.length : part.length)),
    ).toEqual([3, 6, 5]);
    const other = await anEvening(opened(), classroom, otter, { on: TUESDAY });
    expect(other.view.drill).not.toHaveProperty('adjusted');
  });

  it('is drawn ahead as it will be, and rebuilt as it was although it has changed since', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const { plan } = await aPlan(opened(), classroom);
    await set(classroom, family.child.number, { steps: 1, fewer: true });
    const wanted = { childId: family.child.id, day: MONDAY, plan };
    const ahead = await previewDrill(opened(), wanted);
    const { view } = await anEvening(opened(), classroom, family);
    expect(view.drill).toEqual(ahead);
    expect(view.drill.parts[0]?.rung).toBe('doubles.to10');
    await set(classroom, family.child.number, { steps: 0, fewer: false });
    const { stored, rebuilt } = await recompose(opened(), family.child.id, MONDAY);
    expect(rebuilt).toEqual(stored);
  });
}

/** What the digest says where a child has steps of its own. */
export function ownStepsSuite(opened: () => Store) {
  const set = setting(opened);

  it('a child with steps of its own is no part of what the digest says of the class’s step', async () => {
    const classroom = await aClass(opened());
    const names = ['Wren', 'Otter', 'Robin', 'Fern'];
    for (const [index, nickname] of names.entries()) {
      const family = await aFamily(opened(), classroom, { nickname });
      if (index === 3) await set(classroom, family.child.number, { steps: 1 });
      const { scope, view } = await anEvening(opened(), classroom, family);
      const [part] = view.drill.parts;
      const cards = part?.kind === 'facts' ? part.cards.length : 0;
      const missed = index === 3 ? Array.from({ length: cards }, (_, card) => card) : [];
      await markPart(opened(), scope, { part: 0, missed, now: evening(MONDAY, 10) });
    }
    const { classId } = classroom.scope;
    const week = await readWeek(opened(), { classId, days: [MONDAY], now: evening(MONDAY, 60) });
    expect(week.children.map(({ evenings }) => evenings[0]?.parts[0]?.own)).toEqual([
      undefined,
      undefined,
      undefined,
      true,
    ]);
    const { rungs } = summariseWeek(week);
    expect(PLAN.parts[0]?.rung).toBe('doubles.to5');
    expect(
      rungs.map(({ rung, children, notYet, next }) => ({ rung, children, notYet, next })),
    ).toEqual([{ rung: 'doubles.to5', children: 3, notYet: 0, next: 'doubles.to10' }]);
  });
}
