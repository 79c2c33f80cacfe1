import { expect, it } from 'vitest';
import {
  acceptTeacherInvite,
  addBreaks,
  archiveClass,
  getClass,
  inviteColleague,
  listActs,
  listBreaks,
  listClasses,
  listFamilyChildren,
  readClassNews,
  readSlip,
  removeBreak,
  type Store,
  undoAct,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { ledgerOf } from '../support/deliveries.ts';
import { aChat, aClass, aFamily } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { readTable, runSql } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, TUESDAY } from '../support/term.ts';

const NOW = evening(MONDAY, 10);
const HOUR_MS = 60 * 60_000;

async function newsOf(store: Store, classId: string) {
  const rows = (await readTable(store, 'ledger')).filter((row) => row.subject_id === classId);
  return rows
    .filter((row) => row.kind !== 'digest')
    .map((row) => `${row.kind} to a ${row.recipient_kind}: ${row.status}`)
    .sort();
}

/** Putting a class away, and taking it back. */
export function archivingSuite(opened: () => Store): void {
  goingAway(opened);
  comingBack(opened);
}

function goingAway(opened: () => Store): void {
  it('calls off what waits, kills its links, and owes each family and co-teacher one word an hour later', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { scope } = classroom;
    const family = await aFamily(store, classroom, { helpers: 2 });
    const twin = await aFamily(store, classroom, { nickname: 'Otter' });
    const { view } = await anEvening(store, classroom, family);
    const code = await inviteColleague(store, scope, { role: 'co', now: NOW });
    await acceptTeacherInvite(store, { code, chatId: aChat(), now: NOW });
    await archiveClass(store, scope, NOW);
    expect(await codeOf(getClass(store, scope))).toBe('not_found');
    expect(await listClasses(store, scope.teacherId)).toEqual([]);
    expect((await ledgerOf(store, view.id)).map(({ status }) => status)).toEqual([
      'failed',
      'failed',
    ]);
    expect(await codeOf(readSlip(store, { code: twin.code, chatId: aChat(), now: NOW }))).toBe(
      'not_found',
    );
    expect(await listFamilyChildren(store, family.helper.id)).toEqual([]);
    expect(await newsOf(store, scope.classId)).toEqual([
      ...Array.from({ length: 3 }, () => 'class_stopped to a helper: planned'),
      'class_stopped to a teacher: planned',
    ]);
    const [word] = (await readTable(store, 'ledger')).filter((row) => row.kind === 'class_stopped');
    expect(new Date(String(word?.not_before)).getTime()).toBe(NOW.getTime() + HOUR_MS);
    const news = await readClassNews(store, { classId: scope.classId, chatId: twin.helper.chatId });
    expect(news).toEqual({ title: 'Kingfisher class', isArchived: true, nicknames: ['Otter'] });
  });
}

function comingBack(opened: () => Store): void {
  it('taken back within the hour tells nobody, and tonight’s drill goes out after all', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const family = await aFamily(store, classroom);
    const { view } = await anEvening(store, classroom, family);
    const { scope } = classroom;
    const actId = await archiveClass(store, scope, NOW);
    const acts = await listActs(store, { teacherId: scope.teacherId, now: NOW });
    expect(acts.map(({ kind }) => kind)).toEqual(['classArchived']);
    await undoAct(store, { teacherId: scope.teacherId, actId, now: NOW });
    expect((await ledgerOf(store, view.id)).map(({ status }) => status)).toEqual(['planned']);
    expect(await newsOf(store, scope.classId)).toEqual(['class_stopped to a helper: failed']);
    expect((await getClass(store, scope)).title).toBe('Kingfisher class');
  });

  it('taken back after families were told tells them that it goes on', async () => {
    const store = opened();
    const classroom = await aClass(store);
    await aFamily(store, classroom);
    const { scope } = classroom;
    const actId = await archiveClass(store, scope, NOW);
    await runSql(store, `update ledger set status = 'sent' where subject_id = '${scope.classId}'`);
    const later = new Date(NOW.getTime() + 2 * HOUR_MS);
    await undoAct(store, { teacherId: scope.teacherId, actId, now: later });
    expect(await newsOf(store, scope.classId)).toEqual([
      'class_resumed to a helper: planned',
      'class_stopped to a helper: sent',
    ]);
  });

  it('leaves nothing else of the class to be undone before the class is back', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    const { teacherId } = scope;
    const breaks = [{ break: { first: MONDAY, last: TUESDAY }, title: 'Fair' }];
    const { actId } = await addBreaks(store, scope, { breaks, now: NOW });
    const archiving = await archiveClass(store, scope, NOW);
    const undo = (act: string) => undoAct(store, { teacherId, actId: act, now: NOW });
    expect(await codeOf(undo(actId ?? ''))).toBe('not_found');
    await undo(archiving);
    expect(await codeOf(undo(actId ?? ''))).toBe('accepted');
    expect(await listBreaks(store, scope.classId, MONDAY)).toEqual([]);
  });
}

/** Breaks that are added several at a time, and taken back. */
export function breakActsSuite(opened: () => Store): void {
  const fair = { break: { first: MONDAY, last: TUESDAY }, title: 'Fair' };
  const fete = { break: { first: FRIDAY, last: FRIDAY }, title: 'Fete' };

  it('the same breaks added twice are there once, and the second time there is nothing to undo', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    const add = (breaks: (typeof fair)[]) => addBreaks(store, scope, { breaks, now: NOW });
    expect((await add([fair, fete])).added).toHaveLength(2);
    expect(await add([fair, fete])).toEqual({ added: [], actId: null });
    expect(await listBreaks(store, scope.classId, MONDAY)).toHaveLength(2);
  });

  it('one faulty break among several adds none of them', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    const turned = { break: { first: TUESDAY, last: MONDAY }, title: 'Fair' };
    const adding = addBreaks(store, scope, { breaks: [fete, turned], now: NOW });
    expect(await refusalOf(adding)).toBe('invalid: break order');
    const many = Array.from({ length: 41 }, (_, at) => ({ ...fete, title: `Fete ${at}` }));
    expect(await refusalOf(addBreaks(store, scope, { breaks: many, now: NOW }))).toBe(
      'invalid: number of breaks',
    );
    expect(await listBreaks(store, scope.classId, MONDAY)).toEqual([]);
  });

  it('a removed break comes back with Undo, unless it was typed in again meanwhile', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    const { teacherId } = scope;
    const [made] = (await addBreaks(store, scope, { breaks: [fair], now: NOW })).added;
    const actId = await removeBreak(store, scope, { breakId: made?.id ?? '', now: NOW });
    await undoAct(store, { teacherId, actId, now: NOW });
    const [back] = await listBreaks(store, scope.classId, MONDAY);
    expect(back).toMatchObject({ first: MONDAY, last: TUESDAY, title: 'Fair' });
    const again = await removeBreak(store, scope, { breakId: back?.id ?? '', now: NOW });
    await addBreaks(store, scope, { breaks: [fair], now: NOW });
    const undoing = undoAct(store, { teacherId, actId: again, now: NOW });
    expect(await refusalOf(undoing)).toBe('conflict: undo');
  });
}
