import { expect, it } from 'vitest';
import {
  acceptTeacherInvite,
  archiveClass,
  becomeTeacher,
  cancelInvite,
  getClass,
  INVITE_DAYS,
  inviteColleague,
  issueTeacherInvite,
  leaveClass,
  listActs,
  listClasses,
  listOpenInvites,
  listTeachers,
  oweDigest,
  readDelivery,
  removeTeacher,
  type Store,
  type TeacherRole,
  undoAct,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { aChat, aClass, aTeacher, type Classroom } from '../support/people.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { evening, MONDAY } from '../support/term.ts';

const NOW = evening(MONDAY, 10);
const WEEK_MS = INVITE_DAYS * 86_400_000;

/** A link of the class, opened by a chat account. */
async function joins(
  store: Store,
  { scope }: Classroom,
  role: TeacherRole,
  chatId = aChat(),
): Promise<string> {
  const code = await inviteColleague(store, scope, { role, now: NOW });
  return (await acceptTeacherInvite(store, { code, chatId, now: NOW })).id;
}

async function rolesOf(store: Store, classroom: Classroom, teacherId = classroom.teacher.id) {
  const scope = { ...classroom.scope, teacherId };
  return (await listTeachers(store, scope)).map(
    (each) => `${each.role}${each.isYou ? ' you' : ''}`,
  );
}

/** Links to a class, who they make a teacher of what, and how that ends. */
export function colleaguesSuite(opened: () => Store): void {
  links(opened);
  deadLinks(opened);
  handingOver(opened);
  leaving(opened);
}

function links(opened: () => Store): void {
  it('a link makes a stranger a co-teacher of this class, once, and its code is stored nowhere', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const code = await inviteColleague(store, classroom.scope, { role: 'co', now: NOW });
    const { id, joined } = await acceptTeacherInvite(store, { code, chatId: aChat(), now: NOW });
    expect(joined).toEqual({ classId: classroom.scope.classId, role: 'co' });
    expect((await listClasses(store, id)).map((each) => each.id)).toEqual([
      classroom.scope.classId,
    ]);
    const again = acceptTeacherInvite(store, { code, chatId: aChat(), now: NOW });
    expect(await codeOf(again)).toBe('not_found');
    expect([...(await dumpAll(store)).values()].join('\n')).not.toContain(code);
    expect(await rolesOf(store, classroom)).toEqual(['lead you', 'co']);
  });

  it('whoever took a link and opens it again is where it led, also a week later', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const code = await inviteColleague(store, classroom.scope, { role: 'co', now: NOW });
    const chatId = aChat();
    const first = await acceptTeacherInvite(store, { code, chatId, now: NOW });
    const later = new Date(NOW.getTime() + WEEK_MS);
    expect(await acceptTeacherInvite(store, { code, chatId, now: later })).toEqual(first);
  });

  it('a new link kills the one before for the same role, and leaves the other role’s alone', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    const issue = (role: TeacherRole) => inviteColleague(store, scope, { role, now: NOW });
    const [old, lead] = [await issue('co'), await issue('lead')];
    await issue('co');
    const take = (code: string) =>
      codeOf(acceptTeacherInvite(store, { code, chatId: aChat(), now: NOW }));
    expect(await take(old)).toBe('not_found');
    expect(await take(lead)).toBe('accepted');
  });
}

function deadLinks(opened: () => Store): void {
  it('a cancelled, an old and a guessed code are all the same to whoever tries them', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    const take = (code: string, now = NOW) =>
      refusalOf(acceptTeacherInvite(store, { code, chatId: aChat(), now }));
    const cancelled = await inviteColleague(store, scope, { role: 'lead', now: NOW });
    await cancelInvite(store, scope, { role: 'lead', now: NOW });
    const old = await inviteColleague(store, scope, { role: 'co', now: NOW });
    const answers = [
      await take(cancelled),
      await take(old, new Date(NOW.getTime() + WEEK_MS)),
      await take('A'.repeat(22)),
    ];
    expect(new Set(answers)).toEqual(new Set(['not_found: teacher invitation']));
    expect((await listOpenInvites(store, scope, NOW)).map(({ role }) => role)).toEqual(['co']);
  });

  it('a teacher who teaches the class already leaves the link for somebody else', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const code = await inviteColleague(store, classroom.scope, { role: 'co', now: NOW });
    const { chatId } = classroom.teacher;
    const own = await acceptTeacherInvite(store, { code, chatId, now: NOW });
    expect(own.joined?.role).toBe('lead');
    expect(await codeOf(acceptTeacherInvite(store, { code, chatId: aChat(), now: NOW }))).toBe(
      'accepted',
    );
  });
}

function handingOver(opened: () => Store): void {
  it('handing over makes the taker the one lead, tells the giver, and the giver may leave then', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { scope } = classroom;
    const stays = await inviteColleague(store, scope, { role: 'co', now: NOW });
    const taker = await joins(store, classroom, 'lead');
    expect(await rolesOf(store, classroom)).toEqual(['lead', 'co you']);
    expect(await refusalOf(inviteColleague(store, scope, { role: 'co', now: NOW }))).toBe(
      'conflict: lead only',
    );
    // What the former lead gave away is no longer good.
    expect(
      await codeOf(acceptTeacherInvite(store, { code: stays, chatId: aChat(), now: NOW })),
    ).toBe('not_found');
    const told = (await readTable(store, 'ledger')).filter(
      (row) => row.kind === 'handed_over' && row.class_id === scope.classId,
    );
    expect(told.map((row) => row.recipient_id)).toEqual([scope.teacherId]);
    await leaveClass(store, scope, NOW);
    expect(await codeOf(getClass(store, scope))).toBe('not_found');
    expect(await rolesOf(store, classroom, taker)).toEqual(['lead you']);
  });

  it('two people who open the link to hand over at once: one is the lead, the other nobody', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const code = await inviteColleague(store, classroom.scope, { role: 'lead', now: NOW });
    const both = [aChat(), aChat()].map((chatId) =>
      codeOf(acceptTeacherInvite(store, { code, chatId, now: NOW })),
    );
    expect((await Promise.all(both)).sort()).toEqual(['accepted', 'not_found']);
    expect(await rolesOf(store, classroom)).toEqual(['lead', 'co you']);
  });

  it('a co-teacher does not invite, remove, hand over or archive', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const scope = { ...classroom.scope, teacherId: await joins(store, classroom, 'co') };
    const leadId = classroom.teacher.id;
    const before = await dumpAll(store);
    for (const attempt of [
      () => inviteColleague(store, scope, { role: 'co', now: NOW }),
      () => cancelInvite(store, scope, { role: 'lead', now: NOW }),
      () => removeTeacher(store, scope, { teacherId: leadId, now: NOW }),
      () => archiveClass(store, scope, NOW),
    ]) {
      expect(await refusalOf(attempt())).toBe('conflict: lead only');
    }
    expect(await dumpAll(store)).toEqual(before);
  });
}

function leaving(opened: () => Store): void {
  it('a co-teacher who is removed sees nothing and gets no digest, and is back after Undo', async () => {
    const store = opened();
    const classroom = await aClass(store);
    const { scope } = classroom;
    const removed = await joins(store, classroom, 'co');
    const expiresAt = evening(MONDAY, 300);
    await oweDigest(store, { classId: scope.classId, day: MONDAY, expiresAt, now: NOW });
    const actId = await removeTeacher(store, scope, { teacherId: removed, now: NOW });
    expect(await codeOf(getClass(store, { ...scope, teacherId: removed }))).toBe('not_found');
    const rows = (await readTable(store, 'ledger')).filter((row) => row.recipient_id === removed);
    expect(rows).toHaveLength(3);
    for (const { id } of rows) expect(await readDelivery(store, String(id))).toBeNull();
    await undoAct(store, { teacherId: scope.teacherId, actId, now: NOW });
    expect(await rolesOf(store, classroom, removed)).toEqual(['lead', 'co you']);
  });

  it('the lead neither leaves nor is removed: the class would have nobody', async () => {
    const store = opened();
    const { scope } = await aClass(store);
    expect(await refusalOf(leaveClass(store, scope, NOW))).toBe('conflict: lead leaves');
    const { teacherId } = scope;
    expect(await codeOf(removeTeacher(store, scope, { teacherId, now: NOW }))).toBe('not_found');
    const stranger = await aTeacher(store);
    expect(await codeOf(removeTeacher(store, scope, { teacherId: stranger.id, now: NOW }))).toBe(
      'not_found',
    );
  });

  it('where anybody may become a teacher, doing so twice is once; the operator’s links still work', async () => {
    const store = opened();
    const chatId = aChat();
    const first = await becomeTeacher(store, { chatId, now: NOW });
    expect(await becomeTeacher(store, { chatId, now: NOW })).toEqual(first);
    const code = await issueTeacherInvite(store, NOW);
    expect((await acceptTeacherInvite(store, { code, chatId, now: NOW })).id).toBe(first.id);
    expect(await listActs(store, { teacherId: first.id, now: NOW })).toEqual([]);
  });
}
