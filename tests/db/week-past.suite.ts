import { expect, it } from 'vitest';
import { closePart, readMemory, readWeek, type Store } from '../../db/index.ts';
import { addDays, MEMORY_MODEL } from '../../drills/index.ts';
import { settleEvening } from '../support/deliveries.ts';
import { aClass, aFamily, type Classroom, type Family } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { runSql } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, THURSDAY, TUESDAY, WEDNESDAY } from '../support/term.ts';

const WEEK = [MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY];
/** Long after the week's last evening could be answered. */
const NOON_AFTER = new Date('2026-09-19T10:00:00Z');

/** An evening with one of five doubles missed. */
async function marked(store: Store, classroom: Classroom, family: Family, on = MONDAY) {
  const { scope, view } = await anEvening(store, classroom, family, { on });
  await settleEvening(store, view.id, 'sent', evening(on));
  await markPart(store, scope, { part: 0, missed: [1], now: evening(on, 15) });
  return scope;
}

/** A class of two children who practised all parts on Monday. */
async function twoMarked(store: Store) {
  const classroom = await aClass(store);
  const families = [
    await aFamily(store, classroom),
    await aFamily(store, classroom, { nickname: 'Otter' }),
  ];
  const now = evening(MONDAY, 15);
  for (const family of families) {
    const scope = await marked(store, classroom, family);
    await closePart(store, scope, { part: 1, verdict: { kind: 'said', said: 4 }, now });
    await markPart(store, scope, { part: 2, missed: [0], now });
  }
  return { classroom, families };
}

/** How many queries reading a class's week takes. */
async function queriesFor(store: Store, classroom: Classroom): Promise<number> {
  let asked = 0;
  const db = new Proxy(store.db, {
    get(target, key) {
      if (key === 'select' || key === 'selectDistinctOn' || key === 'execute') asked += 1;
      const value: unknown = Reflect.get(target, key);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
  const { id: classId } = classroom.schoolClass;
  await readWeek({ ...store, db }, { classId, days: WEEK, now: NOON_AFTER });
  return asked;
}

/** What the digest reads besides the week itself: memory, and scores of four weeks. */
export function weekPastSuite(opened: () => Store): void {
  it('brings each child’s own memory of what it was asked, of the class’s children alone', async () => {
    const { classroom, families } = await twoMarked(opened());
    await twoMarked(opened());
    const { children } = await readWeek(opened(), {
      classId: classroom.schoolClass.id,
      days: WEEK,
      now: NOON_AFTER,
    });
    expect(children.map(({ childId }) => childId)).toEqual(families.map(({ child }) => child.id));
    for (const { childId, memory } of children) {
      const all = await readMemory(opened(), childId);
      expect(memory).toEqual(new Map([...all].filter(([, { asked }]) => asked > 0)));
      expect(memory.size).toBeGreaterThan(10);
    }
  });

  it('folds memory anew where another model wrote it', async () => {
    const { classroom, families } = await twoMarked(opened());
    const input = { classId: classroom.schoolClass.id, days: WEEK, now: NOON_AFTER };
    const before = (await readWeek(opened(), input)).children;
    await runSql(opened(), "update fact_memory set model = 'an older one', state = '{}'");
    const after = (await readWeek(opened(), input)).children;
    for (const [index, { memory }] of before.entries()) {
      for (const [fact, known] of memory) expect(after[index]?.memory.get(fact)).toEqual(known);
    }
    expect(after).toHaveLength(families.length);
  });

  it('folds one child’s memory anew where a row is of no known fact, and leaves the others’ as it is', async () => {
    const { classroom, families } = await twoMarked(opened());
    const input = { classId: classroom.schoolClass.id, days: WEEK, now: NOON_AFTER };
    const asked = async () =>
      (await readWeek(opened(), input)).children.map(
        ({ memory }) => new Map([...memory].filter(([, known]) => known.asked > 0)),
      );
    const before = await asked();
    await runSql(
      opened(),
      `insert into fact_memory values ('${families[0]?.child.id}', 'no such fact', 1, 1, 1, '${MONDAY}', true, '${MEMORY_MODEL.name}', '{0}')`,
    );
    expect(await asked()).toEqual(before);
    expect(before[0]?.size).toBeGreaterThan(10);
  });

  it('asks the database as often for two children as for one', async () => {
    const { classroom: two } = await twoMarked(opened());
    const one = await aClass(opened());
    await marked(opened(), one, await aFamily(opened(), one));
    expect(await queriesFor(opened(), two)).toBe(await queriesFor(opened(), one));
    expect(await queriesFor(opened(), one)).toBeGreaterThan(5);
  });

  it('brings the scores of the four weeks before, and of no day before them', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const before = [-23, -20, -7].map((days) => addDays(MONDAY, days));
    // Four weeks that end with Friday begin 23 days before its Monday.
    for (const on of [addDays(MONDAY, -24), ...before, MONDAY]) {
      await marked(opened(), classroom, family, on);
    }
    const { classId } = classroom.scope;
    const [child] = (await readWeek(opened(), { classId, days: WEEK, now: NOON_AFTER })).children;
    expect(child?.earlier.map(({ day }) => day)).toEqual(before);
    expect(child?.earlier[0]?.parts).toEqual([
      { strand: 'doubles', rung: 'doubles.to5', right: 4, asked: 5 },
    ]);
    expect(child?.evenings.map(({ day }) => day)).toEqual([MONDAY]);
  });
}
