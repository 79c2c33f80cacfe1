import { expect, it } from 'vitest';
import {
  archiveChild,
  closePart,
  declineEvening,
  listCopies,
  listTurns,
  moveCopy,
  type Store,
  startEvening,
  stopEvening,
} from '../../db/index.ts';
import { settleEvening } from '../support/deliveries.ts';
import { aChild, aClass, aFamily, aHelper, aSlip } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { evening, MONDAY, MORNING, TUESDAY } from '../support/term.ts';

const NOW = evening(MONDAY, 10);

/** Brothers and sisters at one helper, each with an evening of Monday, and one child of another family. */
async function threeSiblings(store: Store) {
  const classroom = await aClass(store);
  const wren = await aFamily(store, classroom);
  const { helper } = wren;
  const sibling = async (nickname: string) => {
    const child = await aChild(store, classroom, nickname);
    const code = await aSlip(store, classroom, child.id);
    return { child, code, helper: await aHelper(store, code, helper.chatId), helpers: [helper] };
  };
  const [robin, otter] = [await sibling('Robin'), await sibling('Otter')];
  const neighbour = await aFamily(store, classroom, { nickname: 'Fern' });
  await anEvening(store, classroom, neighbour);
  // Planned in another order than the class list's.
  const evenings = {
    otter: await anEvening(store, classroom, otter),
    robin: await anEvening(store, classroom, robin),
    wren: await anEvening(store, classroom, wren),
  };
  await anEvening(store, classroom, wren, { on: TUESDAY });
  const states = async () =>
    (await listTurns(store, evenings.wren.scope)).map(
      ({ nickname, state }) => `${nickname} ${state}`,
    );
  return { ...evenings, classroom, helper, children: { robin, otter }, states };
}

/** Whose turn it is where a helper has several children. */
export function turnsSuite(opened: () => Store) {
  it('come in the order of the class list where they were planned in one moment, one day’s and one family’s only', async () => {
    const { states, robin, helper } = await threeSiblings(opened());
    expect(await states()).toEqual(['Wren waiting', 'Robin waiting', 'Otter waiting']);
    expect(await listTurns(opened(), robin.scope)).toHaveLength(3);
    expect(robin.scope.helperId).toBe(helper.id);
  });

  it('are under way from Start on, and over once all is marked, put off or stopped', async () => {
    const { states, wren, robin, otter } = await threeSiblings(opened());
    await startEvening(opened(), wren.scope, NOW);
    await closePart(opened(), wren.scope, { part: 0, verdict: { kind: 'all_right' }, now: NOW });
    await declineEvening(opened(), robin.scope, NOW);
    await stopEvening(opened(), otter.scope, NOW);
    expect(await states()).toEqual(['Wren under_way', 'Robin over', 'Otter over']);
    for (const part of [1, 2]) {
      await closePart(opened(), wren.scope, { part, verdict: { kind: 'all_right' }, now: NOW });
    }
    expect((await states())[0]).toBe('Wren over');
  });

  it('are not those of a child that has left the class', async () => {
    const { states, classroom, children } = await threeSiblings(opened());
    const { number } = children.robin.child;
    await archiveChild(opened(), classroom.scope, { number, now: MORNING });
    expect(await states()).toEqual(['Wren waiting', 'Otter waiting']);
  });

  it('a copy that moved is kept true in its new place, and other chats’ copies stay', async () => {
    const classroom = await aClass(opened());
    const family = await aFamily(opened(), classroom, { helpers: 2 });
    const { view } = await anEvening(opened(), classroom, family);
    await settleEvening(opened(), view.id, 'sent', NOW);
    const [first, second] = await listCopies(opened(), view.id);
    if (!first || !second) throw new Error('two helpers have a copy each');
    const moved = { ...first, messageId: 900 };
    await moveCopy(opened(), view.id, moved);
    expect(await listCopies(opened(), view.id)).toEqual([moved, second]);
    await moveCopy(opened(), view.id, { ...first, chatId: 1, messageId: 901 });
    expect(await listCopies(opened(), view.id)).toEqual([moved, second]);
  });
}
