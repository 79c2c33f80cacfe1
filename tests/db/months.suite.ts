import { expect, it } from 'vitest';
import {
  addBreak,
  claimPicture,
  countPractised,
  monthToShow,
  readOwnMonth,
  type Store,
} from '../../db/index.ts';
import { addDays, monthOfDay } from '../../drills/index.ts';
import { codeOf } from '../support/code-of.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { day, evening, MONDAY, MORNING, TUESDAY, WEDNESDAY } from '../support/term.ts';

/** How many evenings were practised, and the picture that closes a month. */
export function monthsSuite(opened: () => Store): void {
  countSuite(opened);
  pastSuite(opened);
}

function countSuite(opened: () => Store) {
  it('has evenings that count once each, with one part marked, and that no evening left out takes away', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    const scope = { helperId: family.helper.id, childId: family.child.id };
    const count = (on: typeof MONDAY) => countPractised(store, { ...scope, now: evening(on, 60) });
    expect(await count(MONDAY)).toEqual({ evenings: 0, since: null });
    const first = await anEvening(store, classroom, family);
    await markPart(store, first.scope, { part: 0, missed: [1], now: evening(MONDAY, 5) });
    await markPart(store, first.scope, { part: 2, missed: [], now: evening(MONDAY, 6) });
    await anEvening(store, classroom, family, { on: TUESDAY });
    const third = await anEvening(store, classroom, family, { on: WEDNESDAY });
    await markPart(store, third.scope, { part: 0, missed: [], now: evening(WEDNESDAY, 5) });
    expect(await count(WEDNESDAY)).toEqual({ evenings: 2, since: null });
    expect(await count(addDays(MONDAY, 21))).toEqual({ evenings: 2, since: null });
    const fortnight = { first: day('2026-09-19'), last: day('2026-10-04') };
    const added = { break: fortnight, title: 'Fair', now: MORNING };
    await addBreak(store, classroom.scope, added);
    expect(await count(addDays(MONDAY, 21))).toEqual({ evenings: 0, since: day('2026-10-05') });
    expect(await count(WEDNESDAY)).toEqual({ evenings: 2, since: null });
  });

  it('has a picture once a month, for each helper, and none of an earlier month after it', async () => {
    const store = opened();
    const { helpers, child } = await aFamily(store, await aClass(store), { helpers: 2 });
    const claim = (helper: number, on: string) =>
      claimPicture(store, {
        helperId: helpers[helper]?.id ?? '',
        childId: child.id,
        day: day(on),
      });
    expect(await claim(0, '2026-09-01')).toBe(true);
    expect(await claim(0, '2026-09-01')).toBe(false);
    expect(await claim(1, '2026-09-01')).toBe(true);
    expect(await claim(0, '2026-10-01')).toBe(true);
    expect(await claim(0, '2026-09-01')).toBe(false);
    expect(await claim(0, '2027-01-01')).toBe(true);
  });
}

function pastSuite(opened: () => Store) {
  it('is told by its own past alone: what was known when it began, and nothing of another child', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    const otter = await aFamily(store, classroom, { nickname: 'Otter' });
    const lastWeek = addDays(MONDAY, -14);
    for (const [each, on] of [
      [family, lastWeek],
      [family, MONDAY],
      [otter, MONDAY],
    ] as const) {
      const { scope } = await anEvening(store, classroom, each, { on });
      await markPart(store, scope, { part: 0, missed: [], now: evening(on, 5) });
    }
    const scope = { helperId: family.helper.id, childId: family.child.id };
    const now = evening(MONDAY, 60);
    expect(await monthToShow(store, { ...scope, now })).toBeNull();
    expect(await monthToShow(store, { ...scope, now: evening(day('2026-09-30')) })).toEqual(
      monthOfDay(MONDAY),
    );
    const month = monthOfDay(MONDAY);
    const own = await readOwnMonth(store, { ...scope, month, now });
    expect(own.child.nickname).toBe('Wren');
    expect(own.past.evenings.map((each) => each.day)).toEqual([lastWeek, MONDAY]);
    const asked = (facts: ReadonlyMap<string, { asked: number }>) =>
      [...facts.values()].reduce((sum, fact) => sum + fact.asked, 0);
    // The week before lies in August: five cards were known by then, ten are now.
    expect([asked(own.before), asked(own.past.memory)]).toEqual([5, 10]);
    const foreign = { helperId: otter.helper.id, childId: family.child.id };
    expect(await codeOf(readOwnMonth(store, { ...foreign, month, now }))).toBe('not_found');
    expect(await codeOf(countPractised(store, { ...foreign, now }))).toBe('not_found');
    expect(await codeOf(monthToShow(store, { ...foreign, now }))).toBe('not_found');
  });
}
