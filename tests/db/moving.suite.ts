import { beforeEach, describe, expect, it } from 'vitest';
import {
  addChildren,
  archiveClass,
  findEvening,
  listChildren,
  listDueChildren,
  listFamilyChildren,
  MAX_CHILDREN,
  moveChild,
  readSlip,
  readWeek,
  type Store,
  undoAct,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import {
  aChat,
  aClass,
  aFamily,
  aSecondClass,
  type Classroom,
  type Family,
} from '../support/people.ts';
import { anEvening, aPlan } from '../support/practice.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { evening, MONDAY, MORNING, TUESDAY, time } from '../support/term.ts';

const LATER = evening(MONDAY, 10);
const NIGHT = evening(MONDAY, 240);
const BEFORE_DAWN = new Date('2026-09-14T03:00:00Z');

/** A child of the first class, and a second class of the same teacher. */
interface Setting {
  readonly from: Classroom;
  readonly to: Classroom;
  readonly family: Family;
}

/** Moving a child to another class. Runs on the store that acts.test.ts opens. */
export function movingSuite(opened: () => Store): void {
  let now: Setting;
  beforeEach(async () => {
    const from = await aClass(opened());
    now = { from, to: await aSecondClass(opened(), from), family: await aFamily(opened(), from) };
  });
  const setting = () => now;
  describe('takes along', () => belongings(opened, setting));
  describe('tells', () => telling(opened, setting));
  describe('is refused', () => refusals(opened, setting));
}

function move(store: Store, { from, to }: Setting, now = LATER): Promise<string> {
  const toClassId = to.schoolClass.id;
  return moveChild(store, from.scope, { number: 1, toClassId, now });
}

async function names(store: Store, { scope }: Classroom): Promise<string[]> {
  return (await listChildren(store, scope)).map((row) => `${row.number} ${row.nickname}`);
}

function due(store: Store, { schoolClass }: Classroom, day: typeof MONDAY) {
  const until = time('20:00');
  return listDueChildren(store, { classId: schoolClass.id, day, after: null, until });
}

function belongings(opened: () => Store, setting: () => Setting) {
  it('no number: it gets the other class’s next one, and nobody else gets its own', async () => {
    const { from, to } = setting();
    await addChildren(opened(), to.scope, { nicknames: ['Otter'], now: MORNING });
    await move(opened(), setting());
    expect(await names(opened(), to)).toEqual(['1 Otter', '2 Wren']);
    await addChildren(opened(), from.scope, { nicknames: ['Robin'], now: LATER });
    expect(await names(opened(), from)).toEqual(['2 Robin']);
  });

  it('helpers, slip and evenings; today’s drill stays as it was sent', async () => {
    const { from, to, family } = setting();
    const { view } = await anEvening(opened(), from, family);
    await move(opened(), setting());
    const helperId = family.helper.id;
    const [child] = await listFamilyChildren(opened(), helperId);
    expect(child?.schoolClass.title).toBe('Heron class');
    const slip = await readSlip(opened(), { code: family.code, chatId: aChat(), now: LATER });
    expect(slip.classTitle).toBe('Heron class');
    const wanted = { helperId, childId: family.child.id, day: MONDAY };
    const found = await findEvening(opened(), wanted);
    expect(found).toMatchObject({ id: view.id, drill: view.drill, classId: to.schoolClass.id });
  });

  it('the next evening, which comes in the other class and is never a second one of a day', async () => {
    const { from, to, family } = setting();
    await anEvening(opened(), from, family);
    await move(opened(), setting());
    expect(await due(opened(), to, MONDAY)).toEqual([]);
    expect(await due(opened(), from, TUESDAY)).toEqual([]);
    const tomorrow = await due(opened(), to, TUESDAY);
    expect(tomorrow).toMatchObject([{ id: family.child.id, since: LATER }]);
  });

  it('its week into the other class’s digest, and the old one can still be read', async () => {
    const { from, to, family } = setting();
    await aPlan(opened(), from);
    await anEvening(opened(), from, family);
    await move(opened(), setting());
    const read = ({ schoolClass }: Classroom) =>
      readWeek(opened(), { classId: schoolClass.id, days: [MONDAY], now: evening(TUESDAY) });
    expect((await read(from)).children).toEqual([]);
    const [week] = (await read(to)).children;
    expect(week).toMatchObject({ nickname: 'Wren', number: 1 });
    expect(week?.evenings).toHaveLength(1);
  });
}

function telling(opened: () => Store, setting: () => Setting) {
  it.each([
    ['by day at once', LATER, LATER],
    ['in quiet hours the next morning', NIGHT, new Date('2026-09-15T04:00:00Z')],
    ['before dawn in the morning', BEFORE_DAWN, new Date('2026-09-14T04:00:00Z')],
  ])('each helper once, %s', async (_when, now, notBefore) => {
    const { family } = setting();
    await move(opened(), setting(), now);
    const told = (await readTable(opened(), 'ledger')).filter(
      (row) => row.subject_id === family.child.id,
    );
    const recipient = family.helper.id;
    expect(told).toMatchObject([{ kind: 'moved', recipient_id: recipient, status: 'planned' }]);
    expect(new Date(String(told[0]?.not_before))).toEqual(notBefore);
  });
}

function refusals(opened: () => Store, setting: () => Setting) {
  const full = Array.from({ length: MAX_CHILDREN }, (_, place) => `Otter ${place}`);

  it.each([
    ['is full', 'invalid: number of children', full],
    ['has a child of its nickname', 'conflict: nickname in the class', ['wren']],
  ])('by a class that %s, and nothing is changed', async (_how, why, nicknames) => {
    await addChildren(opened(), setting().to.scope, { nicknames, now: MORNING });
    const before = await dumpAll(opened());
    expect(await refusalOf(move(opened(), setting()))).toBe(why);
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('to another teacher’s class, and to the child’s own', async () => {
    const stranger = await aClass(opened());
    const before = await dumpAll(opened());
    for (const to of [stranger, setting().from]) {
      expect(await codeOf(move(opened(), { ...setting(), to }))).toBe('not_found');
    }
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('back while the other class is archived, until that is taken back', async () => {
    const { from, to } = setting();
    const { teacherId } = from.scope;
    const undo = (actId: string) => undoAct(opened(), { teacherId, actId, now: LATER });
    const moved = await move(opened(), setting());
    const archived = await archiveClass(opened(), to.scope, LATER);
    expect(await refusalOf(undo(moved))).toBe('conflict: archived class');
    await undo(archived);
    await undo(moved);
    expect(await names(opened(), from)).toEqual(['1 Wren']);
  });

  it('never because another child moves the other way at the same moment', async () => {
    const { from, to } = setting();
    await addChildren(opened(), to.scope, { nicknames: ['Otter'], now: MORNING });
    await Promise.all([
      move(opened(), setting()),
      move(opened(), { ...setting(), from: to, to: from }),
    ]);
    expect(await names(opened(), from)).toEqual(['2 Otter']);
    expect(await names(opened(), to)).toEqual(['2 Wren']);
  });
}
