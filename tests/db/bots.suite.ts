import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  createClass,
  knowBot,
  listChildren,
  listCopies,
  markReachable,
  markUnreachable,
  moveToBot,
  noteSeen,
  oweHelpers,
  REHEARSAL_BOT,
  readClassBot,
  type Store,
} from '../../db/index.ts';
import { codeOf } from '../support/code-of.ts';
import { ledgerOf, settleEvening } from '../support/deliveries.ts';
import { aFamily, aTeacher, type Classroom, SETTINGS } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { runSql } from '../support/raw-rows.ts';
import { evening, MONDAY, MORNING } from '../support/term.ts';

const [NORTH, SOUTH] = [9001, 9002];
const NOW = evening(MONDAY);
const NOBODY = '00000000-0000-7000-8000-000000000000';

/** Classes of several bots on one database. Runs on the store that ledger.test.ts opens. */
export function botsSuite(opened: () => Store): void {
  beforeAll(async () => {
    await runSql(opened(), 'delete from rate');
    await knowBot(opened(), { botId: NORTH, username: 'north_bot' });
    await knowBot(opened(), { botId: SOUTH, username: 'south_bot' });
  });
  afterAll(() => runSql(opened(), 'delete from rate'));

  const school = schoolOf(opened);
  describe('own their classes', () => owning(opened, school));
  describe('have chats of their own', () => chats(opened, school));
}

/** Makes classes, and looks at what waits for a bot. */
function schoolOf(opened: () => Store) {
  const aClassOf = async (botId: number): Promise<Classroom> => {
    const teacher = await aTeacher(opened());
    const made = { teacherId: teacher.id, settings: SETTINGS, botId, now: MORNING };
    const schoolClass = await createClass(opened(), made);
    return { teacher, schoolClass, scope: { teacherId: teacher.id, classId: schoolClass.id } };
  };
  const sentBy = async (botId: number) => {
    const ids: string[] = [];
    await opened().queue.drain(botId, async (id) => void ids.push(id), 4);
    return ids;
  };
  return { aClassOf, sentBy };
}

type School = ReturnType<typeof schoolOf>;

function owning(opened: () => Store, { aClassOf, sentBy }: School) {
  it('a class belongs to the bot it was made with, and its messages wait for that one', async () => {
    const classroom = await aClassOf(NORTH);
    expect(await readClassBot(opened(), classroom.scope.classId)).toEqual({
      botId: NORTH,
      username: 'north_bot',
    });
    const { view } = await anEvening(opened(), classroom, await aFamily(opened(), classroom));
    const [row] = await ledgerOf(opened(), view.id);
    expect(row?.bot_id).toBe(NORTH);
    expect(await sentBy(SOUTH)).toEqual([]);
    expect(await sentBy(NORTH)).toEqual([row?.id]);
  });

  it('a class that moves takes what waits along; what has arrived stays the old bot’s', async () => {
    const classroom = await aClassOf(NORTH);
    const { classId } = classroom.scope;
    const wren = await aFamily(opened(), classroom);
    const otter = await aFamily(opened(), classroom, { nickname: 'Otter' });
    const sent = await anEvening(opened(), classroom, wren);
    const waiting = await anEvening(opened(), classroom, otter);
    await settleEvening(opened(), sent.view.id, 'sent', NOW, 40);
    expect(await moveToBot(opened(), { classId, botId: SOUTH })).toEqual({
      ...{ botId: SOUTH, username: 'south_bot', waiting: 1 },
    });
    const [moved] = await ledgerOf(opened(), waiting.view.id);
    expect(moved).toMatchObject({ bot_id: SOUTH, status: 'planned' });
    expect(await sentBy(SOUTH)).toEqual([moved?.id]);
    expect(await listCopies(opened(), sent.view.id)).toEqual([
      { botId: NORTH, chatId: wren.helper.chatId, messageId: 40 },
    ]);
    expect((await readClassBot(opened(), classId)).botId).toBe(SOUTH);
  });

  it('a class does not move to a bot that never ran, and a class that is none does not move', async () => {
    const { scope } = await aClassOf(NORTH);
    const unknown = moveToBot(opened(), { classId: scope.classId, botId: 4711 });
    expect(await codeOf(unknown)).toBe('not_found');
    expect((await readClassBot(opened(), scope.classId)).botId).toBe(NORTH);
    expect(await codeOf(moveToBot(opened(), { classId: NOBODY, botId: SOUTH }))).toBe('not_found');
  });
}

function chats(opened: () => Store, { aClassOf }: School) {
  it('a helper who has blocked one bot is still reached by the other', async () => {
    const [north, south] = [await aClassOf(NORTH), await aClassOf(SOUTH)];
    const { helper, child } = await aFamily(opened(), north);
    const sibling = await aFamily(opened(), south);
    await runSql(
      opened(),
      `update helper_child set helper_id = '${helper.id}' where helper_id = '${sibling.helper.id}'`,
    );
    await markUnreachable(opened(), { botId: NORTH, chatId: helper.chatId }, MORNING);
    const reachable = async ({ scope }: Classroom) =>
      (await listChildren(opened(), scope)).map((row) => row.reachable);
    expect([await reachable(north), await reachable(south)]).toEqual([[0], [1]]);
    const owe = (subjectId: string, classId: string) => {
      const owed = { kind: 'moved', subjectId, classId, day: MONDAY, eveningId: null } as const;
      return oweHelpers(opened(), { ...owed, notBefore: NOW, expiresAt: evening(MONDAY, 60) }, NOW);
    };
    expect(await owe(child.id, north.scope.classId)).toBe(0);
    expect(await owe(sibling.child.id, south.scope.classId)).toBe(1);
    await markReachable(opened(), { botId: NORTH, chatId: helper.chatId });
    expect(await owe(child.id, north.scope.classId)).toBe(1);
  });

  it('a tap on a message of one bot proves nothing about a message of another', async () => {
    const classroom = await aClassOf(NORTH);
    const { helper, ...family } = await aFamily(opened(), classroom);
    const { view } = await anEvening(opened(), classroom, { helper, ...family });
    await settleEvening(opened(), view.id, 'unknown', NOW);
    const status = async () => (await ledgerOf(opened(), view.id))[0]?.status;
    const seen = { eveningId: view.id, chatId: helper.chatId, messageId: 9, now: NOW };
    await noteSeen(opened(), { ...seen, botId: REHEARSAL_BOT });
    expect(await status()).toBe('unknown');
    await noteSeen(opened(), { ...seen, botId: NORTH });
    expect(await status()).toBe('sent');
  });
}
