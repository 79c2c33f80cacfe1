import { describe, expect, it } from 'vitest';
import {
  acceptTeacherInvite,
  claimDelivery,
  INVITE_DAYS,
  issueTeacherInvite,
  leaveAll,
  listCopies,
  listFamilyChildren,
  readDelivery,
  type Store,
} from '../../db/index.ts';
import { codeOf } from '../support/code-of.ts';
import { ledgerOf, settleEvening } from '../support/deliveries.ts';
import { AGREEMENT, aChat, aClass, aFamily, aHelper } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends } from '../support/stores.ts';
import { evening, MONDAY, MORNING } from '../support/term.ts';
import { languagesSuite } from './languages.suite.ts';
import { slipSuite } from './slips.suite.ts';
import { waySuite } from './way.suite.ts';

describe.each(backends)('joining on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('as a family', () => families(opened));
  describe('and leaving', () => leaving(opened));
  describe('as a teacher', () => invitations(opened));
  describe('with a slip', () => slipSuite(opened));
  describe('and the way an evening is shown, which', () => waySuite(opened));
  describe('and the language that is spoken:', () => languagesSuite(opened));
});

async function consentsOf(store: Store, helperId: string) {
  const rows = await readTable(store, 'consent');
  return rows
    .filter((row) => row.helper_id === helperId)
    .sort((a, b) => (String(a.id) < String(b.id) ? -1 : 1));
}

function families(opened: () => Store) {
  it('an agreement is kept with its text version, language, evidence and instant', async () => {
    const { helper, child } = await aFamily(opened(), await aClass(opened()));
    const [consent, ...more] = await consentsOf(opened(), helper.id);
    expect(more).toEqual([]);
    expect(consent).toMatchObject({
      child_id: child.id,
      text_version: AGREEMENT.textVersion,
      language: AGREEMENT.language,
      evidence: { messageId: AGREEMENT.messageId },
      withdrawn_at: null,
    });
    expect(new Date(String(consent?.agreed_at))).toEqual(MORNING);
  });

  it('a helper of two children agrees for each and is one helper', async () => {
    const classroom = await aClass(opened());
    const first = await aFamily(opened(), classroom);
    const second = await aFamily(opened(), classroom, { nickname: 'Otto' });
    const again = await aHelper(opened(), second.code, first.helper.chatId);
    expect(again.id).toBe(first.helper.id);
    const children = await listFamilyChildren(opened(), again.id);
    expect(children.map((row) => row.nickname)).toEqual(['Wren', 'Otto']);
    expect(await consentsOf(opened(), again.id)).toHaveLength(2);
  });
}

function leaving(opened: () => Store) {
  it('leaving withdraws every agreement and leaves other helpers alone', async () => {
    const { helpers, helper } = await aFamily(opened(), await aClass(opened()), { helpers: 2 });
    const left = await leaveAll(opened(), { helperId: helper.id, now: evening(MONDAY) });
    expect(left).toBe(1);
    const [own] = await consentsOf(opened(), helper.id);
    expect(new Date(String(own?.withdrawn_at))).toEqual(evening(MONDAY));
    const [others] = await consentsOf(opened(), helpers[1]?.id ?? '');
    expect(others).toMatchObject({ withdrawn_at: null });
  });

  it('leaving twice changes nothing', async () => {
    const { helper } = await aFamily(opened(), await aClass(opened()));
    await leaveAll(opened(), { helperId: helper.id, now: MORNING });
    const before = await dumpAll(opened());
    expect(await leaveAll(opened(), { helperId: helper.id, now: evening(MONDAY) })).toBe(0);
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('rejoining works, with an agreement of its own beside the withdrawn one', async () => {
    const { helper, code, child } = await aFamily(opened(), await aClass(opened()));
    await leaveAll(opened(), { helperId: helper.id, now: MORNING });
    expect((await aHelper(opened(), code, helper.chatId)).id).toBe(helper.id);
    const children = await listFamilyChildren(opened(), helper.id);
    expect(children.map((row) => row.id)).toEqual([child.id]);
    const withdrawn = (await consentsOf(opened(), helper.id)).map((row) => row.withdrawn_at);
    expect(withdrawn.map((at) => at === null).sort()).toEqual([false, true]);
  });

  it('a message still owed to a helper who left is not sent', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom, { helpers: 2 });
    const { view } = await anEvening(opened(), classroom, family);
    await leaveAll(opened(), { helperId: family.helper.id, now: evening(MONDAY) });
    for (const row of await ledgerOf(opened(), view.id)) {
      const id = String(row.id);
      const stays = row.recipient_id !== family.helper.id;
      expect((await readDelivery(opened(), id)) !== null).toBe(stays);
      expect(await claimDelivery(opened(), id, evening(MONDAY))).toBe(stays);
    }
  });

  it('a message in the chat of a helper who left is not brought up to date any more', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom, { helpers: 2 });
    const { view } = await anEvening(opened(), classroom, family);
    await settleEvening(opened(), view.id, 'sent', evening(MONDAY));
    await leaveAll(opened(), { helperId: family.helper.id, now: evening(MONDAY) });
    const chats = (await listCopies(opened(), view.id)).map((copy) => copy.chatId);
    expect(chats).toEqual([family.helpers[1]?.chatId]);
  });
}

function invitations(opened: () => Store) {
  it('an invitation’s code is stored nowhere, and makes one teacher', async () => {
    const code = await issueTeacherInvite(opened(), MORNING);
    expect(code).toMatch(/^[A-Za-z0-9_-]{22}$/);
    const accept = (chatId: number) =>
      codeOf(acceptTeacherInvite(opened(), { code, chatId, now: MORNING }));
    expect(await accept(aChat())).toBe('accepted');
    expect(await accept(aChat())).toBe('not_found');
    expect([...(await dumpAll(opened())).values()].join('\n')).not.toContain(code);
  });

  it('an invitation taken by two accounts at once makes one of them a teacher', async () => {
    const code = await issueTeacherInvite(opened(), MORNING);
    const both = [aChat(), aChat()].map((chatId) =>
      codeOf(acceptTeacherInvite(opened(), { code, chatId, now: MORNING })),
    );
    expect((await Promise.all(both)).sort()).toEqual(['accepted', 'not_found']);
  });

  it('an expired or unknown invitation is not_found', async () => {
    const code = await issueTeacherInvite(opened(), MORNING);
    const end = new Date(MORNING.getTime() + INVITE_DAYS * 86_400_000);
    const accept = (input: { code: string; now: Date }) =>
      codeOf(acceptTeacherInvite(opened(), { ...input, chatId: aChat() }));
    expect(await accept({ code, now: end })).toBe('not_found');
    expect(await accept({ code: 'A'.repeat(22), now: MORNING })).toBe('not_found');
    expect(await accept({ code, now: new Date(end.getTime() - 1) })).toBe('accepted');
  });

  it('a teacher who follows a second invitation stays one and leaves it unused', async () => {
    const chatId = aChat();
    const [first, second] = [
      await issueTeacherInvite(opened(), MORNING),
      await issueTeacherInvite(opened(), MORNING),
    ];
    const teacher = await acceptTeacherInvite(opened(), { code: first, chatId, now: MORNING });
    const input = { code: second, chatId, now: MORNING };
    expect(await acceptTeacherInvite(opened(), input)).toEqual(teacher);
    expect(await codeOf(acceptTeacherInvite(opened(), { ...input, chatId: aChat() }))).toBe(
      'accepted',
    );
  });
}
