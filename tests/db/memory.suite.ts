import { beforeAll, describe, expect, it } from 'vitest';
import { currentMarks, readMemory, rebuildAll, refreshMemory, type Store } from '../../db/index.ts';
import { type FactId, type Mark, rebuildMemory, relativesOf } from '../../drills/index.ts';
import { dumpAll, readTable, runSql } from '../support/raw-rows.ts';
import { memoryModelsSuite } from './memory-models.suite.ts';
import { practised } from './practised.ts';

/** What is remembered of a child’s facts. Runs on the store that planning.test.ts opens. */
export function memorySuite(opened: () => Store): void {
  describe('as marked', () => updated(opened));
  describe('as rebuilt', () => repaired(opened));
  memoryModelsSuite(opened);
}

/** The marks with the highest revision of their part, straight from the rows. */
async function countingRows(store: Store, childId: string) {
  const marks = (await readTable(store, 'mark')).filter((row) => row.child_id === childId);
  const part = (row: (typeof marks)[number]) => `${String(row.evening_id)} ${String(row.part)}`;
  const highest = new Map<string, number>();
  for (const row of marks) {
    highest.set(part(row), Math.max(highest.get(part(row)) ?? 0, Number(row.revision)));
  }
  return marks.filter((row) => row.revision === highest.get(part(row)));
}

/** In which part of the plan a fact is asked. */
const partOf = (fact: FactId) =>
  fact.startsWith('double:') ? 0 : fact.startsWith('next:') ? 1 : 2;

const seenAs = (marks: readonly Mark[], way: Mark['way']) => marks.filter((m) => m.way === way);

function updated(opened: () => Store) {
  let childId: string;
  beforeAll(async () => {
    childId = await practised(opened());
  });

  it('is what the marks that count give, after a correction too', async () => {
    const marks = await currentMarks(opened(), childId);
    expect(seenAs(marks, 'unmissed')).toHaveLength(3 * (5 + 8));
    // Of ten numbers four, then nine, then four were said: the steps between them, and the one where it stopped.
    expect(seenAs(marks, 'run')).toHaveLength(4 + 9 + 4);
    expect(await readMemory(opened(), childId)).toEqual(rebuildMemory(marks));
  });

  it('counts each fact as often as its rows do, corrected ones left out', async () => {
    const rows = await countingRows(opened(), childId);
    const memory = await readMemory(opened(), childId);
    const cards = [...memory].filter(([fact]) => !fact.startsWith('next:'));
    const asked = cards.filter(([, known]) => known.asked > 0).map(([fact]) => fact);
    expect(asked.sort()).toEqual([...new Set(rows.map((row) => row.fact))].sort());
    for (const [fact, known] of cards) {
      const own = rows.filter((row) => row.fact === fact);
      expect(known.asked).toBe(own.length);
      expect(known.right).toBe(own.filter((row) => row.right === true).length);
    }
  });

  it('keeps what marks lend to facts that were never asked, without a day', async () => {
    const memory = await readMemory(opened(), childId);
    const asked = [...memory].filter(([, known]) => known.asked > 0).map(([fact]) => fact);
    const lent = asked.flatMap((fact) => relativesOf(fact).map((each) => each.fact));
    expect(new Set(memory.keys())).toEqual(new Set([...asked, ...lent]));
    const unasked = [...memory.values()].filter((known) => known.asked === 0);
    expect(unasked.length).toBeGreaterThan(0);
    expect(new Set(unasked.map((known) => known.lastDay))).toEqual(new Set([null]));
  });

  it('is in the order of days, parts and cards, whichever was stored first', async () => {
    const marks = await currentMarks(opened(), childId);
    const placed = marks.map(({ day, fact }) => `${day} ${partOf(fact)}`);
    expect(placed).toEqual(placed.toSorted());
    const named = marks.slice(3, 9).map((mark) => mark.fact);
    expect(await currentMarks(opened(), childId, named)).toEqual(
      marks.filter((mark) => named.includes(mark.fact)),
    );
  });

  it('a part’s score equals a count over its marks', async () => {
    const rows = await countingRows(opened(), childId);
    const scores = (await readTable(opened(), 'part_score')).filter(
      (row) => row.child_id === childId && row.strand !== 'counting',
    );
    expect(scores).toHaveLength(6);
    for (const score of scores) {
      const own = rows.filter(
        (row) => row.evening_id === score.evening_id && row.part === score.part,
      );
      expect(score).toMatchObject({
        right: own.filter((row) => row.right === true).length,
        asked: own.length,
        revision: own[0]?.revision,
      });
    }
  });
}

/** Each leaves everything as it was, but for the last. */
function repaired(opened: () => Store) {
  let childId: string;
  beforeAll(async () => {
    childId = await practised(opened());
  });

  it('rebuilding changes nothing that was right and says how many children there are', async () => {
    const before = await dumpAll(opened());
    const children = await readTable(opened(), 'child');
    expect(await rebuildAll(opened())).toBe(children.length);
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('rebuilding repairs a damaged row, brings back a lost one and drops one without marks', async () => {
    const before = await dumpAll(opened());
    const [first, second] = [...(await readMemory(opened(), childId)).keys()];
    const of = (fact: string | undefined) => `child_id = '${childId}' and fact = '${fact}'`;
    await runSql(opened(), `update fact_memory set "right" = 99, streak = 7 where ${of(first)}`);
    await runSql(opened(), `delete from fact_memory where ${of(second)}`);
    await runSql(
      opened(),
      `insert into fact_memory values ('${childId}', 'clock:0330', 1, 1, 1, '2026-09-14', true, 'boxes', '{2}')`,
    );
    expect(await dumpAll(opened())).not.toEqual(before);
    await rebuildAll(opened());
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('rebuilding brings back scores and memory from marks and run results alone', async () => {
    const before = await dumpAll(opened());
    for (const table of ['part_score', 'fact_memory']) {
      await runSql(opened(), `delete from ${table} where child_id = '${childId}'`);
    }
    expect(await dumpAll(opened())).not.toEqual(before);
    await rebuildAll(opened());
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('rebuilding repairs a score of an earlier revision and drops one without marks', async () => {
    const before = await dumpAll(opened());
    await runSql(
      opened(),
      `update part_score set revision = 1, "right" = 0 where child_id = '${childId}' and revision = 2`,
    );
    await runSql(
      opened(),
      `insert into part_score select evening_id, 7, child_id, strand, rung, blueprint, "right", asked, revision, marked_at
       from part_score where child_id = '${childId}' and part = 0 limit 1`,
    );
    expect(await dumpAll(opened())).not.toEqual(before);
    await rebuildAll(opened());
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('refreshing some facts leaves the others, and no facts leave everything', async () => {
    const asked = [...(await readMemory(opened(), childId))].filter(([, known]) => known.asked > 0);
    const [first] = asked.map(([fact]) => fact);
    const near = new Set(first && relativesOf(first).map((each) => each.fact));
    const second = asked.map(([fact]) => fact).find((fact) => fact !== first && !near.has(fact));
    if (!first || !second) throw new Error('two facts should be known');
    await runSql(opened(), `update fact_memory set asked = 99 where child_id = '${childId}'`);
    await refreshMemory(opened(), childId, []);
    await refreshMemory(opened(), childId, [first]);
    const memory = await readMemory(opened(), childId);
    expect(memory.get(first)?.asked).toBeLessThan(99);
    expect(memory.get(second)?.asked).toBe(99);
  });
}
