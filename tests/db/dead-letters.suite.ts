import { beforeEach, expect, it } from 'vitest';
import {
  claimDelivery,
  crashedBy,
  dropDeadLetter,
  listDeadLetters,
  REHEARSAL_BOT,
  readDelivery,
  replayDeadLetter,
  type Store,
  settleDelivery,
} from '../../db/index.ts';
import { aBot, at } from '../support/an-inbox.ts';
import { codeOf } from '../support/code-of.ts';
import { ledgerOf } from '../support/deliveries.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { runSql } from '../support/raw-rows.ts';
import { evening, MONDAY } from '../support/term.ts';

const NOW = evening(MONDAY);
const LATER = evening(MONDAY, 10);

/** What failed for good by a fault of ours. Runs on the store that ledger.test.ts opens. */
export function deadLettersSuite(opened: () => Store): void {
  messages(opened);
  updates(opened);
}

function messages(opened: () => Store) {
  beforeEach(async () => {
    await runSql(opened(), `update ledger set problem = 'over' where status = 'failed'`);
    await runSql(opened(), `delete from inbox where status = 'failed'`);
    await opened().queue.drain(REHEARSAL_BOT, async () => {}, 4);
  });

  const dead = async (problem = crashedBy('TypeError')) => {
    const classroom = await aClass(opened());
    const { view } = await anEvening(opened(), classroom, await aFamily(opened(), classroom));
    const [row] = await ledgerOf(opened(), view.id);
    const ledgerId = String(row?.id);
    await claimDelivery(opened(), ledgerId, NOW);
    await settleDelivery(opened(), ledgerId, { status: 'failed', problem }, NOW);
    // Its own job is out of the way.
    await opened().queue.drain(REHEARSAL_BOT, async () => {}, 4);
    return ledgerId;
  };
  const listed = async () => (await listDeadLetters(opened())).messages.map((row) => row.ledgerId);

  it('are the messages that failed by a fault of ours, and no others', async () => {
    const ledgerId = await dead();
    await dead('too_late');
    const { messages } = await listDeadLetters(opened());
    expect(messages).toMatchObject([
      { ledgerId, kind: 'evening', problem: 'crashed TypeError', since: NOW },
    ]);
  });

  it('that are replayed wait again with a job, once', async () => {
    const ledgerId = await dead();
    await replayDeadLetter(opened(), { ledgerId }, LATER);
    expect(await listed()).toEqual([]);
    expect(await readDelivery(opened(), ledgerId)).toMatchObject({ id: ledgerId });
    const woken: string[] = [];
    await opened().queue.drain(REHEARSAL_BOT, async (id) => void woken.push(id), 4);
    expect(woken).toEqual([ledgerId]);
    expect(await codeOf(replayDeadLetter(opened(), { ledgerId }, LATER))).toBe('not_found');
  });

  it('whose time is over are not replayed and stay where they are', async () => {
    const ledgerId = await dead();
    const late = replayDeadLetter(opened(), { ledgerId }, evening(MONDAY, 180));
    expect(await codeOf(late)).toBe('expired');
    expect(await listed()).toEqual([ledgerId]);
  });

  it('that are dropped are gone; what is no dead letter is left alone', async () => {
    const [ledgerId, other] = [await dead(), await dead('too_late')];
    await dropDeadLetter(opened(), { ledgerId });
    expect(await listed()).toEqual([]);
    for (const id of [ledgerId, other]) {
      expect(await codeOf(dropDeadLetter(opened(), { ledgerId: id }))).toBe('not_found');
      expect(await codeOf(replayDeadLetter(opened(), { ledgerId: id }, LATER))).toBe('not_found');
    }
  });
}

function updates(opened: () => Store) {
  it('are also updates, which are handled from the beginning or forgotten', async () => {
    const bot = aBot(opened);
    await bot.receive(1, 2, 3);
    await bot.claim();
    await bot.setAside(1);
    await bot.setAside(2);
    const { botId } = bot;
    const { updates } = await listDeadLetters(opened());
    expect(updates.map((row) => [row.botId, row.updateId, row.tries])).toEqual([
      [botId, 1, 1],
      [botId, 2, 1],
    ]);
    await replayDeadLetter(opened(), { botId, updateId: 1 }, at(1));
    await dropDeadLetter(opened(), { botId, updateId: 2 });
    expect(await codeOf(replayDeadLetter(opened(), { botId, updateId: 3 }, at(1)))).toBe(
      'not_found',
    );
    expect((await listDeadLetters(opened())).updates).toEqual([]);
    expect(await bot.claim()).toMatchObject([{ updateId: 1, tries: 1 }]);
    expect((await bot.rows())[1]).toMatchObject({ status: 'done', payload: null });
  });
}
