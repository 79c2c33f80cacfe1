import { expect, it } from 'vitest';
import {
  acceptSlip,
  findEvening,
  findHelperByChat,
  leaveChild,
  listFamilyChildren,
  type Store,
} from '../../db/index.ts';
import { codeOf } from '../support/code-of.ts';
import { AGREEMENT, aChild, aClass, aFamily, aSlip } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { readTable } from '../support/raw-rows.ts';
import { evening, MONDAY, MORNING } from '../support/term.ts';

/** One helper of two children. */
async function twoChildren(store: Store) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom);
  const robin = await aChild(store, classroom, 'Robin');
  const code = await aSlip(store, classroom, robin.id);
  const { chatId } = family.helper;
  await acceptSlip(store, { code, chatId, agreement: AGREEMENT, now: MORNING });
  return { classroom, family, robin, helperId: family.helper.id };
}

/** Leaving one child of several, and joining again. */
export function leavingSuite(opened: () => Store): void {
  it('ends messages and the agreement for that child, and for no other', async () => {
    const store = opened();
    const { classroom, family, robin, helperId } = await twoChildren(store);
    const { view } = await anEvening(store, classroom, family);
    await anEvening(store, classroom, { ...family, child: robin });
    const now = evening(MONDAY, 1);
    expect(await leaveChild(store, { helperId, childId: family.child.id, now })).toBe('Wren');
    expect((await listFamilyChildren(store, helperId)).map((each) => each.nickname)).toEqual([
      'Robin',
    ]);
    const ledger = (await readTable(store, 'ledger')).filter(
      (row) => row.recipient_id === helperId && row.kind === 'evening',
    );
    const statusOf = (childId: string) =>
      ledger.filter((row) => row.subject_id === childId).map((row) => row.status);
    expect([statusOf(family.child.id), statusOf(robin.id)]).toEqual([['failed'], ['planned']]);
    const proofs = (await readTable(store, 'consent')).filter((row) => row.helper_id === helperId);
    const open = proofs.filter((row) => row.withdrawn_at === null);
    expect([proofs.length, open.map((row) => row.child_id)]).toEqual([2, [robin.id]]);
    expect(await findEvening(store, { helperId, childId: family.child.id, day: view.day })).toBe(
      null,
    );
  });

  it('is done once, and is not to be done with another family’s child', async () => {
    const store = opened();
    const { classroom, family, helperId } = await twoChildren(store);
    const otter = await aFamily(store, classroom, { nickname: 'Otter' });
    const leave = (childId: string) => leaveChild(store, { helperId, childId, now: MORNING });
    expect(await codeOf(leave(otter.child.id))).toBe('not_found');
    await leave(family.child.id);
    expect(await codeOf(leave(family.child.id))).toBe('not_found');
    expect(await listFamilyChildren(store, otter.helper.id)).toHaveLength(1);
  });

  it('can be followed by joining again with the same link: a second agreement, and the child’s own past is there', async () => {
    const store = opened();
    const { classroom, family, helperId } = await twoChildren(store);
    const { view } = await anEvening(store, classroom, family);
    const childId = family.child.id;
    await leaveChild(store, { helperId, childId, now: evening(MONDAY, 1) });
    await acceptSlip(store, {
      code: family.code,
      chatId: family.helper.chatId,
      agreement: { ...AGREEMENT, messageId: 99 },
      now: evening(MONDAY, 2),
    });
    expect((await findHelperByChat(store, family.helper.chatId))?.id).toBe(helperId);
    const proofs = (await readTable(store, 'consent')).filter(
      (row) => row.helper_id === helperId && row.child_id === childId,
    );
    expect(proofs.map((row) => [row.withdrawn_at === null, row.evidence])).toEqual(
      expect.arrayContaining([
        [false, { messageId: AGREEMENT.messageId }],
        [true, { messageId: 99 }],
      ]),
    );
    expect(proofs).toHaveLength(2);
    expect((await findEvening(store, { helperId, childId, day: view.day }))?.id).toBe(view.id);
  });
}
