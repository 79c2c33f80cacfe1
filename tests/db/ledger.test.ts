import { describe, expect, it } from 'vitest';
import {
  claimDelivery,
  countOutstanding,
  giveUpAttempts,
  isDigestOwed,
  listCopies,
  noteSeen,
  oweAgain,
  oweDigest,
  postponeDelivery,
  REHEARSAL_BOT,
  readDelivery,
  type Store,
  settleDelivery,
  wakeWaiting,
} from '../../db/index.ts';
import { ledgerOf, settleEvening } from '../support/deliveries.ts';
import { aClass, aFamily, onBot } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { dumpAll, readTable, runSql } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends } from '../support/stores.ts';
import { evening, FRIDAY, MONDAY } from '../support/term.ts';
import { botsSuite } from './bots.suite.ts';
import { deadLettersSuite } from './dead-letters.suite.ts';

const NOW = evening(MONDAY);
const LATER = evening(MONDAY, 10);

describe.each(backends)('the ledger on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('while sending', () => attempts(opened));
  describe('a message in somebody else’s hands', () => bystanders(opened));
  describe('what is left to send', () => outstanding(opened));
  describe('after a crash', () => recovery(opened));
  describe('and the unique key', () => uniqueness(opened));
  describe('and what lies in the chats', () => arrived(opened));
  describe('and dead letters', () => deadLettersSuite(opened));
  describe('and several bots', () => botsSuite(opened));
});

async function setting(store: Store, helpers = 1) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom, { helpers });
  const { view } = await anEvening(store, classroom, family);
  const rows = () => ledgerOf(store, view.id);
  const ids = (await rows()).map((row) => String(row.id));
  const row = async () => (await rows())[0];
  return { classroom, family, view, rows, row, ids, id: ids[0] ?? '' };
}

function attempts(opened: () => Store) {
  it('one of many claims at once wins, and the attempt is counted once', async () => {
    const { id, row } = await setting(opened());
    const claims = await Promise.all([1, 2, 3, 4].map(() => claimDelivery(opened(), id, NOW)));
    expect(claims.filter(Boolean)).toHaveLength(1);
    expect(await row()).toMatchObject({ status: 'attempting', tries: 1 });
    expect(await readDelivery(opened(), id)).toBeNull();
  });

  it('a planned message is read with the chat it goes to', async () => {
    const { id, view, family } = await setting(opened());
    expect(await readDelivery(opened(), id)).toMatchObject({
      kind: 'evening',
      day: MONDAY,
      eveningId: view.id,
      chatId: family.helper.chatId,
      notBefore: NOW,
      expiresAt: evening(MONDAY, 180),
    });
  });

  it('a message that arrived keeps its id, whatever is said of it later', async () => {
    const { id, row } = await setting(opened());
    await claimDelivery(opened(), id, NOW);
    await settleDelivery(opened(), id, { status: 'sent', messageId: 41 }, NOW);
    await settleDelivery(opened(), id, { status: 'unknown', problem: 'timeout' }, LATER);
    await postponeDelivery(opened(), id, { notBefore: LATER, problem: 'busy', from: 'attempting' });
    expect(await row()).toMatchObject({ status: 'sent', message_id: 41, problem: null });
    expect(await claimDelivery(opened(), id, LATER)).toBe(false);
  });

  it.each(['failed', 'unknown'] as const)(
    'a message settled as %s is not claimed again',
    async (status) => {
      const { id, row } = await setting(opened());
      await claimDelivery(opened(), id, NOW);
      await settleDelivery(opened(), id, { status, problem: 'test' }, NOW);
      expect(await row()).toMatchObject({ status, problem: 'test', message_id: null });
      expect(await claimDelivery(opened(), id, LATER)).toBe(false);
      expect(await readDelivery(opened(), id)).toBeNull();
    },
  );

  it('a postponed message is planned again, and its second try is counted', async () => {
    const { id, row } = await setting(opened());
    await claimDelivery(opened(), id, NOW);
    await postponeDelivery(opened(), id, { notBefore: LATER, problem: 'busy', from: 'attempting' });
    expect((await readDelivery(opened(), id))?.notBefore).toEqual(LATER);
    expect(await claimDelivery(opened(), id, LATER)).toBe(true);
    expect(await row()).toMatchObject({ status: 'attempting', tries: 2 });
  });
}

function bystanders(opened: () => Store) {
  it('a sender that has not claimed a message leaves another sender’s attempt alone', async () => {
    const { id, row } = await setting(opened());
    await claimDelivery(opened(), id, NOW);
    await postponeDelivery(opened(), id, { notBefore: LATER, problem: 'paused', from: 'planned' });
    await settleDelivery(opened(), id, { status: 'failed', problem: 'late' }, LATER, ['planned']);
    expect(await row()).toMatchObject({ status: 'attempting', problem: null });
  });
}

function outstanding(opened: () => Store) {
  it('what is due or on its way is outstanding; what is not due yet, over or ended is not', async () => {
    await runSql(opened(), `update ledger set status = 'failed'`);
    const left = (now: Date) => countOutstanding(opened(), now);
    const { id } = await setting(opened());
    expect(await left(new Date(NOW.getTime() - 1))).toBe(0);
    expect(await left(NOW)).toBe(1);
    expect(await left(evening(MONDAY, 180))).toBe(0);
    await claimDelivery(opened(), id, NOW);
    expect(await left(NOW)).toBe(1);
    await settleDelivery(opened(), id, { status: 'sent', messageId: 9 }, NOW);
    expect(await left(NOW)).toBe(0);
  });
}

function recovery(opened: () => Store) {
  it('attempts from before the limit become unknown, younger and settled ones do not', async () => {
    // Attempts of other tests are out of the way.
    await giveUpAttempts(opened(), evening(FRIDAY), NOW);
    const old = await setting(opened(), 2);
    const young = await setting(opened());
    await claimDelivery(opened(), old.ids[0] ?? '', NOW);
    await claimDelivery(opened(), old.ids[1] ?? '', NOW);
    await settleDelivery(opened(), old.ids[1] ?? '', { status: 'sent', messageId: 5 }, NOW);
    await claimDelivery(opened(), young.id, LATER);
    expect(await giveUpAttempts(opened(), LATER, LATER)).toBe(1);
    expect((await old.rows()).map((row) => row.status)).toEqual(['unknown', 'sent']);
    expect(await young.row()).toMatchObject({ status: 'attempting' });
    await settleDelivery(opened(), young.id, { status: 'failed', problem: 'test' }, LATER);
  });

  it('exactly what is planned, due and enqueued long ago is enqueued again', async () => {
    // Whatever other tests left waiting is out of the way.
    await runSql(opened(), `update ledger set status = 'failed' where status = 'planned'`);
    await opened().queue.drain(REHEARSAL_BOT, async () => {}, 4);
    const waiting = await setting(opened());
    const notDue = await setting(opened());
    await claimDelivery(opened(), notDue.id, NOW);
    const notBefore = evening(MONDAY, 60);
    await postponeDelivery(opened(), notDue.id, { notBefore, problem: 'busy', from: 'attempting' });
    const taken = await setting(opened());
    await claimDelivery(opened(), taken.id, NOW);
    await opened().queue.drain(REHEARSAL_BOT, async () => {}, 4);
    expect(await wakeWaiting(opened(), { now: LATER, enqueuedBefore: NOW })).toBe(0);
    expect(await wakeWaiting(opened(), { now: LATER, enqueuedBefore: LATER })).toBe(1);
    expect(await wakeWaiting(opened(), { now: LATER, enqueuedBefore: LATER })).toBe(0);
    const woken: string[] = [];
    await opened().queue.drain(REHEARSAL_BOT, async (id) => void woken.push(id), 4);
    expect(woken).toEqual([waiting.id]);
  });
}

function uniqueness(opened: () => Store) {
  it('a nudge is owed once to each helper, also when it is asked for at once', async () => {
    const { classroom, family, view, rows } = await setting(opened(), 2);
    const nudge = {
      kind: 'nudge',
      eveningId: view.id,
      childId: family.child.id,
      classId: classroom.schoolClass.id,
      day: MONDAY,
      expiresAt: evening(MONDAY, 180),
      now: LATER,
    } as const;
    const owed = await Promise.all([1, 2, 3].map(() => oweAgain(opened(), nudge)));
    expect(owed.sort()).toEqual([0, 0, 2]);
    expect(await oweAgain(opened(), { ...nudge, kind: 'reminder' })).toBe(2);
    const kinds = (await rows()).map((row) => row.kind).sort();
    expect(kinds).toEqual(['evening', 'evening', 'nudge', 'nudge', 'reminder', 'reminder']);
  });

  it('a digest is owed once to each teacher: text, picture and table', async () => {
    const { schoolClass, teacher } = await aClass(opened());
    const key = { classId: schoolClass.id, day: FRIDAY };
    const digest = { ...key, expiresAt: evening(FRIDAY, 600), now: evening(FRIDAY, 90) };
    expect(await isDigestOwed(opened(), key)).toBe(false);
    expect(await oweDigest(opened(), digest)).toBe(3);
    expect(await oweDigest(opened(), digest)).toBe(0);
    expect(await isDigestOwed(opened(), key)).toBe(true);
    expect(await isDigestOwed(opened(), { ...key, day: MONDAY })).toBe(false);
    const own = (await readTable(opened(), 'ledger')).filter(
      (row) => row.subject_id === schoolClass.id,
    );
    expect(own.map((row) => row.kind).sort()).toEqual(['digest', 'digest_picture', 'digest_table']);
    const delivery = await readDelivery(opened(), String(own[0]?.id));
    expect(delivery?.chatId).toBe(teacher.chatId);
  });
}

function arrived(opened: () => Store) {
  it('a tap proves one unknown message of the tapper’s own chat', async () => {
    const { family, view, rows, classroom } = await setting(opened(), 2);
    const childId = family.child.id;
    const classId = classroom.schoolClass.id;
    const again = { eveningId: view.id, childId, classId, day: MONDAY, expiresAt: LATER, now: NOW };
    await oweAgain(opened(), { ...again, kind: 'nudge' });
    await settleEvening(opened(), view.id, 'unknown', NOW);
    const seen = {
      ...{ eveningId: view.id, ...onBot(family.helper.chatId) },
      ...{ messageId: 9, now: LATER },
    };
    await noteSeen(opened(), seen);
    await noteSeen(opened(), seen);
    const sent = (await rows()).filter((row) => row.status === 'sent');
    expect(sent.map((row) => [row.recipient_id, row.message_id, row.problem])).toEqual([
      [family.helper.id, 9, null],
    ]);
    expect((await rows()).filter((row) => row.status === 'unknown')).toHaveLength(3);
    await noteSeen(opened(), { ...seen, messageId: 10 });
    expect((await rows()).filter((row) => row.status === 'unknown')).toHaveLength(2);
  });

  it('a tap in a chat that was owed nothing, or on a message known to have arrived, proves nothing', async () => {
    const { family, view, rows } = await setting(opened());
    const stranger = await setting(opened());
    await settleEvening(opened(), view.id, 'sent', NOW, 30);
    await settleEvening(opened(), stranger.view.id, 'unknown', NOW);
    const before = await dumpAll(opened());
    const see = (eveningId: string, chatId: number) =>
      noteSeen(opened(), { eveningId, ...onBot(chatId), messageId: 30, now: LATER });
    await see(view.id, family.helper.chatId);
    await see(stranger.view.id, family.helper.chatId);
    await see(view.id, stranger.family.helper.chatId);
    expect(await dumpAll(opened())).toEqual(before);
    expect((await rows()).map((row) => row.message_id)).toEqual([30]);
  });

  it('the copies of an evening are the messages that surely arrived', async () => {
    const { family, view, ids, classroom } = await setting(opened(), 2);
    const other = await aFamily(opened(), classroom, { nickname: 'Otto' });
    const theirs = await anEvening(opened(), classroom, other);
    await settleEvening(opened(), theirs.view.id, 'sent', NOW, 70);
    expect(await listCopies(opened(), view.id)).toEqual([]);
    await claimDelivery(opened(), ids[0] ?? '', NOW);
    await settleDelivery(opened(), ids[0] ?? '', { status: 'sent', messageId: 60 }, NOW);
    await claimDelivery(opened(), ids[1] ?? '', NOW);
    await settleDelivery(opened(), ids[1] ?? '', { status: 'unknown', problem: 'timeout' }, NOW);
    const [copy, ...more] = await listCopies(opened(), view.id);
    expect([copy?.messageId, more]).toEqual([60, []]);
    expect(family.helpers.map((helper) => helper.chatId)).toContain(copy?.chatId);
  });
}
