import { expect, it } from 'vitest';
import {
  acceptSlip,
  getDisplay,
  getSiblingAge,
  isQuiet,
  leaveAll,
  moveChild,
  readTie,
  type Store,
  setDisplay,
  setEveningTime,
  setRelation,
  setSiblingAge,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { AGREEMENT, aClass, aFamily, aSecondClass } from '../support/people.ts';
import { evening, MONDAY, MORNING, time } from '../support/term.ts';

/** Switches, who a helper is to a child, and from which age on brothers and sisters help. */
export function displaySuite(opened: () => Store): void {
  switchSuite(opened);
  tieSuite(opened);
}

function switchSuite(opened: () => Store) {
  it('is one helper’s own: another helper of the same child keeps theirs', async () => {
    const store = opened();
    const { helpers } = await aFamily(store, await aClass(store), { helpers: 2 });
    const [one, other] = helpers;
    if (!one || !other) throw new Error('there are two helpers');
    expect(await getDisplay(store, one.id)).toEqual({
      way: 'clip',
      bigger: false,
      noTiming: false,
      quiet: false,
      clockAid: false,
      monthly: true,
    });
    const changed = await setDisplay(store, {
      helperId: one.id,
      switches: { quiet: true, monthly: false },
    });
    expect(changed).toMatchObject({ quiet: true, monthly: false, bigger: false });
    expect(await getDisplay(store, other.id)).toMatchObject({ quiet: false, monthly: true });
    expect([await isQuiet(store, one.chatId), await isQuiet(store, other.chatId)]).toEqual([
      true,
      false,
    ]);
    expect(await isQuiet(store, 5)).toBe(false);
  });

  it('is not for somebody who has left, nor for nothing at all', async () => {
    const store = opened();
    const { helper } = await aFamily(store, await aClass(store));
    const helperId = helper.id;
    expect(await codeOf(setDisplay(store, { helperId, switches: {} }))).toBe('invalid');
    await leaveAll(store, { helperId, now: MORNING });
    const late = setDisplay(store, { helperId, switches: { bigger: true } });
    expect(await codeOf(late)).toBe('not_found');
    expect(await getDisplay(store, helperId)).toMatchObject({ bigger: false });
  });
}

function tieSuite(opened: () => Store) {
  it('keeps who a helper is to a child for that child alone, and forgets it when the helper joins anew', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { helper, child, code } = await aFamily(store, classroom);
    const otter = await aFamily(store, classroom, { nickname: 'Otter' });
    const scope = { helperId: helper.id, childId: child.id };
    expect(await readTie(store, scope)).toMatchObject({ relation: null, siblingAge: 12 });
    await setRelation(store, { ...scope, relation: 'sibling' });
    expect(await readTie(store, scope)).toMatchObject({ relation: 'sibling', helpers: 1 });
    expect(await refusalOf(setRelation(store, { ...scope, relation: 'aunt' }))).toBe(
      'invalid: relation',
    );
    const notOwn = { helperId: helper.id, childId: otter.child.id };
    expect(await codeOf(setRelation(store, { ...notOwn, relation: 'parent' }))).toBe('not_found');
    expect(await codeOf(readTie(store, notOwn))).toBe('not_found');
    await leaveAll(store, { helperId: helper.id, now: MORNING });
    expect(await codeOf(setRelation(store, { ...scope, relation: 'parent' }))).toBe('not_found');
    await acceptSlip(store, {
      code,
      chatId: helper.chatId,
      agreement: AGREEMENT,
      now: evening(MONDAY),
    });
    expect(await readTie(store, scope)).toMatchObject({ relation: null });
  });

  it('goes along when the child moves to another class: who helps, the family’s time, its switches', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const second = await aSecondClass(store, classroom);
    const { helper, child } = await aFamily(store, classroom);
    const scope = { helperId: helper.id, childId: child.id };
    await setRelation(store, { ...scope, relation: 'parent' });
    await setDisplay(store, { helperId: helper.id, switches: { bigger: true } });
    await setEveningTime(store, { helperId: helper.id, time: time('18:45'), now: MORNING });
    await setSiblingAge(store, second.scope, 14);
    const toClassId = second.schoolClass.id;
    await moveChild(store, classroom.scope, { number: child.number, toClassId, now: MORNING });
    expect(await readTie(store, scope)).toMatchObject({
      relation: 'parent',
      eveningTime: '18:45',
      siblingAge: 14,
      schoolClass: { title: 'Heron class' },
    });
    expect(await getDisplay(store, helper.id)).toMatchObject({ bigger: true });
  });

  it('has the age of helping brothers and sisters from the class’s teacher, out of those that can be chosen', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    const stranger = await aClass(store);
    expect(await getSiblingAge(store, scope)).toBe(12);
    expect(await setSiblingAge(store, scope, 16)).toBe(16);
    expect(await refusalOf(setSiblingAge(store, scope, 7))).toBe('invalid: sibling age');
    const foreign = { teacherId: stranger.teacher.id, classId: scope.classId };
    expect(await codeOf(setSiblingAge(store, foreign, 10))).toBe('not_found');
    expect(await codeOf(getSiblingAge(store, foreign))).toBe('not_found');
    expect(await getSiblingAge(store, scope)).toBe(16);
  });
}
