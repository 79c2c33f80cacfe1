import { describe, expect, it } from 'vitest';
import {
  bringBackDaily,
  declineEvening,
  eraseChild,
  getEvening,
  leaveAll,
  listPaceStands,
  moveChild,
  pauseDrills,
  readHeldData,
  readWeek,
  type Store,
  setDrillDay,
  setKeptDaily,
} from '../../db/index.ts';
import { addDays, type SchoolDay, silentRun } from '../../drills/index.ts';
import {
  dueDays,
  LATER_MONDAY,
  NEXT_MONDAY,
  paceOf,
  review,
  settleTelling,
  silence,
  tellings,
  WEEK,
} from '../support/paces.ts';
import { aClass, aFamily, aHelper, aSecondClass, aSlip } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, TUESDAY } from '../support/term.ts';

/** What silence does to a pace, and who is told. Runs on the store that pace.test.ts opens. */
export function paceReviewSuite(opened: () => Store): void {
  describe('and its review', () => reviews(opened));
  describe('of a child that moves', () => moving(opened));
  describe('as a teacher sees and changes it', () => teachers(opened));
  describe('in a digest', () => digests(opened));
  describe('and whoever leaves', () => leaving(opened));
}

function reviews(opened: () => Store) {
  it('two silent weeks are told to the teacher once, in the afternoon, and three days later three evenings come', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    await silence(store, classroom, family);
    // Two processes look at the same moment.
    const looks = [1, 2].map(() => review(store, classroom, LATER_MONDAY));
    expect((await Promise.all(looks)).sort()).toEqual([0, 1]);
    expect(await review(store, classroom, LATER_MONDAY)).toBe(0);
    const [telling] = await tellings(store, classroom);
    expect(telling).toMatchObject({ recipient_kind: 'teacher', day: LATER_MONDAY });
    expect(Date.parse(String(telling?.not_before))).toBe(Date.parse(`${LATER_MONDAY}T13:00:00Z`));
    await settleTelling(store, classroom, 'sent');
    expect(await dueDays(store, classroom, family.child.id, LATER_MONDAY)).toHaveLength(5);
    expect(await review(store, classroom, addDays(LATER_MONDAY, 3))).toBe(0);
    expect(await paceOf(store, family.helper.id)).toMatchObject({ rate: 'three' });
    const next = addDays(LATER_MONDAY, 7);
    expect(await dueDays(store, classroom, family.child.id, next)).toEqual([
      next,
      addDays(next, 2),
      addDays(next, 4),
    ]);
  });

  it('nothing steps down while the message to the teacher did not arrive: it is sent again', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    await silence(store, classroom, family);
    await review(store, classroom, LATER_MONDAY);
    await settleTelling(store, classroom, 'failed');
    expect(await review(store, classroom, addDays(LATER_MONDAY, 3))).toBe(1);
    expect(await paceOf(store, family.helper.id)).toMatchObject({ rate: 'daily' });
  });

  it('an answer before then leaves everything as it was', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    await silence(store, classroom, family);
    await review(store, classroom, LATER_MONDAY);
    await settleTelling(store, classroom, 'sent');
    const { scope } = await anEvening(store, classroom, family, { on: LATER_MONDAY });
    await declineEvening(store, scope, evening(LATER_MONDAY, 5));
    await review(store, classroom, addDays(LATER_MONDAY, 3));
    expect(await paceOf(store, family.helper.id)).toMatchObject({ rate: 'daily', announced: null });
  });

  it('one tap on an evening brings every school day back, for that child alone', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    await silence(store, classroom, family);
    await review(store, classroom, LATER_MONDAY);
    await settleTelling(store, classroom, 'sent');
    const thursday = addDays(LATER_MONDAY, 3);
    await review(store, classroom, thursday);
    const { view, scope } = await anEvening(store, classroom, family, { on: thursday });
    expect(view.fewer).toBe('three');
    await bringBackDaily(store, scope, evening(thursday, 5));
    expect(await getEvening(store, scope)).not.toHaveProperty('fewer');
    expect(await dueDays(store, classroom, family.child.id, addDays(LATER_MONDAY, 7))).toHaveLength(
      5,
    );
  });
}

function moving(opened: () => Store) {
  it('a child that moves to another class is announced to that class’s teachers before anything changes', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    const other = await aSecondClass(store, classroom);
    await silence(store, classroom, family);
    await review(store, classroom, LATER_MONDAY);
    await settleTelling(store, classroom, 'sent');
    const now = evening(LATER_MONDAY);
    await moveChild(store, classroom.scope, { number: 1, toClassId: other.schoolClass.id, now });
    expect(await review(store, other, addDays(LATER_MONDAY, 3))).toBe(1);
    expect(await paceOf(store, family.helper.id)).toMatchObject({
      rate: 'daily',
      announced: { on: addDays(LATER_MONDAY, 3) },
    });
  });
}

function teachers(opened: () => Store) {
  it('a class lists who does not have it every school day, and a teacher keeps it daily and lets it go', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const silent = await aFamily(store, classroom);
    const paused = await aFamily(store, classroom, { nickname: 'Otter' });
    await aFamily(store, classroom, { nickname: 'Robin' });
    await silence(store, classroom, silent);
    await review(store, classroom, LATER_MONDAY);
    await settleTelling(store, classroom, 'sent');
    const now = evening(LATER_MONDAY);
    const until = addDays(LATER_MONDAY, 4);
    await pauseDrills(store, { helperId: paused.helper.id, now, until });
    const stands = async () =>
      (await listPaceStands(store, classroom.scope, now)).map(({ nickname, stand }) => [
        nickname,
        stand.kind,
      ]);
    expect(await stands()).toEqual([
      ['Wren', 'announced'],
      ['Otter', 'paused'],
    ]);
    const keep = (on: boolean) => setKeptDaily(store, classroom.scope, { number: 1, on, now });
    await keep(true);
    const once = await dumpAll(store);
    await keep(true);
    expect(await dumpAll(store)).toEqual(once);
    expect((await stands())[0]).toEqual(['Wren', 'kept']);
    await review(store, classroom, addDays(LATER_MONDAY, 3));
    expect(await paceOf(store, silent.helper.id)).toMatchObject({ rate: 'daily', kept: true });
    await keep(false);
    expect((await stands())[0]).toEqual(['Wren', 'announced']);
  });
}

function digests(opened: () => Store) {
  it('a family that paused is not called silent, and a past week’s digest stays what it was', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { id: classId } = classroom.schoolClass;
    const family = await aFamily(store, classroom);
    await silence(store, classroom, family, { count: 5 });
    await pauseDrills(store, {
      ...{ helperId: family.helper.id, now: evening(NEXT_MONDAY, -60) },
      until: LATER_MONDAY,
    });
    const read = async (days: readonly SchoolDay[], now: Date) => {
      const [child] = (await readWeek(store, { classId, days, now })).children;
      return { silentRun: child?.silentRun, pace: child?.pace, evenings: child?.evenings.length };
    };
    const nextWeek = WEEK.map((day) => addDays(day, 7));
    const friday = evening(addDays(FRIDAY, 7), 60);
    expect(await read(nextWeek, friday)).toEqual({
      silentRun: 0,
      pace: { kind: 'paused', until: LATER_MONDAY },
      evenings: 0,
    });
    expect(await read(WEEK, friday)).toEqual({ silentRun: 5, pace: undefined, evenings: 5 });
    expect(silentRun([{ status: 'silent' }])).toBe(1);
  });
}

function leaving(opened: () => Store) {
  it('a family that joins anew starts afresh; a second helper changes nothing', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { helper, child, code } = await aFamily(store, classroom);
    const word = { helperId: helper.id, now: evening(MONDAY, -60) };
    await pauseDrills(store, { ...word, until: FRIDAY });
    const second = await aHelper(store, code);
    expect(await paceOf(store, second.id)).toMatchObject({ pausedUntil: FRIDAY });
    await leaveAll(store, word);
    await leaveAll(store, { helperId: second.id, now: word.now });
    const again = await aHelper(store, await aSlip(store, classroom, child.id), helper.chatId);
    expect(await paceOf(store, again.id)).toMatchObject({ pausedUntil: null, rate: 'daily' });
  });

  it('what was said is in the family’s copy of its data, and is erased with the child', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { helper, child } = await aFamily(store, classroom);
    const word = { helperId: helper.id, now: evening(MONDAY, -60) };
    await pauseDrills(store, { ...word, until: FRIDAY });
    await setDrillDay(store, { ...word, weekday: 1, on: false });
    const held = await readHeldData(store, { ...word, childId: child.id });
    expect(held.child.pace).toMatchObject([
      { day: MONDAY, rate: 'daily', pausedUntil: FRIDAY, weekdays: null },
      { day: MONDAY, rate: 'daily', pausedUntil: FRIDAY, weekdays: [2, 3, 4, 5] },
    ]);
    await eraseChild(store, { childId: child.id, now: evening(TUESDAY) });
    const left = (await readTable(store, 'pace')).filter((row) => row.child_id === child.id);
    expect(left).toEqual([]);
  });
}
