import { expect, it } from 'vitest';
import { drainInbox, type InboxDeps } from '../../../bot/receive/inbox.ts';
import { takeIn } from '../../../bot/receive/take-in.ts';
import { openServer } from '../../../db/index.ts';
import { createDatabase } from '../../support/stores.ts';

const BOT = 7;
/** More than one worker takes at a time. */
const PEOPLE = 40;
const EACH = 4;
const now = () => new Date('2026-09-14T16:30:00Z');
const log = { info: () => {}, warn: () => {}, error: () => {} };

/** An update of a person: their how manieth, spread over all people as they come in. */
const update = (id: number) => ({
  update_id: id,
  message: {
    ...{ message_id: id, date: 0, text: 'hello' },
    chat: { id: id % PEOPLE, type: 'private' as const, first_name: 'Wren' },
    from: { id: (id % PEOPLE) + 1, is_bot: false, first_name: 'Wren' },
  },
});

it('three workers on one database handle each person’s updates in order, one at a time, and each once', async () => {
  const url = await createDatabase();
  const stores = await Promise.all([1, 2, 3].map(() => openServer(url, () => {})));
  const [first] = stores;
  if (!first) throw new Error('three stores were opened');
  const handled: [worker: number, person: number, update: number][] = [];
  const busy = new Set<number>();
  const begun = new Set<number>();
  let open = () => {};
  // Nobody goes on before two have begun.
  const gate = new Promise<void>((resolve) => {
    open = resolve;
  });
  const atOnce: number[] = [];
  const worker = (place: number): InboxDeps => ({
    ...{ store: stores[place] ?? first, clock: { now }, log, botId: BOT },
    handler: {
      handle: async ({ update_id: id, message }) => {
        const person = message?.from?.id ?? 0;
        if (busy.has(person)) atOnce.push(person);
        busy.add(person);
        begun.add(place);
        if (begun.size > 1) open();
        await gate;
        // Long enough for the others to look for more.
        await first.db.execute('select pg_sleep(0.002)');
        busy.delete(person);
        handled.push([place, person, id]);
      },
      apologise: async () => {},
      leftOut: async () => {},
    },
  });
  const ids = Array.from({ length: PEOPLE * EACH }, (_, id) => id);
  const intake = { store: first, clock: { now }, botId: BOT };
  await takeIn(intake, ids.slice(0, 60).map(update));
  const drains = [0, 1, 2].map((place) => drainInbox(worker(place)));
  // More comes while they work.
  await takeIn(intake, ids.slice(60).map(update));
  await Promise.all(drains);
  await Promise.all([0, 1, 2].map((place) => drainInbox(worker(place))));

  expect(handled.map(([, , id]) => id).sort((a, b) => a - b)).toEqual(ids);
  expect(atOnce).toEqual([]);
  for (let person = 1; person <= PEOPLE; person += 1) {
    const own = handled.filter(([, who]) => who === person).map(([, , id]) => id);
    expect(own).toEqual([...own].sort((a, b) => a - b));
  }
  expect(new Set(handled.map(([place]) => place)).size).toBeGreaterThan(1);
  for (const store of stores) await store.close();
});
