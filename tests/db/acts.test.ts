import { beforeEach, describe, expect, it } from 'vitest';
import { storedAct } from '../../db/acts/act-kinds.ts';
import {
  addBook,
  addChildren,
  addRoster,
  archiveChild,
  listActs,
  listArchived,
  listChildren,
  moveChild,
  renameChild,
  type Store,
  setAdjustment,
  setPage,
  UNDO_MS,
  undoAct,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { ledgerOf } from '../support/deliveries.ts';
import {
  aClass,
  aFamily,
  aHelper,
  aSecondClass,
  aSlip,
  aTeacher,
  type Classroom,
  type Family,
} from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { dumpAll, readTable, runSql } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends, server } from '../support/stores.ts';
import { evening, MONDAY } from '../support/term.ts';
import { childrenSuite } from './children.suite.ts';
import { movingSuite } from './moving.suite.ts';

const THEN = evening(MONDAY, 10);
const after = (ms: number) => new Date(THEN.getTime() + ms);

describe.each(backends)('an act on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('that is taken back', () => undoing(opened));
  describe('on a child', () => inverses(opened));
  describe('that added a list', () => additions(opened));
});

describe('a child', () => {
  const opened = sharedStore(server);
  describe('that is', () => childrenSuite(opened));
  describe('that moves', () => movingSuite(opened));
});

it('that an earlier release kept and nobody knows any more is no act', () => {
  expect(storedAct({ kind: 'childPainted', before: {} })).toBeNull();
  expect(storedAct({ kind: 'childArchived', before: { childId: 7 } })).toBeNull();
  expect(storedAct({ kind: 'constructor', before: {} })).toBeNull();
});

async function joinClass(store: Store, { scope }: Classroom): Promise<string> {
  const { id } = await aTeacher(store);
  await runSql(
    store,
    `insert into class_teacher (class_id, teacher_id, role, created_at)
     values ('${scope.classId}', '${id}', 'co', '${THEN.toISOString()}')`,
  );
  return id;
}

async function leaveClass(store: Store, classId: string, teacherId: string): Promise<void> {
  await runSql(
    store,
    `delete from class_teacher where class_id = '${classId}' and teacher_id = '${teacherId}'`,
  );
}

function undoing(opened: () => Store) {
  let classroom: Classroom;
  let actId: string;
  beforeEach(async () => {
    classroom = await aClass(opened());
    await addChildren(opened(), classroom.scope, { nicknames: ['Wren'], now: THEN });
    actId = await archiveChild(opened(), classroom.scope, { number: 1, now: THEN });
  });
  const undo = (now = THEN, teacherId = classroom.teacher.id) =>
    undoAct(opened(), { teacherId, actId, now });
  const isBack = async () => (await listChildren(opened(), classroom.scope)).length === 1;

  it('is on the list of the day with its child, and off it afterwards', async () => {
    const list = () => listActs(opened(), { teacherId: classroom.teacher.id, now: THEN });
    expect(await list()).toMatchObject([
      { id: actId, kind: 'childArchived', nickname: 'Wren', classTitle: 'Kingfisher class' },
    ]);
    expect(await undo()).toMatchObject({ classId: classroom.scope.classId, again: false });
    expect(await isBack()).toBe(true);
    expect(await list()).toEqual([]);
  });

  it('keeps no nickname of the child', async () => {
    const [row] = (await readTable(opened(), 'act')).filter(({ id }) => id === actId);
    expect(JSON.stringify(row)).not.toContain('Wren');
  });

  it('is taken back once, also by two taps at once and by one that comes later', async () => {
    const both = await Promise.all([undo(), undo()]);
    expect(both.map(({ again }) => again).sort()).toEqual([false, true]);
    await archiveChild(opened(), classroom.scope, { number: 1, now: after(1) });
    expect(await undo(after(2))).toMatchObject({ again: true });
    expect(await isBack()).toBe(false);
  });

  it('can be taken back until its day is over, and from then on is neither listed nor undone', async () => {
    const teacherId = classroom.teacher.id;
    expect(await refusalOf(undo(after(UNDO_MS)))).toBe('expired: act');
    expect(await listActs(opened(), { teacherId, now: after(UNDO_MS) })).toEqual([]);
    expect(await isBack()).toBe(false);
    expect(await codeOf(undo(after(UNDO_MS - 1)))).toBe('accepted');
    expect(await isBack()).toBe(true);
  });

  it('is not found for anybody who does not teach the class, or not any more', async () => {
    const stranger = await aClass(opened());
    const before = await dumpAll(opened());
    expect(await refusalOf(undo(THEN, stranger.teacher.id))).toBe('not_found: act');
    expect(await dumpAll(opened())).toEqual(before);
    expect(await listActs(opened(), { teacherId: stranger.teacher.id, now: THEN })).toEqual([]);
    await leaveClass(opened(), classroom.scope.classId, classroom.teacher.id);
    expect(await refusalOf(undo())).toBe('not_found: act');
  });

  it('can be taken back by another teacher of the class', async () => {
    const colleague = await joinClass(opened(), classroom);
    expect(await listActs(opened(), { teacherId: colleague, now: THEN })).toHaveLength(1);
    expect(await codeOf(undo(THEN, colleague))).toBe('accepted');
    expect(await isBack()).toBe(true);
  });

  it('that clashes with what happened since changes nothing and can be tried again', async () => {
    await addChildren(opened(), classroom.scope, { nicknames: ['wren'], now: THEN });
    const before = await dumpAll(opened());
    expect(await refusalOf(undo())).toBe('conflict: nickname in the class');
    expect(await dumpAll(opened())).toEqual(before);
    await renameChild(opened(), classroom.scope, { number: 2, nickname: 'Otter' });
    expect(await undo()).toMatchObject({ again: false });
  });
}

function inverses(opened: () => Store) {
  let classroom: Classroom;
  let other: Classroom;
  let family: Family;
  beforeEach(async () => {
    classroom = await aClass(opened());
    other = await aSecondClass(opened(), classroom);
    family = await aFamily(opened(), classroom);
  });
  const undo = (actId: string, now = after(60_000), teacherId = classroom.teacher.id) =>
    undoAct(opened(), { teacherId, actId, now });
  const archive = () => archiveChild(opened(), classroom.scope, { number: 1, now: THEN });
  const move = () => {
    const toClassId = other.schoolClass.id;
    return moveChild(opened(), classroom.scope, { number: 1, toClassId, now: THEN });
  };
  const names = async ({ scope }: Classroom) =>
    (await listChildren(opened(), scope)).map((row) => `${row.number} ${row.nickname}`);

  it('an archiving taken back sends what it had called off', async () => {
    const { view } = await anEvening(opened(), classroom, family);
    const actId = await archive();
    await undo(actId);
    expect(await ledgerOf(opened(), view.id)).toMatchObject([{ status: 'planned', problem: null }]);
  });

  it('an archiving taken back too late for the drill leaves that called off', async () => {
    const { view } = await anEvening(opened(), classroom, family);
    const actId = await archive();
    await undo(actId, evening(MONDAY, 180));
    expect(await ledgerOf(opened(), view.id)).toMatchObject([{ status: 'failed' }]);
    expect(await names(classroom)).toEqual(['1 Wren']);
  });

  it('a move taken back gives the child its number again, and the number it had there to nobody', async () => {
    const actId = await move();
    await undo(actId);
    expect(await names(classroom)).toEqual(['1 Wren']);
    await addChildren(opened(), other.scope, { nicknames: ['Otter'], now: THEN });
    expect(await names(other)).toEqual(['2 Otter']);
  });

  it('a move taken back before anybody was told leaves one word to each helper', async () => {
    await undo(await move());
    const told = (await readTable(opened(), 'ledger')).filter(
      (row) => row.subject_id === family.child.id,
    );
    expect(told).toMatchObject([{ kind: 'moved', class_id: classroom.scope.classId }]);
  });

  it('a move cannot be taken back by who does not teach where the child is now', async () => {
    const actId = await move();
    const colleague = await joinClass(opened(), classroom);
    expect(await codeOf(undo(actId, THEN, colleague))).toBe('not_found');
    expect(await names(other)).toEqual(['1 Wren']);
  });

  it('a move of a child that has gone on since cannot be taken back', async () => {
    const actId = await move();
    await archiveChild(opened(), other.scope, { number: 1, now: THEN });
    expect(await refusalOf(undo(actId))).toBe('conflict: undo');
    expect(await listArchived(opened(), other.scope)).toHaveLength(1);
  });
}

function additions(opened: () => Store) {
  let other: Classroom;
  beforeEach(async () => {
    other = await aClass(opened());
  });
  const undo = (actId: string) =>
    undoAct(opened(), { teacherId: other.teacher.id, actId, now: after(60_000) });
  const names = async () =>
    (await listChildren(opened(), other.scope)).map((row) => `${row.number} ${row.nickname}`);

  it('is taken back, until a helper has joined', async () => {
    const nicknames = ['Otter', 'Robin'];
    const { added, actId } = await addRoster(opened(), other.scope, { nicknames, now: THEN });
    const second = await addRoster(opened(), other.scope, { nicknames: ['Finch'], now: THEN });
    await undo(actId);
    expect(await listArchived(opened(), other.scope)).toEqual([]);
    expect(await names()).toEqual(['3 Finch']);
    expect(added.map(({ number }) => number)).toEqual([1, 2]);
    await aHelper(opened(), await aSlip(opened(), other, second.added[0]?.id ?? ''));
    expect(await refusalOf(undo(second.actId))).toBe('conflict: undo');
    expect(await names()).toEqual(['3 Finch']);
  });

  it('leaves no row and frees its numbers when it is taken back before any slip was made', async () => {
    const { scope } = other;
    const add = (nicknames: string[]) => addRoster(opened(), scope, { nicknames, now: THEN });
    const { added, actId } = await add(['Otter', 'Robin']);
    const childId = added[0]?.id ?? '';
    await setAdjustment(opened(), scope, { number: 1, change: { steps: -1 }, now: THEN });
    const book = { title: 'Pebble Path', firstPage: 1, lastPage: 48, pagesADay: 2 };
    const { id: bookId } = await addBook(opened(), scope, { book, childId, now: THEN });
    await setPage(opened(), scope, { childId, bookId, page: 3, now: THEN });
    await undo(actId);
    for (const table of ['child', 'adjustment', 'page_place', 'book']) {
      expect(JSON.stringify(await readTable(opened(), table))).not.toContain(childId);
    }
    expect((await add(['Otter'])).added).toMatchObject([{ number: 1 }]);
    expect(await undo(actId)).toMatchObject({ again: true });
    expect(await names()).toEqual(['1 Otter']);
  });

  it('archives a child that was given a slip, and its number is nobody else’s', async () => {
    const { scope } = other;
    const nicknames = ['Otter', 'Robin', 'Finch'];
    const { added, actId } = await addRoster(opened(), scope, { nicknames, now: THEN });
    const robin = added[1]?.id ?? '';
    await aSlip(opened(), other, robin);
    // A later slip revokes the first, which is on paper all the same.
    await aSlip(opened(), other, robin);
    await undo(actId);
    expect(await listArchived(opened(), scope)).toMatchObject([{ number: 2, nickname: 'Robin' }]);
    const again = await addRoster(opened(), scope, { nicknames: ['Owl'], now: THEN });
    expect(again.added).toMatchObject([{ number: 3, nickname: 'Owl' }]);
  });
}
