import { expect, it } from 'vitest';
import { FAIR_SHARE, MOST_WAITING, type Store, storeUpdates } from '../../db/index.ts';
import { aBot, at, idsOf } from '../support/an-inbox.ts';
import { MORNING } from '../support/term.ts';

const FLOOD = 1_000;
const OTHER = 8;

const ids = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i);

/** What happens to others, and to a person, when the person sends a lot at once. */
export function floodSuite(opened: () => Store): void {
  it('somebody else’s update is taken with the first of a flood, not after it', async () => {
    const bot = aBot(opened);
    await bot.receive(...ids(1, MOST_WAITING));
    await bot.receiveFrom(OTHER, 900);
    const first = await bot.claim();
    expect(idsOf(first)).toEqual([...ids(1, FAIR_SHARE), 900]);
    expect(idsOf(await bot.claim())).toEqual([]);
    for (const id of idsOf(first)) await bot.finish(id);
    expect(idsOf(await bot.claim())).toEqual(ids(1 + FAIR_SHARE, FAIR_SHARE));
  });

  it('of a thousand updates as many as may wait are kept, and one that stands for the rest', async () => {
    const bot = aBot(opened);
    expect(await bot.receive(...ids(1, FLOOD))).toBe(MOST_WAITING + 1);
    const rows = await bot.rows();
    expect(rows.slice(0, -1).every((row) => !row.shed && row.payload !== null)).toBe(true);
    expect(rows.at(-1)).toMatchObject({ update_id: MOST_WAITING + 1, shed: true, payload: null });
    expect(await bot.receive(...ids(FLOOD + 1, FLOOD))).toBe(0);
    expect(await bot.receiveFrom(OTHER, ...ids(5_000, 3))).toBe(3);
    expect(await bot.receiveFrom(null, ...ids(6_000, MOST_WAITING + 5))).toBe(MOST_WAITING + 5);
  });

  it('what was left out is told once in ten minutes, and new updates are kept as others end', async () => {
    const bot = aBot(opened);
    let leftOutInAll = 0;
    const send = async (id: number, seconds: number) => {
      const updates = [{ updateId: id, actorId: 7, payload: {} }];
      const input = { botId: bot.botId, updates, now: at(seconds) };
      const { stored, leftOut } = await storeUpdates(opened(), input);
      leftOutInAll += leftOut;
      return stored;
    };
    await bot.receive(...ids(1, MOST_WAITING + 1));
    expect(await send(100, 1)).toBe(0);
    const taken = idsOf(await bot.claim());
    for (const id of taken) await bot.finish(id);
    // The one that tells of the rest waits too.
    expect(await send(101, 2)).toBe(1);
    expect(await send(102, 2)).toBe(1);
    expect(await send(103, 2)).toBe(0);
    expect(await send(104, 599)).toBe(0);
    expect(await send(105, 601)).toBe(1);
    // Of the last a row tells the person, and nothing of it is kept either.
    expect(leftOutInAll).toBe(4);
    expect((await bot.rows()).filter((row) => row.shed).map((row) => row.update_id)).toEqual([
      MOST_WAITING + 1,
      105,
    ]);
  });

  it('an update that comes again takes no place', async () => {
    const bot = aBot(opened);
    await bot.receive(...ids(1, MOST_WAITING));
    expect(await bot.receive(...ids(1, MOST_WAITING))).toBe(0);
    expect((await bot.rows()).some((row) => row.shed)).toBe(false);
    const claimed = await bot.claim(MORNING);
    expect(claimed.map((row) => row.shed)).toEqual(claimed.map(() => false));
  });
}
