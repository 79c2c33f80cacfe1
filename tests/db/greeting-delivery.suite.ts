import { expect, it } from 'vitest';
import {
  acceptSlip,
  claimDelivery,
  findFollowers,
  giveUpAttempts,
  greetingToSend,
  leaveAll,
  planEvening,
  readDelivery,
  type Store,
  setGreeting,
  settleDelivery,
  wakeWaiting,
} from '../../db/index.ts';
import { addDays, type GreetingTimes, type SchoolDay } from '../../drills/index.ts';
import {
  AGREEMENT,
  aClass,
  aFamily,
  aSlip,
  type Classroom,
  type Family,
} from '../support/people.ts';
import { eveningInput } from '../support/practice.ts';
import { type RawRow, readTable } from '../support/raw-rows.ts';
import { evening, MONDAY, MORNING, TUESDAY, WEDNESDAY } from '../support/term.ts';

const WEEK: GreetingTimes = { evenings: 'first', first: MONDAY, last: addDays(MONDAY, 6) };
const HELLO = { kind: 'text', body: 'A good week to all of you.', botId: null } as const;

/** Short ways to a class with a greeting, its evenings and its rows of the ledger. */
function setting(opened: () => Store) {
  async function greeted(times: Partial<GreetingTimes> = {}) {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const now = MORNING;
    const input = { words: HELLO, times: { ...WEEK, ...times }, now };
    const { id } = await setGreeting(opened(), classroom.scope, input);
    return { classroom, family, id };
  }
  const plan = async (
    classroom: Classroom,
    family: Pick<Family, 'child'>,
    on: SchoolDay = MONDAY,
  ) => planEvening(opened(), await eveningInput(opened(), classroom, family, { on }));
  const rowsOf = async ({ schoolClass }: Classroom, kind: string): Promise<RawRow[]> =>
    (await readTable(opened(), 'ledger'))
      .filter((row) => row.class_id === schoolClass.id && row.kind === kind)
      .toSorted((one, other) => String(one.id).localeCompare(String(other.id)));
  const end = async (row: RawRow | undefined, status: 'sent' | 'failed' | 'unknown', now: Date) => {
    const id = String(row?.id);
    await claimDelivery(opened(), id, now);
    const how = status === 'sent' ? { status, messageId: 9 } : { status, problem: 'test' };
    await settleDelivery(opened(), id, how, now);
    return id;
  };
  return { greeted, plan, rowsOf, end };
}

/** How a greeting is owed, and how evenings follow it. */
export function greetingDeliverySuite(opened: () => Store) {
  const { greeted, plan, rowsOf, end } = setting(opened);

  it('it is owed before the evening, which follows once it has ended, however it ended', async () => {
    for (const status of ['sent', 'failed', 'unknown'] as const) {
      const { classroom, family } = await greeted();
      expect(await plan(classroom, family)).toBe(2);
      const [greeting] = await rowsOf(classroom, 'greeting');
      const [waiting] = await rowsOf(classroom, 'evening');
      expect(await findFollowers(opened(), String(greeting?.id))).toEqual([]);
      const id = await end(greeting, status, evening(MONDAY, 1));
      expect(await findFollowers(opened(), id)).toEqual([waiting?.id]);
    }
  });

  it('an evening waits for its greeting half an hour at most, and is not woken before', async () => {
    const { classroom, family } = await greeted();
    await plan(classroom, family);
    const [greeting] = await rowsOf(classroom, 'greeting');
    expect(new Date(String(greeting?.expires_at))).toEqual(evening(MONDAY, 30));
    const look = { now: evening(MONDAY, 5), enqueuedBefore: evening(MONDAY, 4) };
    await wakeWaiting(opened(), look);
    const enqueued = async () => (await rowsOf(classroom, 'evening')).map((row) => row.enqueued_at);
    const before = await enqueued();
    expect(before.map((at) => new Date(String(at)))).toEqual([evening(MONDAY)]);
    await end(greeting, 'unknown', evening(MONDAY, 6));
    await wakeWaiting(opened(), { now: evening(MONDAY, 7), enqueuedBefore: evening(MONDAY, 6) });
    expect(await enqueued()).not.toEqual(before);
  });

  it('a crash in the middle of it costs the greeting, not the evening', async () => {
    const { classroom, family } = await greeted();
    await plan(classroom, family);
    const [greeting] = await rowsOf(classroom, 'greeting');
    await claimDelivery(opened(), String(greeting?.id), evening(MONDAY));
    const now = evening(MONDAY, 3);
    await giveUpAttempts(opened(), evening(MONDAY, 1), now);
    await wakeWaiting(opened(), { now, enqueuedBefore: evening(MONDAY, 1) });
    expect((await rowsOf(classroom, 'greeting')).map((row) => row.status)).toEqual(['unknown']);
    const [waiting] = await rowsOf(classroom, 'evening');
    expect(new Date(String(waiting?.enqueued_at))).toEqual(now);
  });

  it('two children of one helper get it once, and both evenings follow it', async () => {
    const { classroom, family } = await greeted();
    const otter = await aFamily(opened(), classroom, { nickname: 'Otter' });
    const code = await aSlip(opened(), classroom, otter.child.id);
    const { chatId } = family.helper;
    await acceptSlip(opened(), { code, chatId, agreement: AGREEMENT, now: MORNING });
    await leaveAll(opened(), { helperId: otter.helper.id, now: MORNING });
    await plan(classroom, family);
    await plan(classroom, otter);
    const greetings = await rowsOf(classroom, 'greeting');
    expect(greetings).toHaveLength(1);
    const id = await end(greetings[0], 'sent', evening(MONDAY, 1));
    const evenings = await rowsOf(classroom, 'evening');
    const idOf = (childId: string) => evenings.find((row) => row.subject_id === childId)?.id;
    expect(await findFollowers(opened(), id)).toEqual([
      idOf(family.child.id),
      idOf(otter.child.id),
    ]);
  });

  it('planned by many at once it is owed once', async () => {
    const { classroom, family } = await greeted();
    const input = await eveningInput(opened(), classroom, family);
    const owed = await Promise.all([1, 2, 3, 4].map(() => planEvening(opened(), input)));
    expect(owed.toSorted()).toEqual([0, 0, 0, 2]);
    expect(await rowsOf(classroom, 'greeting')).toHaveLength(1);
  });
}

/** On which evenings a greeting is owed. */
export function greetingEveningsSuite(opened: () => Store) {
  const { greeted, plan, rowsOf, end } = setting(opened);

  it('the first evening of the week has it, the others do not; every evening has it when asked', async () => {
    for (const [evenings, days] of [
      ['first', [MONDAY]],
      ['every', [MONDAY, TUESDAY, WEDNESDAY]],
    ] as const) {
      const { classroom, family } = await greeted({ evenings });
      for (const on of [MONDAY, TUESDAY, WEDNESDAY]) {
        await plan(classroom, family, on);
        await end((await rowsOf(classroom, 'greeting')).at(-1), 'sent', evening(on, 1));
      }
      expect((await rowsOf(classroom, 'greeting')).map((row) => row.day)).toEqual(days);
    }
  });

  it('one that never arrived comes with the next evening instead', async () => {
    const { classroom, family } = await greeted();
    await plan(classroom, family);
    await end((await rowsOf(classroom, 'greeting'))[0], 'failed', evening(MONDAY, 1));
    await plan(classroom, family, TUESDAY);
    expect((await rowsOf(classroom, 'greeting')).map((row) => row.day)).toEqual([MONDAY, TUESDAY]);
  });

  it('before its first and after its last day nobody gets it', async () => {
    const { classroom, family } = await greeted({ first: TUESDAY, last: TUESDAY });
    await plan(classroom, family);
    await plan(classroom, family, WEDNESDAY);
    expect(await rowsOf(classroom, 'greeting')).toEqual([]);
    expect(await rowsOf(classroom, 'evening')).toHaveLength(2);
  });

  it('it is wanted only while an evening waits for it', async () => {
    const { classroom, family, id } = await greeted();
    await plan(classroom, family);
    const [greeting] = await rowsOf(classroom, 'greeting');
    const delivery = await readDelivery(opened(), String(greeting?.id));
    if (!delivery) throw new Error('the greeting is not waiting');
    expect(delivery.to).toBe('helper');
    expect((await greetingToSend(opened(), delivery))?.id).toBe(id);
    await end((await rowsOf(classroom, 'evening'))[0], 'failed', evening(MONDAY, 1));
    expect(await greetingToSend(opened(), delivery)).toBeNull();
  });
}
