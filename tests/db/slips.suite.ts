import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import {
  acceptSlip,
  childrenGivenSlips,
  countSlips,
  issueSlips,
  keepSlips,
  readJoinedSlip,
  readSlip,
  SLIP_LIMITS,
  type Store,
  writeSlips,
} from '../../db/index.ts';
import { codeOf } from '../support/code-of.ts';
import { AGREEMENT, aChat, aChild, aClass, aFamily, aHelper, aSlip } from '../support/people.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';

const DAY_MS = 86_400_000;
const AFTER = (ms: number) => new Date(MORNING.getTime() + ms);

/** How a slip opens. Runs on the store that joining.test.ts opens. */
export function slipSuite(opened: () => Store): void {
  describe('as stored', () => storage(opened));
  describe('as written', () => written(opened));
  describe('as refused', () => refusals(opened));
  describe('under a rush', () => rush(opened));
}

async function setting(store: Store) {
  const classroom = await aClass(store);
  const child = await aChild(store, classroom);
  return { classroom, child, code: await aSlip(store, classroom, child.id) };
}

const join = (store: Store, code: string, chatId: number, now = MORNING) =>
  acceptSlip(store, { code, chatId, agreement: AGREEMENT, now });

async function slipOf(store: Store, childId: string) {
  const rows = await readTable(store, 'slip');
  return rows.filter((row) => row.child_id === childId);
}

function storage(opened: () => Store) {
  it('a code has 22 base64url characters, 128 random bits', async () => {
    const { code } = await setting(opened());
    expect(code).toMatch(/^[A-Za-z0-9_-]{22}$/);
    expect(Buffer.from(code, 'base64url').length * 8).toBe(128);
  });

  it('a slip keeps the SHA-256 of its code and no table keeps the code', async () => {
    const { child, code } = await setting(opened());
    await aHelper(opened(), code);
    const hash = createHash('sha256').update(code).digest('hex');
    expect((await slipOf(opened(), child.id)).map((row) => row.code_hash)).toEqual([hash]);
    const stored = [...(await dumpAll(opened())).values()].join('\n');
    expect(stored).toContain(hash);
    expect(stored).not.toContain(code);
  });

  it('a code opens its child and class, and reading it uses nothing up', async () => {
    const { child, code } = await setting(opened());
    const before = await dumpAll(opened());
    const open = await readSlip(opened(), { code, chatId: aChat(), now: MORNING });
    expect(open).toMatchObject({
      childId: child.id,
      nickname: 'Wren',
      classTitle: 'Kingfisher class',
    });
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('no children, no slips', async () => {
    const { classroom } = await setting(opened());
    expect(await issueSlips(opened(), classroom.scope, { childIds: [], now: MORNING })).toEqual([]);
  });

  it('the same child named twice gets one slip', async () => {
    const { classroom, child } = await setting(opened());
    const childIds = [child.id, child.id];
    const issued = await issueSlips(opened(), classroom.scope, { childIds, now: MORNING });
    expect(issued.map((slip) => slip.child.id)).toEqual([child.id]);
  });
}

function written(opened: () => Store) {
  it('stores nothing and opens nothing, and the child’s earlier slip still works', async () => {
    const { classroom, child, code } = await setting(opened());
    const before = await dumpAll(opened());
    const [slip] = await writeSlips(opened(), classroom.scope, [child.id]);
    expect(slip).toMatchObject({ child: { id: child.id, number: 1, nickname: 'Wren' } });
    expect(await dumpAll(opened())).toEqual(before);
    expect(await codeOf(join(opened(), slip?.code ?? '', aChat()))).toBe('not_found');
    expect(await codeOf(join(opened(), code, aChat()))).toBe('accepted');
  });

  it('opens its child once it is kept, and the earlier slip is dead from then on', async () => {
    const { classroom, child, code } = await setting(opened());
    const slips = await writeSlips(opened(), classroom.scope, [child.id]);
    await keepSlips(opened(), classroom.scope, { slips, now: MORNING });
    expect(await codeOf(join(opened(), code, aChat()))).toBe('not_found');
    expect(await codeOf(join(opened(), slips[0]?.code ?? '', aChat()))).toBe('accepted');
  });

  it('counts in its class once kept, and goes on counting after it is dead', async () => {
    const { classroom, child } = await setting(opened());
    const other = await setting(opened());
    const counts = () =>
      Promise.all([classroom, other.classroom].map(({ scope }) => countSlips(opened(), scope)));
    expect(await counts()).toEqual([1, 1]);
    await writeSlips(opened(), classroom.scope, [child.id]);
    expect(await counts()).toEqual([1, 1]);
    await aSlip(opened(), classroom, child.id);
    expect(await counts()).toEqual([2, 1]);
  });

  it('tells its child from those given none after so many slips of the class', async () => {
    const { classroom, child } = await setting(opened());
    const sibling = await aFamily(opened(), classroom, { nickname: 'Otto' });
    const given = async (after: number) => [
      ...(await childrenGivenSlips(opened(), classroom.scope, after)),
    ];
    expect(await given(2)).toEqual([]);
    await issueSlips(opened(), classroom.scope, { childIds: [child.id], now: AFTER(1) });
    expect(await given(2)).toEqual([child.id]);
    expect((await given(1)).sort()).toEqual([child.id, sibling.child.id].sort());
    expect(await given(3)).toEqual([]);
    expect(await given(Number('none'))).toEqual([]);
  });

  it('given at the instant of an earlier one makes both children count as given later', async () => {
    const { classroom, child } = await setting(opened());
    const sibling = await aFamily(opened(), classroom, { nickname: 'Otto' });
    const given = await childrenGivenSlips(opened(), classroom.scope, 1);
    expect([...given].sort()).toEqual([child.id, sibling.child.id].sort());
  });
}

function refusals(opened: () => Store) {
  // That a code was tried in vain is kept (see guesses.suite.ts), and nothing else.
  const besidesMisses = async () =>
    new Map([...(await dumpAll(opened()))].filter(([table]) => table !== 'code_miss'));

  async function refused(code: string, chatId: number, now: Date) {
    const before = await besidesMisses();
    const reading = await codeOf(readSlip(opened(), { code, chatId, now }));
    const joining = await codeOf(join(opened(), code, chatId, now));
    expect(await besidesMisses()).toEqual(before);
    expect(joining).toBe(reading);
    return joining;
  }

  it('an unknown code is not_found', async () => {
    expect(await refused('A'.repeat(22), aChat(), MORNING)).toBe('not_found');
  });

  it('a slip works until its last millisecond and is expired from then on', async () => {
    const { code } = await setting(opened());
    const end = SLIP_LIMITS.days * DAY_MS;
    expect(await refused(code, aChat(), AFTER(end))).toBe('expired');
    expect(await codeOf(join(opened(), code, aChat(), AFTER(end - 1)))).toBe('accepted');
  });

  it('a slip lets in as many accounts as it has uses, then it is used_up', async () => {
    const { code } = await setting(opened());
    for (let use = 0; use < SLIP_LIMITS.uses; use += 1) await aHelper(opened(), code);
    expect(await refused(code, aChat(), MORNING)).toBe('used_up');
  });

  it('a fresh slip kills the earlier one and leaves other children’s alone', async () => {
    const { classroom, child, code } = await setting(opened());
    const sibling = await aFamily(opened(), classroom, { nickname: 'Otto' });
    const fresh = await aSlip(opened(), classroom, child.id);
    expect(await refused(code, aChat(), MORNING)).toBe('not_found');
    expect(await codeOf(join(opened(), fresh, aChat()))).toBe('accepted');
    expect(await codeOf(join(opened(), sibling.code, aChat()))).toBe('accepted');
  });

  it('an account that has joined gets conflict, also from a fresh slip', async () => {
    const { classroom, child, code } = await setting(opened());
    const { chatId } = await aHelper(opened(), code);
    expect(await refused(code, chatId, MORNING)).toBe('conflict');
    const fresh = await aSlip(opened(), classroom, child.id);
    expect(await refused(fresh, chatId, MORNING)).toBe('conflict');
  });

  it('a spent code still tells its child to an account that has joined, and to no other', async () => {
    const { child, code } = await setting(opened());
    const { chatId } = await aHelper(opened(), code);
    for (let use = 1; use < SLIP_LIMITS.uses; use += 1) await aHelper(opened(), code);
    const read = (by: number) => readJoinedSlip(opened(), { code, chatId: by });
    expect(await read(chatId)).toMatchObject({ childId: child.id, nickname: 'Wren' });
    expect(await codeOf(read(aChat()))).toBe('not_found');
  });
}

function rush(opened: () => Store) {
  it('the last use, taken by two accounts at once, lets exactly one in', async () => {
    const { child, code } = await setting(opened());
    for (let use = 1; use < SLIP_LIMITS.uses; use += 1) await aHelper(opened(), code);
    const both = [aChat(), aChat()].map((chatId) => codeOf(join(opened(), code, chatId)));
    expect((await Promise.all(both)).sort()).toEqual(['accepted', 'used_up']);
    expect((await slipOf(opened(), child.id)).map((row) => row.uses_left)).toEqual([0]);
  });

  it('one account agreeing twice at once joins once and uses one use', async () => {
    const { child, code } = await setting(opened());
    const chatId = aChat();
    const both = [1, 2, 3].map(() => codeOf(join(opened(), code, chatId)));
    expect((await Promise.all(both)).sort()).toEqual(['accepted', 'conflict', 'conflict']);
    const [slip] = await slipOf(opened(), child.id);
    expect(slip?.uses_left).toBe(SLIP_LIMITS.uses - 1);
    const consents = await readTable(opened(), 'consent');
    expect(consents.filter((row) => row.child_id === child.id)).toHaveLength(1);
  });

  it('slips issued twice at once leave one that works', async () => {
    const { classroom, child } = await setting(opened());
    await Promise.all([1, 2, 3].map(() => aSlip(opened(), classroom, child.id)));
    const working = (await slipOf(opened(), child.id)).filter((row) => row.revoked_at === null);
    expect(working).toHaveLength(1);
  });
}
