import { describe, expect, it } from 'vitest';
import { listNudgeCandidates, oweAgain, pauseDrills, type Store } from '../../db/index.ts';
import { ledgerOf } from '../support/deliveries.ts';
import { NEXT_MONDAY, WEEK } from '../support/paces.ts';
import { aChild, aClass, aFamily, aHelper, aSlip } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { runSql } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, TUESDAY } from '../support/term.ts';

/** How many nudges a helper may get, and when a family is left in peace. Runs on the store that pace.test.ts opens. */
export function boundsSuite(opened: () => Store): void {
  describe('that are bounded', () => bounds(opened));
  describe('and what is none of them', () => others(opened));
}

/** Owes the nudge of an evening. Returns how many helpers get it. */
async function nudge(store: Store, { view }: Awaited<ReturnType<typeof anEvening>>) {
  const { childId, classId, id: eveningId, day } = view;
  const message = { eveningId, childId, classId, day, kind: 'nudge' as const };
  return oweAgain(store, { ...message, expiresAt: evening(day, 200), now: evening(day, 90) });
}

function bounds(opened: () => Store) {
  it('one evening brings a helper of two children one nudge, and the other helper theirs', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const wren = await aFamily(store, classroom);
    const robin = await aFamily(store, classroom, { nickname: 'Robin' });
    await aHelper(store, robin.code, wren.helper.chatId);
    expect(await nudge(store, await anEvening(store, classroom, wren))).toBe(1);
    const sibling = await anEvening(store, classroom, robin);
    expect(await nudge(store, sibling)).toBe(1);
    const rows = await ledgerOf(store, sibling.view.id);
    const nudged = rows.filter(({ kind }) => kind === 'nudge');
    expect(nudged.map((row) => row.recipient_id)).toEqual([robin.helper.id]);
  });

  it('two of a helper’s children nudged at the same moment are one nudge', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const wren = await aFamily(store, classroom);
    const robin = await aChild(store, classroom, 'Robin');
    const helper = await aHelper(
      store,
      await aSlip(store, classroom, robin.id),
      wren.helper.chatId,
    );
    const first = await anEvening(store, classroom, wren);
    const family = { child: robin, code: '', helpers: [helper], helper };
    const second = await anEvening(store, classroom, family);
    const owed = await Promise.all([nudge(store, first), nudge(store, second)]);
    expect(owed.sort()).toEqual([0, 1]);
  });

  it('a week brings three at most; one that surely did not arrive is none, and Monday begins anew', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    const owed: number[] = [];
    for (const on of [...WEEK, NEXT_MONDAY]) {
      const found = await anEvening(store, classroom, family, { on });
      owed.push(await nudge(store, found));
      if (on === TUESDAY) {
        const which = `kind = 'nudge' and evening_id = '${found.view.id}'`;
        await runSql(store, `update ledger set status = 'failed' where ${which}`);
      }
    }
    expect(owed).toEqual([1, 1, 1, 1, 0, 1]);
  });
}

function others(opened: () => Store) {
  it('a reminder was asked for and does not count', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    for (const on of WEEK) {
      const { view } = await anEvening(store, classroom, family, { on });
      const { childId, classId, id: eveningId } = view;
      const message = { eveningId, childId, classId, day: on, kind: 'reminder' as const };
      const times = { expiresAt: evening(on, 200), now: evening(on, 30) };
      expect(await oweAgain(store, { ...message, ...times })).toBe(1);
    }
  });

  it('a candidate says whether its family has paused, and since when it was heard', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    await anEvening(store, classroom, family);
    const wanted = { classId: classroom.schoolClass.id, day: MONDAY, now: evening(MONDAY, 90) };
    const before = await listNudgeCandidates(store, wanted);
    expect(before).toMatchObject([{ paused: false, heard: null }]);
    await pauseDrills(store, {
      ...{ helperId: family.helper.id, now: evening(MONDAY, 5) },
      until: FRIDAY,
    });
    const after = await listNudgeCandidates(store, wanted);
    expect(after).toMatchObject([{ paused: true, heard: MONDAY }]);
  });
}
