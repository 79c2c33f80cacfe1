import { beforeAll, describe, expect, it } from 'vitest';
import {
  archiveChild,
  askErasure,
  bringBackChild,
  currentMarks,
  heldData,
  issueSlips,
  LEFT_DAYS,
  listArchived,
  listChildren,
  listFamilyChildren,
  listOwnChildren,
  MARKS_DAYS,
  moveChild,
  readHeldData,
  readMemory,
  rebuildAll,
  refreshMemory,
  type Store,
  startEvening,
  undoErasure,
} from '../../db/index.ts';
import { addDays } from '../../drills/index.ts';
import { planRetention } from '../../jobs/plan-retention.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { aClass, aFamily, aSecondClass, type Family } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { dumpAll, readTable, runSql } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends, server } from '../support/stores.ts';
import { evening, MONDAY, MORNING, TUESDAY } from '../support/term.ts';
import { dumpDatabase, tablesWith } from '../support/whole-database.ts';
import { practised, sayRun } from './practised.ts';

const DAY_MS = 86_400_000;
const NOON = evening(MONDAY, -240);
const later = (days: number, minutes = 0) =>
  new Date(NOON.getTime() + days * DAY_MS + minutes * 60_000);
const log = { info: () => {}, warn: () => {}, error: () => {} };

/** Upkeep as the tick does it, at an instant. */
const keepUp = (store: Store, now: Date) =>
  planRetention({ store, clock: { now: () => now }, log });

/** A child with two helpers, slips, a marked evening, a move behind it, and a mention wherever there may be one. */
async function aMentionedChild(store: Store, nickname: string) {
  const first = await aClass(store);
  const classroom = await aSecondClass(store, first);
  const family = await aFamily(store, first, { nickname, helpers: 2 });
  await moveChild(store, first.scope, {
    number: family.child.number,
    toClassId: classroom.schoolClass.id,
    now: MORNING,
  });
  const { scope, view } = await anEvening(store, classroom, family);
  await markPart(store, scope, { part: 0, missed: [1], now: evening(MONDAY, 5) });
  await sayRun(store, scope, { said: 3, now: evening(MONDAY, 6) });
  await issueSlips(store, classroom.scope, { childIds: [family.child.id], now: MORNING });
  const said = JSON.stringify({ message: { text: nickname.toUpperCase() } });
  await runSql(
    store,
    `insert into inbox (bot_id, update_id, actor_id, payload, status, received_at, not_before, handled_at)
       values (1, ${family.helper.chatId}, 5, '${said}', 'failed', now(), now(), '2099-01-01'),
              (1, ${family.helper.chatId + 100_000}, ${family.helper.chatId}, null, 'done', now(), now(), '2099-01-01')`,
  );
  await runSql(
    store,
    `insert into expectation values (${family.helper.chatId + 500_000}, 'file_list', '{"nicknames":["${nickname}"]}', '2099-01-01')`,
  );
  return { classroom, family, eveningId: view.id };
}

type There = Awaited<ReturnType<typeof aMentionedChild>> & { readonly neighbour: Family };

describe.each(backends)('a child that its family wants erased, on $name', (backend) => {
  const opened = sharedStore(backend);
  let there: There;
  beforeAll(async () => {
    const seen = await aMentionedChild(opened(), 'Zaunkönigin');
    const neighbour = await aFamily(opened(), seen.classroom, { nickname: 'Otter' });
    await anEvening(opened(), seen.classroom, neighbour);
    there = { ...seen, neighbour };
  });
  withinTheDay(opened, () => there);
  afterTheDay(opened, () => there);
});

/** What a helper of the child wishes at an instant, its first one unless said otherwise. */
const wishOf = ({ family }: There, now: Date, helperId = family.helper.id) => ({
  helperId,
  childId: family.child.id,
  now,
});

function withinTheDay(opened: () => Store, there: () => There) {
  it('is not another family’s to ask for, nor a teacher’s, and nothing changes', async () => {
    const { classroom, neighbour } = there();
    const before = await dumpAll(opened());
    for (const helperId of [neighbour.helper.id, classroom.teacher.id]) {
      expect(await codeOf(askErasure(opened(), wishOf(there(), NOON, helperId)))).toBe('not_found');
      expect(await codeOf(undoErasure(opened(), wishOf(there(), NOON, helperId)))).toBe(
        'not_found',
      );
      expect(await codeOf(readHeldData(opened(), wishOf(there(), NOON, helperId)))).toBe(
        'not_found',
      );
    }
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('is at once on no list and in no drill, and tells the other helper and the teacher once', async () => {
    const { classroom, family, eveningId } = there();
    const store = opened();
    await askErasure(store, wishOf(there(), NOON));
    expect(await askErasure(store, wishOf(there(), later(0, 1)))).toMatchObject({ again: true });
    const numbers = (await listChildren(store, classroom.scope)).map(({ nickname }) => nickname);
    expect(numbers).toEqual(['Otter']);
    expect(await listArchived(store, classroom.scope)).toEqual([]);
    expect(await listFamilyChildren(store, family.helper.id)).toEqual([]);
    const start = startEvening(store, { helperId: family.helper.id, eveningId }, NOON);
    expect(await codeOf(start)).toBe('not_found');
    const back = bringBackChild(store, classroom.scope, { number: family.child.number, now: NOON });
    expect(await codeOf(back)).toBe('not_found');
    const told = (await readTable(store, 'ledger')).filter((row) => row.kind === 'erasing');
    expect(told.map((row) => row.recipient_id).sort()).toEqual(
      [family.helpers[1]?.id, classroom.teacher.id].sort(),
    );
  });

  it('comes back whole when whoever asked takes it back within the day, and only then', async () => {
    const { classroom, family } = there();
    const store = opened();
    const [, other] = family.helpers;
    expect(await codeOf(undoErasure(store, wishOf(there(), later(0, 2), other?.id)))).toBe(
      'not_found',
    );
    expect(await listOwnChildren(store, other?.id ?? '')).toMatchObject([{ erasing: 'other' }]);
    expect(await refusalOf(undoErasure(store, wishOf(there(), later(1))))).toBe('expired: erasure');
    await undoErasure(store, wishOf(there(), later(0, 1439)));
    expect(await undoErasure(store, wishOf(there(), later(0, 1439)))).toMatchObject({
      again: true,
    });
    expect(await listOwnChildren(store, family.helper.id)).toMatchObject([{ erasing: 'no' }]);
    expect(await listChildren(store, classroom.scope)).toHaveLength(2);
    await keepUp(store, later(2));
    expect(await currentMarks(store, family.child.id)).not.toEqual([]);
  });
}

function afterTheDay(opened: () => Store, there: () => There) {
  it('is, a day later, in no row of any table: not its name, its ids, its helpers, their accounts', async () => {
    const { family, eveningId } = there();
    const store = opened();
    const own = [family.child.id, eveningId, ...family.helpers.map(({ id }) => id)];
    const accounts = family.helpers.map(({ chatId }) => `${chatId}`);
    await askErasure(store, wishOf(there(), later(3)));
    await keepUp(store, later(3, 1439));
    expect(await tablesWith(store, 'Zaunkönigin')).toContain('public.child');
    await keepUp(store, later(4));
    expect(await tablesWith(store, 'Zaunkönigin')).toEqual([]);
    const dumps = await dumpDatabase(store);
    expect(dumps.has('pgboss.job')).toBe(true);
    for (const id of own) {
      const where = [...dumps].flatMap(([table, rows]) => (rows.includes(id) ? [table] : []));
      // That a child and two helpers were erased is known by their ids alone.
      expect(where).toEqual(id === eveningId ? [] : ['public.erasure']);
    }
    for (const chatId of accounts) {
      expect((await readTable(store, 'helper')).map((row) => String(row.chat_id))).not.toContain(
        chatId,
      );
      expect((await readTable(store, 'inbox')).map((row) => String(row.actor_id))).not.toContain(
        chatId,
      );
    }
    expect(await readTable(store, 'erasure')).toHaveLength(3);
  });

  it('leaves other families as they were, and its number is never given again', async () => {
    const { classroom, neighbour } = there();
    const store = opened();
    expect(await listFamilyChildren(store, neighbour.helper.id)).toMatchObject([
      { nickname: 'Otter' },
    ]);
    const { child } = await aFamily(store, classroom, { nickname: 'Robin' });
    expect(child.number).toBeGreaterThan(neighbour.child.number);
    const before = await dumpAll(store);
    await keepUp(store, later(4));
    expect(await dumpAll(store)).toEqual(before);
  });
}

describe('what is kept about a child', () => {
  const opened = sharedStore(server);

  it('is given to its own helper whole, in the shape that is written down, and no other account is in it', async () => {
    const store = opened();
    const { family } = await aMentionedChild(store, 'Wren');
    const childId = family.child.id;
    const data = await readHeldData(store, { helperId: family.helper.id, childId, now: NOON });
    expect(heldData.parse(JSON.parse(JSON.stringify(data)))).toEqual(data);
    const marks = (await readTable(store, 'mark')).filter((row) => row.child_id === childId);
    expect(data.evenings.flatMap((each) => each.marks)).toHaveLength(marks.length);
    expect(data.evenings[0]).toMatchObject({ day: MONDAY, runs: [{ said: 3 }] });
    expect(data.memory).toHaveLength((await readMemory(store, childId)).size);
    expect(data.you).toMatchObject({
      chatId: family.helper.chatId,
      agreements: [{ language: 'en' }],
    });
    const [, other] = family.helpers;
    // As a value: the digits alone may stand in an id by chance.
    expect(JSON.stringify(data)).not.toMatch(new RegExp(`:"?${other?.chatId}\\b`));
    expect(JSON.stringify(data)).not.toContain(`${other?.id}`);
  });

  it('goes, all of it, thirty days after the child has left, and not a day before', async () => {
    const store = opened();
    const { classroom, family } = await aMentionedChild(store, 'Goldcrest');
    await archiveChild(store, classroom.scope, { number: family.child.number, now: NOON });
    await keepUp(store, later(LEFT_DAYS, -1));
    expect(await tablesWith(store, 'Goldcrest')).toContain('public.child');
    await keepUp(store, later(LEFT_DAYS));
    expect(await tablesWith(store, 'Goldcrest')).toEqual([]);
  });
});

describe('marks after their school year', () => {
  const opened = sharedStore(server);
  const end = (on: typeof MONDAY) => new Date(`${addDays(on, MARKS_DAYS + 1)}T12:00:00Z`);
  let childId: string;
  let whole: Awaited<ReturnType<typeof readMemory>>;
  let scores: Awaited<ReturnType<typeof readTable>>;
  const scoresOf = async () =>
    (await readTable(opened(), 'part_score')).filter((row) => row.child_id === childId);

  beforeAll(async () => {
    childId = await practised(opened());
    whole = await readMemory(opened(), childId);
    scores = await scoresOf();
  });

  it('go, evening by evening, while scores and memory stay as they are', async () => {
    const store = opened();
    const before = await currentMarks(store, childId);
    await keepUp(store, end(addDays(MONDAY, -1)));
    expect(await currentMarks(store, childId)).toEqual(before);
    await keepUp(store, end(TUESDAY));
    const left = await currentMarks(store, childId);
    expect(left.length).toBeGreaterThan(0);
    expect(left).toEqual(before.filter(({ day }) => day > TUESDAY));
    expect(await readMemory(store, childId)).toEqual(whole);
    expect(await scoresOf()).toEqual(scores);
  });

  it('are not missed when everything is rebuilt, nor when a fact is marked anew', async () => {
    const store = opened();
    await rebuildAll(store);
    expect(await readMemory(store, childId)).toEqual(whole);
    expect(await scoresOf()).toHaveLength(scores.length);
    await refreshMemory(store, childId, [...whole.keys()].slice(0, 3));
    expect(await readMemory(store, childId)).toEqual(whole);
  });

  it('all go in the end, and what is known of each fact is still known after a rebuild', async () => {
    const store = opened();
    await keepUp(store, end(addDays(TUESDAY, 5)));
    expect(await currentMarks(store, childId)).toEqual([]);
    await rebuildAll(store);
    expect(await readMemory(store, childId)).toEqual(whole);
    expect(await scoresOf()).toHaveLength(scores.length);
  });
});

describe('records', () => {
  const opened = sharedStore(server);

  it('go in batches until nothing is left, then upkeep rests for a day', async () => {
    const store = opened();
    const { classroom, family } = await aMentionedChild(store, 'Robin');
    await runSql(store, `update expectation set created_at = '2026-01-01'`);
    const count = async (table: string) => (await readTable(store, table)).length;
    expect(await count('slip')).toBeGreaterThan(0);
    expect(await count('act')).toBeGreaterThan(0);
    const after = new Date(MORNING.getTime() + 395 * DAY_MS);
    await keepUp(store, after);
    for (const table of ['slip', 'act', 'expectation', 'teacher_invite'])
      expect(await count(table)).toBe(0);
    expect(await count('upkeep')).toBe(0);
    await keepUp(store, after);
    expect(await count('upkeep')).toBe(1);
    // The number that the act of moving told is remembered.
    const [home] = (await readTable(store, 'class')).filter(
      (row) => row.id !== classroom.schoolClass.id,
    );
    expect(home?.top_number).toBe(1);
    expect(await listOwnChildren(store, family.helper.id)).toHaveLength(1);
  });
});
