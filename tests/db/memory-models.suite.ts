import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { currentMarks, readMemory, rebuildAll, refreshMemory, type Store } from '../../db/index.ts';
import { addDays, rebuildMemory, runSteps, type WeekPlan } from '../../drills/index.ts';
import { bkt } from '../../drills/memory/bkt.ts';
import { fsrs } from '../../drills/memory/fsrs.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, aPlan, markPart } from '../support/practice.ts';
import { dumpAll, readTable, runSql } from '../support/raw-rows.ts';
import { evening, MONDAY } from '../support/term.ts';
import { practised, sayRun } from './practised.ts';

/** Whose belief is stored, and what counting runs add to it. Called by the suite of memory. */
export function memoryModelsSuite(opened: () => Store): void {
  describe('of a counting run', () => steps(opened));
  describe('by any model', () => models(opened));
}

function steps(opened: () => Store) {
  it('is what its results say, and a correction takes back what it no longer says', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const { scope, view } = await anEvening(opened(), classroom, family);
    const now = evening(MONDAY, 10);
    const part = view.drill.parts[1];
    if (part?.kind !== 'run') throw new Error('the second part should be a run');
    const known = async () => {
      const memory = await readMemory(opened(), family.child.id);
      return runSteps(part).map((step) => memory.get(step)?.lastRight ?? null);
    };
    const rest = (length: number) => Array.from({ length }, () => null);
    await sayRun(opened(), scope, { said: 6, now });
    expect(await known()).toEqual([true, true, true, true, true, false, ...rest(3)]);
    await sayRun(opened(), scope, { said: 2, now });
    expect(await known()).toEqual([true, false, ...rest(7)]);
    await sayRun(opened(), scope, { said: 0, now });
    expect((await readMemory(opened(), family.child.id)).size).toBe(0);
  });
}

function models(opened: () => Store) {
  it.each([bkt, fsrs])('$name: updated is rebuilt, row by row, over any history', async (model) => {
    const store = opened();
    const anyEvenings = fc.array(anyMarking, { minLength: 2, maxLength: 4 });
    await fc.assert(
      fc.asyncProperty(anyEvenings, async (evenings) => {
        const classroom = await aClass(store);
        await aPlan(store, classroom, CHAIN);
        const family = await aFamily(store, classroom);
        const childId = family.child.id;
        for (const [index, marked] of evenings.entries()) {
          const on = addDays(MONDAY, index);
          const now = evening(on, 10);
          const { scope, view } = await anEvening(store, classroom, family, { on });
          const before = new Map<number, readonly number[]>();
          for (const { part, missed, said } of marked) {
            const asked = view.drill.parts[part];
            if (asked?.kind === 'run') await sayRun(store, scope, { said, now });
            if (asked?.kind === 'facts') {
              await markPart(store, scope, { part, missed, now }, before.get(part));
              before.set(part, missed);
            }
            const facts = asked?.kind === 'facts' ? asked.cards : asked ? runSteps(asked) : [];
            await refreshMemory(store, childId, facts, model);
          }
        }
        const marks = await currentMarks(store, childId);
        expect(await memoryRows(store, childId)).toEqual(
          new Map([...rebuildMemory(marks, model)].map(([fact, { state }]) => [fact, [...state]])),
        );
      }),
      { numRuns: 3 },
    );
  });

  it('rows that another model wrote are folded anew from the marks, and left as they are', async () => {
    const childId = await practised(opened());
    const memory = await readMemory(opened(), childId);
    const [first] = memory.keys();
    for (const damage of [
      `model = 'other', state = '{9,9}' where child_id = '${childId}'`,
      `model = 'other', asked = 99 where child_id = '${childId}' and fact = '${first}'`,
      `state = '{NaN}' where child_id = '${childId}' and fact = '${first}'`,
      `fact = 'no such fact' where child_id = '${childId}' and fact = '${first}'`,
    ]) {
      await runSql(opened(), `update fact_memory set ${damage}`);
      const before = await dumpAll(opened());
      expect(await readMemory(opened(), childId)).toEqual(memory);
      expect(await dumpAll(opened())).toEqual(before);
    }
    await rebuildAll(opened());
    expect(await readMemory(opened(), childId)).toEqual(memory);
  });

  it('read by another model than the rows’ own it is what that model makes of the marks', async () => {
    const childId = await practised(opened());
    const marks = await currentMarks(opened(), childId);
    expect(await readMemory(opened(), childId, fsrs)).toEqual(rebuildMemory(marks, fsrs));
  });
}

/** Ties lend to doubles and doubles to halves, so that a mark reaches facts which others, not asked then, lend to as well. */
const CHAIN: WeekPlan = {
  parts: [
    { rung: 'bonds.within5', cards: 20, seconds: 3 },
    { rung: 'counting.fives', cards: 10, seconds: 3 },
    { rung: 'doubles.to5', cards: 5, seconds: 3 },
    { rung: 'halves.to10', cards: 5, seconds: 3 },
  ],
};

/** What a helper does on one evening: parts in any order, some of them twice. */
const anyMarking = fc.array(
  fc.record({
    part: fc.integer({ min: 0, max: 3 }),
    missed: fc.uniqueArray(fc.integer({ min: 0, max: 4 }), { maxLength: 3 }),
    said: fc.integer({ min: 0, max: 10 }),
  }),
  { minLength: 1, maxLength: 5 },
);

/** Each fact's state straight from the rows. */
async function memoryRows(store: Store, childId: string) {
  const rows = (await readTable(store, 'fact_memory')).filter((row) => row.child_id === childId);
  return new Map(rows.map((row) => [row.fact, row.state]));
}
