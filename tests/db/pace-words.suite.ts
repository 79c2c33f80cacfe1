import { describe, expect, it } from 'vitest';
import {
  getEvening,
  listDueChildren,
  oweAgain,
  pauseDrills,
  planEvening,
  readFamilyPaces,
  remindLater,
  type Store,
  setDrillDay,
  setEveryDay,
  startDrillsAgain,
} from '../../db/index.ts';
import { addDays } from '../../drills/index.ts';
import { refusalOf } from '../support/code-of.ts';
import { ledgerOf } from '../support/deliveries.ts';
import { dueDays, WEEK } from '../support/paces.ts';
import { aChild, aClass, aFamily, aHelper, aSlip } from '../support/people.ts';
import { anEvening, eveningInput } from '../support/practice.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, THURSDAY, TUESDAY, time } from '../support/term.ts';

/** What a family says about its pace, and what that does to tonight. Runs on the store that pace.test.ts opens. */
export function paceWordsSuite(opened: () => Store): void {
  describe('as a family says it', () => words(opened));
  describe('of nobody', () => nobody(opened));
  describe('and a pause of tonight', () => tonight(opened));
}

function words(opened: () => Store) {
  it('a pause holds for all children of the helper and for nobody else', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { helper, child } = await aFamily(store, classroom);
    const sibling = await aChild(store, classroom, 'Robin');
    await aHelper(store, await aSlip(store, classroom, sibling.id), helper.chatId);
    const neighbour = await aFamily(store, classroom, { nickname: 'Otter' });
    const word = { helperId: helper.id, now: evening(MONDAY, -60) };
    await pauseDrills(store, { ...word, until: THURSDAY });
    expect(await dueDays(store, classroom, child.id)).toEqual([THURSDAY, FRIDAY]);
    expect(await dueDays(store, classroom, sibling.id)).toEqual([THURSDAY, FRIDAY]);
    expect(await dueDays(store, classroom, neighbour.child.id)).toEqual(WEEK);
    await startDrillsAgain(store, word);
    expect(await dueDays(store, classroom, child.id)).toEqual(WEEK);
    // What was is kept: a pause and its end are two rows.
    const rows = (await readTable(store, 'pace')).filter((row) => row.child_id === child.id);
    expect(rows.map(({ paused_until }) => paused_until).sort()).toEqual([THURSDAY, null]);
  });

  it('the same word twice is stored once, and a pause that cannot be is refused whole', async () => {
    const store = opened();
    const { helper } = await aFamily(store, await aClass(store));
    const word = { helperId: helper.id, now: evening(MONDAY, -60) };
    await pauseDrills(store, { ...word, until: THURSDAY });
    const before = await dumpAll(store);
    await pauseDrills(store, { ...word, until: THURSDAY });
    for (const until of [MONDAY, addDays(MONDAY, 121)]) {
      expect(await refusalOf(pauseDrills(store, { ...word, until }))).toBe('invalid: pause');
    }
    expect(await dumpAll(store)).toEqual(before);
  });

  it('chosen days are the days on which it is due; the last one stays', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { helper, child } = await aFamily(store, classroom);
    const word = { helperId: helper.id, now: evening(MONDAY, -60) };
    for (const weekday of [1, 2, 3] as const) {
      await setDrillDay(store, { ...word, weekday, on: false });
    }
    expect(await dueDays(store, classroom, child.id)).toEqual([THURSDAY, FRIDAY]);
    await setDrillDay(store, { ...word, weekday: 4, on: false });
    const last = setDrillDay(store, { ...word, weekday: 5, on: false });
    expect(await refusalOf(last)).toBe('invalid: drill days');
    expect(await dueDays(store, classroom, child.id)).toEqual([FRIDAY]);
    await setEveryDay(store, word);
    expect(await dueDays(store, classroom, child.id)).toEqual(WEEK);
  });

  it('what is said after tonight’s time counts from the next evening', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { helper, child } = await aFamily(store, classroom);
    await setDrillDay(store, {
      ...{ helperId: helper.id, now: evening(MONDAY, 5) },
      ...{ weekday: 3, on: false },
    });
    const wanted = { classId: classroom.schoolClass.id, after: null, until: time('17:30') };
    const [due] = await listDueChildren(store, { ...wanted, day: MONDAY });
    expect(due).toMatchObject({ id: child.id, since: evening(MONDAY, 5) });
  });
}

function nobody(opened: () => Store) {
  it('somebody who helps nobody says nothing', async () => {
    const store = opened();
    const { teacher } = await aClass(store);
    const word = { helperId: teacher.id, now: evening(MONDAY) };
    const before = await dumpAll(store);
    expect(await readFamilyPaces(store, word)).toEqual([]);
    expect(await refusalOf(setEveryDay(store, word))).toBe('not_found: child');
    expect(await refusalOf(pauseDrills(store, { ...word, until: FRIDAY }))).toBe(
      'not_found: child',
    );
    expect(await dumpAll(store)).toEqual(before);
  });
}

function tonight(opened: () => Store) {
  it('calls off what is waiting and the reminder; the drill goes out after all when it ends in time', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom, { helpers: 2 });
    const { view, scope } = await anEvening(store, classroom, family);
    await remindLater(store, scope, { at: evening(MONDAY, 30), now: evening(MONDAY) });
    const states = async () => (await ledgerOf(store, view.id)).map(({ status }) => status);
    const word = { helperId: family.helper.id, now: evening(MONDAY, 1) };
    await pauseDrills(store, { ...word, until: FRIDAY });
    expect(await states()).toEqual(['failed', 'failed']);
    expect((await getEvening(store, scope)).remindAt).toBeNull();
    await startDrillsAgain(store, { ...word, now: evening(MONDAY, 2) });
    expect(await states()).toEqual(['planned', 'planned']);
  });

  it('leaves nothing to a planner that looked before it', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    const input = await eveningInput(store, classroom, family);
    const word = { helperId: family.helper.id, now: evening(MONDAY, -1) };
    await pauseDrills(store, { ...word, until: TUESDAY });
    expect(await planEvening(store, input)).toBe(0);
    const { view } = await anEvening(store, classroom, family, { on: TUESDAY });
    await pauseDrills(store, { ...word, now: evening(TUESDAY), until: FRIDAY });
    const { childId, classId, id: eveningId } = view;
    const message = { eveningId, childId, classId, day: TUESDAY, kind: 'nudge' as const };
    const times = { expiresAt: evening(TUESDAY, 200), now: evening(TUESDAY, 90) };
    expect(await oweAgain(store, { ...message, ...times })).toBe(0);
  });
}
