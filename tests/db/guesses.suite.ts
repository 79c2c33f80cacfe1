import { describe, expect, it } from 'vitest';
import {
  acceptSlip,
  acceptTeacherInvite,
  CodesPaused,
  GUESS_LIMITS,
  issueTeacherInvite,
  purgeCodeMisses,
  readSlip,
  type Store,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { AGREEMENT, aChat, aChild, aClass, aHelper, aSlip } from '../support/people.ts';
import { readTable } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';

const HOUR = GUESS_LIMITS.minutes;
const at = (minutes: number) => new Date(MORNING.getTime() + minutes * 60_000);
const WRONG = 'AAAAAAAAAAAAAAAAAAAAAA';

/** How codes that open nothing are counted. Each test first forgets everybody's misses. */
export function guessSuite(opened: () => Store): void {
  describe('one account', () => ofOneAccount(opened));
  describe('all accounts together', () => ofAllAccounts(opened));
}

/** Short ways to what the tests try. */
function ways(opened: () => Store) {
  /** Tries a code that opens nothing so often. */
  async function miss(chatId: number, times: number, now = MORNING): Promise<void> {
    for (let i = 0; i < times; i += 1) {
      expect(await codeOf(readSlip(opened(), { code: WRONG, chatId, now }))).toBe('not_found');
    }
  }
  const fresh = async () => purgeCodeMisses(opened(), at(10 * HOUR));

  async function aCode(): Promise<string> {
    const classroom = await aClass(opened());
    return aSlip(opened(), classroom, (await aChild(opened(), classroom)).id);
  }
  return { miss, fresh, aCode };
}

function ofOneAccount(opened: () => Store): void {
  const { miss, fresh, aCode } = ways(opened);
  it('may miss ten times in an hour; then even a right code is not looked at', async () => {
    await fresh();
    const [code, chatId] = [await aCode(), aChat()];
    await miss(chatId, GUESS_LIMITS.ofOne);
    const before = await readTable(opened(), 'code_miss');
    const wanted = { code, chatId, now: MORNING };
    expect(await refusalOf(readSlip(opened(), wanted))).toBe('too_many: codes');
    const joining = acceptSlip(opened(), { ...wanted, agreement: AGREEMENT });
    expect(await refusalOf(joining)).toBe('too_many: codes');
    expect(await refusalOf(acceptTeacherInvite(opened(), wanted))).toBe('too_many: codes');
    expect(await readTable(opened(), 'helper')).not.toContainEqual(
      expect.objectContaining({ chat_id: chatId }),
    );
    // A refused try does not make the wait longer.
    expect(await readTable(opened(), 'code_miss')).toEqual(before);
  });

  it('hears how long it waits, and is let in once its oldest miss is an hour old', async () => {
    await fresh();
    const [code, chatId] = [await aCode(), aChat()];
    await miss(chatId, 1);
    await miss(chatId, GUESS_LIMITS.ofOne - 1, at(20));
    const refused = await readSlip(opened(), { code, chatId, now: at(21) }).catch((error) => error);
    expect(refused).toBeInstanceOf(CodesPaused);
    expect(refused).toHaveProperty('minutes', HOUR - 21);
    expect(await codeOf(readSlip(opened(), { code, chatId, now: at(HOUR - 1) }))).toBe('too_many');
    expect(await codeOf(readSlip(opened(), { code, chatId, now: at(HOUR) }))).toBe('accepted');
  });

  it('keeps its misses through every way a code is taken, and no code is stored', async () => {
    await fresh();
    const chatId = aChat();
    const input = { code: WRONG, chatId, now: MORNING };
    await codeOf(readSlip(opened(), input));
    await codeOf(acceptSlip(opened(), { ...input, agreement: AGREEMENT }));
    await codeOf(acceptTeacherInvite(opened(), input));
    const rows = await readTable(opened(), 'code_miss');
    expect(rows.filter((row) => row.chat_id === chatId)).toHaveLength(3);
    expect(JSON.stringify(rows)).not.toContain(WRONG);
  });

  it('is not counted for a code that is too old, spent, or taken by itself already', async () => {
    await fresh();
    const [code, chatId] = [await aCode(), aChat()];
    await aHelper(opened(), code, chatId);
    const late = at(400 * 24 * 60);
    expect(await codeOf(readSlip(opened(), { code, chatId, now: MORNING }))).toBe('conflict');
    expect(await codeOf(readSlip(opened(), { code, chatId: aChat(), now: late }))).toBe('expired');
    expect(await readTable(opened(), 'code_miss')).toEqual([]);
  });
}

function ofAllAccounts(opened: () => Store): void {
  const { miss, fresh, aCode } = ways(opened);
  /** As many misses as make it busy, of accounts that each stay below every limit of their own. */
  async function busy(): Promise<void> {
    await fresh();
    const each = GUESS_LIMITS.ofOneWhenBusy - 1;
    for (let misses = 0; misses < GUESS_LIMITS.ofAll; misses += each) await miss(aChat(), each);
  }

  it('slow each other down when it is busy, and lock nobody out', async () => {
    await busy();
    const code = await aCode();
    const [calm, clumsy] = [aChat(), aChat()];
    expect(await codeOf(readSlip(opened(), { code, chatId: calm, now: MORNING }))).toBe('accepted');
    await miss(clumsy, GUESS_LIMITS.ofOneWhenBusy - 1);
    expect(await codeOf(readSlip(opened(), { code, chatId: clumsy, now: MORNING }))).toBe(
      'accepted',
    );
    await miss(clumsy, 1);
    expect(await codeOf(readSlip(opened(), { code, chatId: clumsy, now: MORNING }))).toBe(
      'too_many',
    );
    const invite = await issueTeacherInvite(opened(), MORNING);
    const taken = acceptTeacherInvite(opened(), { code: invite, chatId: aChat(), now: MORNING });
    expect(await codeOf(taken)).toBe('accepted');
  });

  it('are forgotten after an hour', async () => {
    await purgeCodeMisses(opened(), at(HOUR - 1));
    expect((await readTable(opened(), 'code_miss')).length).toBeGreaterThan(0);
    await purgeCodeMisses(opened(), at(HOUR));
    expect(await readTable(opened(), 'code_miss')).toEqual([]);
  });
}
