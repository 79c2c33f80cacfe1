import { describe, expect, it } from 'vitest';
import {
  closePart,
  leaveAll,
  listDueChildren,
  markReachable,
  markUnreachable,
  planEvening,
  type Store,
  setEveningTime,
} from '../../db/index.ts';
import { addDays } from '../../drills/index.ts';
import { ledgerOf } from '../support/deliveries.ts';
import { aChild, aClass, aFamily, onBot } from '../support/people.ts';
import { anEvening, eveningInput, markPart } from '../support/practice.ts';
import { readTable, runSql } from '../support/raw-rows.ts';
import { recompose } from '../support/recompose.ts';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { evening, MONDAY, MORNING, THURSDAY, TUESDAY, time, WEDNESDAY } from '../support/term.ts';
import { catchUpSuite } from './catch-up.suite.ts';
import { expectedSuite } from './expected.suite.ts';
import { memorySuite } from './memory.suite.ts';

describe.each(dearBackends)('planning on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('an evening', () => once(opened));
  describe('a drill', () => rebuilt(opened));
  describe('after missed evenings', () => catchUpSuite(opened));
  describe('the children who are due', () => due(opened));
  describe('an evening is expected', () => expectedSuite(opened));
  describe('from memory', () => memorySuite(opened));
});

async function eveningsOf(store: Store, childId: string) {
  return (await readTable(store, 'evening')).filter((row) => row.child_id === childId);
}

function once(opened: () => Store) {
  async function setting() {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom, { helpers: 2 });
    return { classroom, family, input: await eveningInput(opened(), classroom, family) };
  }

  it('is owed to each helper once, however often it is planned', async () => {
    const { family, input } = await setting();
    expect(await planEvening(opened(), input)).toBe(2);
    expect(await planEvening(opened(), { ...input, now: evening(MONDAY, 1) })).toBe(0);
    const [row, ...more] = await eveningsOf(opened(), family.child.id);
    expect(more).toEqual([]);
    const owed = await ledgerOf(opened(), String(row?.id));
    expect(owed.map((entry) => entry.recipient_id).sort()).toEqual(
      family.helpers.map((helper) => helper.id).sort(),
    );
    expect(owed.map((entry) => entry.status)).toEqual(['planned', 'planned']);
  });

  it('planned by many at once is there once and owed once', async () => {
    const { family, input } = await setting();
    const owed = await Promise.all([1, 2, 3, 4].map(() => planEvening(opened(), input)));
    expect(owed.sort()).toEqual([0, 0, 0, 2]);
    expect(await eveningsOf(opened(), family.child.id)).toHaveLength(1);
    const rows = await readTable(opened(), 'ledger');
    expect(rows.filter((row) => row.subject_id === family.child.id)).toHaveLength(2);
  });

  it('is owed to no helper who has left or is out of reach', async () => {
    const { family, input } = await setting();
    await leaveAll(opened(), { helperId: family.helper.id, now: MORNING });
    await markUnreachable(opened(), onBot(family.helpers[1]?.chatId ?? 0), MORNING);
    expect(await planEvening(opened(), input)).toBe(0);
    expect(await eveningsOf(opened(), family.child.id)).toHaveLength(1);
  });
}

function rebuilt(opened: () => Store) {
  it('is rebuilt exactly from the plan, the marks before its day and the stored seed', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    for (const [index, on] of [MONDAY, TUESDAY, WEDNESDAY].entries()) {
      const { scope } = await anEvening(opened(), classroom, family, { on });
      const now = evening(on, 10);
      await markPart(opened(), scope, { part: 0, missed: [index], now });
      await closePart(opened(), scope, { part: 1, verdict: { kind: 'said', said: 7 }, now });
      await markPart(opened(), scope, { part: 2, missed: [0, 1 + index], now });
      // A correction of the past must not reach into a drill that is already written.
      await markPart(opened(), scope, { part: 2, missed: [2], now }, [0, 1 + index]);
    }
    for (const on of [MONDAY, TUESDAY, WEDNESDAY]) {
      const { stored, rebuilt } = await recompose(opened(), family.child.id, on);
      expect(stored).toEqual(rebuilt);
      expect(stored.parts).toHaveLength(3);
    }
  });

  it('to catch up with is rebuilt exactly too', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const { scope } = await anEvening(opened(), classroom, family, { on: MONDAY });
    const now = evening(MONDAY, 10);
    await markPart(opened(), scope, { part: 2, missed: [1, 4], now });
    await closePart(opened(), scope, { part: 1, verdict: { kind: 'said', said: 3 }, now });
    for (const on of [TUESDAY, WEDNESDAY, THURSDAY]) {
      await anEvening(opened(), classroom, family, { on });
    }
    const { stored, rebuilt } = await recompose(opened(), family.child.id, THURSDAY);
    expect(stored.variant).toBe('catch_up');
    expect(stored).toEqual(rebuilt);
  });

  it('follows the child’s own marks: two children of a class may get different cards', async () => {
    const classroom = await aClass(opened());
    const first = await anEvening(opened(), classroom, await aFamily(opened(), classroom));
    const otto = await aFamily(opened(), classroom, { nickname: 'Otto' });
    const second = await anEvening(opened(), classroom, otto);
    expect(second.view.drill).not.toEqual(first.view.drill);
  });
}

function due(opened: () => Store) {
  async function setting() {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const ask = (until: string, after: string | null = null, on = MONDAY) =>
      listDueChildren(opened(), {
        classId: classroom.schoolClass.id,
        day: on,
        after: after === null ? null : time(after),
        until: time(until),
      });
    return { classroom, family, ask };
  }

  it('are due from their time on, and not again in a span that begins at it', async () => {
    const { family, ask } = await setting();
    expect(await ask('17:29')).toEqual([]);
    expect(await ask('17:30')).toMatchObject([{ id: family.child.id, eveningTime: '17:30' }]);
    expect(await ask('20:00', '17:29')).toHaveLength(1);
    expect(await ask('20:00', '17:30')).toEqual([]);
  });

  it('follow the family’s own time', async () => {
    const { family, ask } = await setting();
    const helperId = family.helper.id;
    await setEveningTime(opened(), { helperId, time: time('19:00'), now: MORNING });
    expect(await ask('18:59')).toEqual([]);
    expect(await ask('19:00')).toMatchObject([{ id: family.child.id, eveningTime: '19:00' }]);
  });

  it('leave out who has an evening that day, but not the day after', async () => {
    const { classroom, family, ask } = await setting();
    await anEvening(opened(), classroom, family);
    expect(await ask('18:00')).toEqual([]);
    expect(await ask('18:00', null, addDays(MONDAY, 1))).toHaveLength(1);
  });

  it('leave out who has no helper, whose helpers left, and who is archived', async () => {
    const { classroom, family, ask } = await setting();
    await aChild(opened(), classroom, 'Otto');
    const archived = await aFamily(opened(), classroom, { nickname: 'Juniper' });
    const id = archived.child.id;
    await runSql(
      opened(),
      `update child set archived_at = '2026-09-14T08:00:00Z' where id = '${id}'`,
    );
    expect((await ask('18:00')).map((row) => row.id)).toEqual([family.child.id]);
    await leaveAll(opened(), { helperId: family.helper.id, now: MORNING });
    expect(await ask('18:00')).toEqual([]);
  });

  it('leave out a family out of reach until it is back', async () => {
    const { family, ask } = await setting();
    await markUnreachable(opened(), onBot(family.helper.chatId), MORNING);
    expect(await ask('18:00')).toEqual([]);
    await markReachable(opened(), onBot(family.helper.chatId));
    expect(await ask('18:00')).toHaveLength(1);
  });
}
