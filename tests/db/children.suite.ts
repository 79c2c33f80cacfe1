import { beforeEach, describe, expect, it } from 'vitest';
import {
  addChildren,
  archiveChild,
  bringBackChild,
  listArchived,
  listChildren,
  listDueChildren,
  listDueReminders,
  listFamilyChildren,
  listNudgeCandidates,
  MAX_CHILDREN,
  moveChild,
  planEvening,
  readSlip,
  readWeek,
  remindLater,
  renameChild,
  type Store,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { ledgerOf } from '../support/deliveries.ts';
import {
  aChat,
  aClass,
  aFamily,
  aSecondClass,
  type Classroom,
  type Family,
} from '../support/people.ts';
import { anEvening, eveningInput, markPart } from '../support/practice.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { evening, MONDAY, MORNING, time } from '../support/term.ts';

const LATER = evening(MONDAY, 10);

/** Renaming and archiving a child. Runs on the store that acts.test.ts opens. */
export function childrenSuite(opened: () => Store): void {
  let classroom: Classroom;
  let family: Family;
  beforeEach(async () => {
    classroom = await aClass(opened());
    family = await aFamily(opened(), classroom);
  });
  const names = async ({ scope }: Classroom) =>
    (await listChildren(opened(), scope)).map((row) => `${row.number} ${row.nickname}`);
  const context = { opened, names, classroom: () => classroom, family: () => family };
  describe('renamed', () => renaming(context));
  describe('archived', () => archiving(context));
  describe('once archived', () => comingBack(context));
}

interface Context {
  opened(): Store;
  names(classroom: Classroom): Promise<string[]>;
  classroom(): Classroom;
  family(): Family;
}

function renaming({ opened, names, classroom }: Context) {
  const rename = (number: number, nickname: string) =>
    renameChild(opened(), classroom().scope, { number, nickname });

  it('has its new nickname from now on, and the old one is told', async () => {
    expect(await rename(1, 'Otter')).toBe('Wren');
    expect(await names(classroom())).toEqual(['1 Otter']);
  });

  it('may change the capitals of its own, but not take another child’s', async () => {
    await addChildren(opened(), classroom().scope, { nicknames: ['Otter'], now: MORNING });
    expect(await rename(1, 'WREN')).toBe('Wren');
    expect(await refusalOf(rename(1, 'oTTER'))).toBe('conflict: nickname in the class');
    expect(await names(classroom())).toEqual(['1 WREN', '2 Otter']);
  });

  it('may take the nickname of an archived child', async () => {
    await addChildren(opened(), classroom().scope, { nicknames: ['Otter'], now: MORNING });
    await archiveChild(opened(), classroom().scope, { number: 2, now: LATER });
    await rename(1, 'Otter');
    expect(await names(classroom())).toEqual(['1 Otter']);
    const back = bringBackChild(opened(), classroom().scope, { number: 2, now: LATER });
    expect(await refusalOf(back)).toBe('conflict: nickname in the class');
  });
}

function archiving({ opened, names, classroom, family }: Context) {
  const archive = () => archiveChild(opened(), classroom().scope, { number: 1, now: LATER });
  const due = () =>
    listDueChildren(opened(), {
      classId: classroom().schoolClass.id,
      day: MONDAY,
      after: null,
      until: time('20:00'),
    });

  it('is on no list, is due for no drill, and its slip opens nothing', async () => {
    expect(await due()).toHaveLength(1);
    await archive();
    expect(await names(classroom())).toEqual([]);
    expect(await due()).toEqual([]);
    expect(await listFamilyChildren(opened(), family().helper.id)).toEqual([]);
    const reading = readSlip(opened(), { code: family().code, chatId: aChat(), now: LATER });
    expect(await codeOf(reading)).toBe('not_found');
  });

  it('gets no evening that waits to be sent, no nudge and no reminder', async () => {
    const { scope, view } = await anEvening(opened(), classroom(), family());
    await remindLater(opened(), scope, { at: evening(MONDAY, 40), now: LATER });
    await archive();
    expect(await ledgerOf(opened(), view.id)).toMatchObject([
      { kind: 'evening', status: 'failed', problem: 'archived' },
    ]);
    const classId = classroom().schoolClass.id;
    const now = evening(MONDAY, 41);
    expect(await listNudgeCandidates(opened(), { classId, day: MONDAY, now })).toEqual([]);
    const reminders = await listDueReminders(opened(), now);
    expect(reminders.filter((row) => row.classId === classId)).toEqual([]);
  });

  it('gets no evening from who still took it to be due', async () => {
    const input = await eveningInput(opened(), classroom(), family());
    await Promise.all([archive(), planEvening(opened(), input)]);
    const rows = (await readTable(opened(), 'ledger')).filter(
      (row) => row.subject_id === family().child.id && row.status === 'planned',
    );
    expect(rows).toEqual([]);
    expect(await planEvening(opened(), input)).toBe(0);
  });

  it('leaves a drill that has come to be marked, in case the archiving is taken back', async () => {
    const { scope } = await anEvening(opened(), classroom(), family());
    await archive();
    const marking = markPart(opened(), scope, { part: 0, missed: [1], now: evening(MONDAY, 20) });
    expect(await codeOf(marking)).toBe('accepted');
  });

  it('cannot be archived, renamed or moved again', async () => {
    await archive();
    const { scope } = classroom();
    const other = await aSecondClass(opened(), classroom());
    const toClassId = other.schoolClass.id;
    const before = await dumpAll(opened());
    expect(await codeOf(archive())).toBe('not_found');
    expect(await codeOf(renameChild(opened(), scope, { number: 1, nickname: 'Otter' }))).toBe(
      'not_found',
    );
    const moving = moveChild(opened(), scope, { number: 1, toClassId, now: LATER });
    expect(await codeOf(moving)).toBe('not_found');
    expect(await dumpAll(opened())).toEqual(before);
  });
}

function comingBack({ opened, names, classroom, family }: Context) {
  const archive = () => archiveChild(opened(), classroom().scope, { number: 1, now: LATER });

  it('keeps its number, which nobody else gets, and comes back under it', async () => {
    await archive();
    await addChildren(opened(), classroom().scope, { nicknames: ['Otter'], now: LATER });
    expect(await listArchived(opened(), classroom().scope)).toMatchObject([{ number: 1 }]);
    await bringBackChild(opened(), classroom().scope, { number: 1, now: LATER });
    expect(await names(classroom())).toEqual(['1 Wren', '2 Otter']);
    expect(await listArchived(opened(), classroom().scope)).toEqual([]);
  });

  it('comes back for the next evening, not for one that is over', async () => {
    await archive();
    await bringBackChild(opened(), classroom().scope, { number: 1, now: LATER });
    const classId = classroom().schoolClass.id;
    const until = time('20:00');
    const due = await listDueChildren(opened(), { classId, day: MONDAY, after: null, until });
    expect(due).toMatchObject([{ since: LATER }]);
  });

  it('does not come back to a full class', async () => {
    await archive();
    const nicknames = Array.from({ length: MAX_CHILDREN }, (_, place) => `Otter ${place}`);
    await addChildren(opened(), classroom().scope, { nicknames, now: LATER });
    const back = bringBackChild(opened(), classroom().scope, { number: 1, now: LATER });
    expect(await refusalOf(back)).toBe('invalid: number of children');
  });

  it('leaves a digest that can be read, without it', async () => {
    await anEvening(opened(), classroom(), family());
    await archive();
    const classId = classroom().schoolClass.id;
    const week = await readWeek(opened(), { classId, days: [MONDAY], now: LATER });
    expect(week.children).toEqual([]);
  });
}
