import { expect, it } from 'vitest';
import {
  addDataUsed,
  eraseChild,
  listDataUsed,
  purgeRecords,
  readDataUsed,
  readHeldData,
  type Store,
} from '../../db/index.ts';
import { aClass, aFamily } from '../support/people.ts';
import { readTable } from '../support/raw-rows.ts';

const NOVEMBER = new Date('2026-11-30T23:59:00Z');
const DECEMBER = new Date('2026-12-01T00:00:00Z');

/** About how many bytes went to a helper, month by month. */
export function dataUsedSuite(opened: () => Store): void {
  it('is added up by helper and month', async () => {
    const store = opened();
    const { helpers } = await aFamily(store, await aClass(store), { helpers: 2 });
    const [one, other] = helpers;
    if (!one || !other) throw new Error('there are two helpers');
    const add = (chatId: number, bytes: number, now: Date) =>
      addDataUsed(store, { chatId, bytes, now });
    await add(one.chatId, 40_000, NOVEMBER);
    await add(one.chatId, 2_500_000_000, NOVEMBER);
    await add(other.chatId, 7, NOVEMBER);
    await add(one.chatId, 9, DECEMBER);
    const used = (helperId: string, now: Date) => readDataUsed(store, { helperId, now });
    expect(await used(one.id, NOVEMBER)).toBe(2_500_040_000);
    expect(await used(one.id, DECEMBER)).toBe(9);
    expect(await used(other.id, NOVEMBER)).toBe(7);
    expect(await used(other.id, DECEMBER)).toBe(0);
    expect(await listDataUsed(store, one.id)).toEqual([
      { month: '2026-11', bytes: 2_500_040_000 },
      { month: '2026-12', bytes: 9 },
    ]);
  });

  it('is not kept of somebody who is no helper, nor when it is nothing', async () => {
    const store = opened();
    const { helper } = await aFamily(store, await aClass(store));
    const before = await readTable(store, 'data_used');
    await addDataUsed(store, { chatId: 5, bytes: 100, now: NOVEMBER });
    for (const bytes of [0, -1, 1.5, Number.NaN]) {
      await addDataUsed(store, { chatId: helper.chatId, bytes, now: NOVEMBER });
    }
    expect(await readTable(store, 'data_used')).toEqual(before);
  });

  it('is in what a helper can have sent, and goes with the helper', async () => {
    const store = opened();
    const { helper, child } = await aFamily(store, await aClass(store));
    await addDataUsed(store, { chatId: helper.chatId, bytes: 12_345, now: NOVEMBER });
    const held = await readHeldData(store, {
      helperId: helper.id,
      childId: child.id,
      now: DECEMBER,
    });
    expect(held.you.dataUsed).toEqual([{ month: '2026-11', bytes: 12_345 }]);
    await eraseChild(store, { childId: child.id, now: DECEMBER });
    expect(await listDataUsed(store, helper.id)).toEqual([]);
  });

  it('is kept for 13 months after its month, and not a day longer', async () => {
    const store = opened();
    const { helper } = await aFamily(store, await aClass(store));
    await addDataUsed(store, { chatId: helper.chatId, bytes: 1, now: NOVEMBER });
    await addDataUsed(store, { chatId: helper.chatId, bytes: 2, now: DECEMBER });
    const purge = (now: string) => purgeRecords(store, { now: new Date(now), limit: 1000 });
    await purge('2027-12-31T12:00:00Z');
    expect(await listDataUsed(store, helper.id)).toHaveLength(2);
    await purge('2028-01-01T12:00:00Z');
    expect(await listDataUsed(store, helper.id)).toEqual([{ month: '2026-12', bytes: 2 }]);
  });
}
