import { afterEach, describe, expect, it } from 'vitest';
import { readQueues } from '../../db/index.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable } from '../support/raw-rows.ts';

let stage: QuickStage;

afterEach(() => stage.world.close());

/** What the teacher got, in order: `text` or the file's ending. */
async function digestOnPhone(): Promise<string[]> {
  const chat = await stage.world.client.chat(stage.school.teacher);
  return chat
    .filter((message) => message.from === 'bot')
    .map((message) => message.document?.fileName?.split('.').at(-1) ?? 'text')
    .slice(-3);
}

describe('a long pause', () => {
  it('puts messages back in line instead of holding them half sent, and each arrives once', async () => {
    stage = await openQuickStage({ families: 4 });
    const error = { code: 429, description: 'Too Many Requests: retry after 150', retryAfter: 150 };
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count: 1, error });
    await stage.world.goTo(FRIDAY.evening);
    const waiting = await stage.ledger('evening');
    expect(waiting).not.toContain('attempting');
    expect(waiting).toContain('planned');
    const { due } = await readQueues(stage.world.store, new Date('2026-09-18T16:31:00Z'));
    expect(due.get('evening')).toEqual({
      waiting: waiting.filter((status) => status === 'planned').length,
      oldest: new Date(FRIDAY.evening),
    });
    await stage.world.goTo('2026-09-18T16:34:00Z');
    expect(await stage.received()).toEqual([1, 1, 1, 1]);
    expect(await stage.ledger('evening')).toEqual(['sent', 'sent', 'sent', 'sent']);
    expect((await readQueues(stage.world.store, stage.world.now())).due.size).toBe(0);
  });

  it('over the end of the evening’s time sends nothing late, and the digest says what was not delivered', async () => {
    stage = await openQuickStage({ families: 1 });
    const seconds = 5 * 60 * 60;
    const error = { code: 429, description: 'Too Many Requests', retryAfter: seconds };
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count: 1, error });
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo('2026-09-18T22:00:00Z');
    expect(await stage.received()).toEqual([0]);
    const [row] = (await readTable(stage.world.store, 'ledger')).filter(
      (each) => each.kind === 'evening',
    );
    expect(row).toMatchObject({ status: 'failed', problem: 'too_late' });
    // The service takes messages again by the next morning: the digest says so.
    await stage.world.goTo('2026-09-19T09:00:00Z');
    const chat = await stage.world.client.chat(stage.school.teacher);
    expect(chat.some(({ text }) => text.includes('1 not delivered'))).toBe(true);
  });
});

describe('the digest', () => {
  it('comes as text, picture and table, in this order', async () => {
    stage = await openQuickStage();
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.digest);
    expect(await digestOnPhone()).toEqual(['text', 'png', 'csv']);
  });

  it('keeps its order when the text has to wait', async () => {
    stage = await openQuickStage();
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.nudge);
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count: 5 });
    await stage.world.goTo(FRIDAY.digest);
    expect(await digestOnPhone()).not.toContain('png');
    await stage.world.goTo('2026-09-18T18:33:00Z');
    expect(await digestOnPhone()).toEqual(['text', 'png', 'csv']);
  });
});

describe('a nudge', () => {
  it('keeps its distance from an evening that could only be sent late', async () => {
    stage = await openQuickStage({ families: 1 });
    const error = { code: 429, description: 'Too Many Requests', retryAfter: 5_000 };
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count: 1, error });
    await stage.world.goTo(FRIDAY.evening);
    // Nudge time is 18:00Z; the evening itself leaves only then.
    await stage.world.goTo('2026-09-18T18:01:00Z');
    expect(await stage.received()).toEqual([1]);
    await stage.world.goTo('2026-09-18T18:45:00Z');
    expect(await stage.received()).toEqual([1]);
    await stage.world.goTo('2026-09-18T18:47:00Z');
    expect(await stage.received()).toEqual([2]);
  });
});
