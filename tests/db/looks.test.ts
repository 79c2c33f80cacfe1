import { describe, expect, it } from 'vitest';
import {
  addBreak,
  archiveClass,
  claimLook,
  endLook,
  listClassesToLook,
  markReachable,
  markUnreachable,
  nextLook,
  removeBreak,
  saveDraftPlan,
  setEveningTime,
  updateClass,
} from '../../db/index.ts';
import { aClass, aFamily, onBot } from '../support/people.ts';
import { sharedStore } from '../support/shared-store.ts';
import { server } from '../support/stores.ts';
import { evening, MONDAY, MORNING, PLAN, TUESDAY, time } from '../support/term.ts';

const opened = sharedStore(server);
const MINUTE_LATER = new Date(MORNING.getTime() + 60_000);

async function isDue(id: string, now: Date): Promise<boolean> {
  return (await listClassesToLook(opened(), now)).some((each) => each.id === id);
}

/** A class with one family that was looked at on Monday morning, and is next looked at by the clock. */
async function lookedAt() {
  const classroom = await aClass(opened());
  const family = await aFamily(opened(), classroom);
  const { id } = classroom.schoolClass;
  const next = await nextLook(opened(), classroom.schoolClass, MORNING);
  const begun = await claimLook(opened(), id);
  if (!begun) throw new Error('the class is not running');
  await endLook(opened(), begun.look, { next, now: MORNING });
  return { ...classroom, family, id, next };
}

describe('when the planner looks at a class', () => {
  it('a new class is looked at at once, and then not before an hour is over or something may be due', async () => {
    const classroom = await aClass(opened());
    expect(await isDue(classroom.schoolClass.id, MORNING)).toBe(true);
    const { id, next } = await lookedAt();
    expect(next).toEqual(new Date(MORNING.getTime() + 3_600_000));
    expect(await isDue(id, MINUTE_LATER)).toBe(false);
    expect(await isDue(id, next)).toBe(true);
  });

  it('the next look is at the earliest of the class’s and its families’ times, at midnight, and an hour on', async () => {
    const { family, schoolClass } = await lookedAt();
    const nextAfter = (now: Date) => nextLook(opened(), schoolClass, now);
    await setEveningTime(opened(), {
      helperId: family.helper.id,
      time: time('16:15'),
      now: MORNING,
    });
    expect(await nextAfter(evening(MONDAY, -100))).toEqual(evening(MONDAY, -75));
    expect(await nextAfter(evening(MONDAY, -75))).toEqual(evening(MONDAY, -15));
    expect(await nextAfter(evening(MONDAY, -15))).toEqual(evening(MONDAY));
    // 23:59, and a minute later.
    expect(await nextAfter(evening(MONDAY, 389))).toEqual(evening(MONDAY, 390));
    expect(await nextAfter(evening(TUESDAY, -700))).toEqual(evening(TUESDAY, -690));
  });

  it('a look that was begun and never ended is due again', async () => {
    const { id } = await lookedAt();
    await claimLook(opened(), id);
    expect(await isDue(id, MINUTE_LATER)).toBe(true);
  });

  it('a change in the middle of a look, or a second look, is not lost with its end', async () => {
    const { id, scope, next } = await lookedAt();
    const first = await claimLook(opened(), id);
    await updateClass(opened(), scope, { changes: { eveningTime: time('16:00') }, now: MORNING });
    if (first) await endLook(opened(), first.look, { next, now: MORNING });
    expect(await isDue(id, MINUTE_LATER)).toBe(true);
    const second = await claimLook(opened(), id);
    const third = await claimLook(opened(), id);
    if (second) await endLook(opened(), second.look, { next, now: MORNING });
    expect(await isDue(id, MINUTE_LATER)).toBe(true);
    if (third) await endLook(opened(), third.look, { next, now: MORNING });
    expect(await isDue(id, MINUTE_LATER)).toBe(false);
  });

  it('a look by a clock that was ahead does not count once the clock is right', async () => {
    const { id, next } = await lookedAt();
    const begun = await claimLook(opened(), id);
    const ahead = new Date(next.getTime() + 400 * 24 * 60 * 60_000);
    const then = new Date(ahead.getTime() + 60_000);
    if (begun) await endLook(opened(), begun.look, { next: then, now: ahead });
    expect(await isDue(id, MINUTE_LATER)).toBe(true);
  });
});

describe('a class that is put away', () => {
  it('is looked at no more', async () => {
    const { id, scope, next } = await lookedAt();
    await archiveClass(opened(), scope, MORNING);
    expect(await isDue(id, next)).toBe(false);
    expect(await claimLook(opened(), id)).toBeNull();
  });
});

describe('what has the planner look again', () => {
  it('whatever tonight depends on has the class looked at again', async () => {
    const plan = PLAN;
    const day = { first: MONDAY, last: MONDAY };
    const changes: readonly ((of: Awaited<ReturnType<typeof lookedAt>>) => Promise<unknown>)[] = [
      ({ scope }) => updateClass(opened(), scope, { changes: {}, now: MORNING }),
      ({ scope }) => addBreak(opened(), scope, { break: day, title: 'Fair', now: MORNING }),
      ({ scope }) => saveDraftPlan(opened(), scope, { plan, now: MORNING }),
      ({ family: { helper } }) =>
        setEveningTime(opened(), { helperId: helper.id, time: time('16:00'), now: MORNING }),
      async ({ family: { helper } }) => {
        await markUnreachable(opened(), onBot(helper.chatId), MORNING);
        await markReachable(opened(), onBot(helper.chatId));
      },
    ];
    for (const change of changes) {
      const classroom = await lookedAt();
      await change(classroom);
      expect(await isDue(classroom.id, MINUTE_LATER), String(change)).toBe(true);
    }
  });

  it('a break that is taken out is such a change, and a helper who was never away is none', async () => {
    const { id, scope, family, next } = await lookedAt();
    await markReachable(opened(), onBot(family.helper.chatId));
    expect(await isDue(id, MINUTE_LATER)).toBe(false);
    const days = { first: TUESDAY, last: TUESDAY };
    const added = await addBreak(opened(), scope, { break: days, title: 'Fair', now: MORNING });
    const begun = await claimLook(opened(), id);
    if (begun) await endLook(opened(), begun.look, { next, now: MORNING });
    await removeBreak(opened(), scope, { breakId: added.id, now: MORNING });
    expect(await isDue(id, MINUTE_LATER)).toBe(true);
  });
});
