import { expect, it } from 'vitest';
import {
  acceptSlip,
  leaveAll,
  listDueChildren,
  markReachable,
  markUnreachable,
  type Store,
  setEveningTime,
  updateClass,
} from '../../db/index.ts';
import { AGREEMENT, aChat, aClass, aFamily, onBot } from '../support/people.ts';
import { evening, MONDAY, MORNING, time } from '../support/term.ts';

/** Since when a child's evening is to be expected. */
export function expectedSuite(opened: () => Store) {
  const LATER = evening(MONDAY, 5);
  async function setting() {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom);
    const since = async () =>
      (
        await listDueChildren(opened(), {
          classId: classroom.schoolClass.id,
          day: MONDAY,
          after: null,
          until: time('21:00'),
        })
      ).map((row) => row.since);
    return { classroom, family, since };
  }

  it('since the class changed its days or times', async () => {
    const { classroom, since } = await setting();
    expect(await since()).toEqual([MORNING]);
    const changes = { eveningTime: time('16:00') };
    await updateClass(opened(), classroom.scope, { changes, now: LATER });
    expect(await since()).toEqual([LATER]);
  });

  it('since the family set another time for itself, not when it repeats the one it has', async () => {
    const { family, since } = await setting();
    const set = (text: string, now: Date) =>
      setEveningTime(opened(), { helperId: family.helper.id, time: time(text), now });
    expect(await set('17:30', LATER)).toBe(1);
    expect(await since()).toEqual([MORNING]);
    expect(await set('16:30', LATER)).toBe(1);
    expect(await since()).toEqual([LATER]);
    expect(await set('16:30', evening(MONDAY, 20))).toBe(1);
    expect(await since()).toEqual([LATER]);
  });

  it('since the first of the helpers who are there and within reach has joined', async () => {
    const { family, since } = await setting();
    const chatId = aChat();
    await acceptSlip(opened(), { code: family.code, chatId, agreement: AGREEMENT, now: LATER });
    expect(await since()).toEqual([MORNING]);
    await markUnreachable(opened(), onBot(family.helper.chatId), MORNING);
    expect(await since()).toEqual([LATER]);
    await markReachable(opened(), onBot(family.helper.chatId));
    expect(await since()).toEqual([MORNING]);
    await leaveAll(opened(), { helperId: family.helper.id, now: MORNING });
    expect(await since()).toEqual([LATER]);
  });
}
