import { afterEach, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { Fault } from '../../rehearsal/client.ts';
import { Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { withoutIsolates } from '../support/phones.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable } from '../support/raw-rows.ts';

let stage: QuickStage;

afterEach(async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
  await stage.world.close();
});

function count<T>(items: readonly T[], wanted: T): number {
  return items.filter((item) => item === wanted).length;
}

describe('a send that surely did not arrive', () => {
  it('is repeated after the time the service asks for, and everybody has exactly one message', async () => {
    stage = await openQuickStage({ families: 8 });
    const error = { code: 429, description: 'Too Many Requests: retry after 7', retryAfter: 7 };
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count: 5, error });
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.minuteLater);
    expect(await stage.received()).toEqual(Array.from({ length: 8 }, () => 1));
    expect(await stage.calls('sendMessage', 429)).toBe(5);
    expect(await stage.ledger('evening')).toEqual(Array.from({ length: 8 }, () => 'sent'));
    expect(stage.world.logged.find((line) => line.event === 'sending_paused')?.fields).toEqual({
      seconds: 7,
    });
  });

  it('is repeated when the service answers with its own error, and everybody has exactly one message', async () => {
    stage = await openQuickStage();
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count: 2 });
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.minuteLater);
    expect(await stage.calls('sendMessage', 500)).toBe(2);
    expect(await stage.received()).toEqual([1, 1, 1]);
  });

  it('goes back in line when the service fails again and again, and arrives a minute later', async () => {
    stage = await openQuickStage({ families: 1 });
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count: 5 });
    await stage.world.goTo(FRIDAY.evening);
    expect(await stage.received()).toEqual([0]);
    await stage.world.goTo('2026-09-18T16:33:00Z');
    expect(await stage.received()).toEqual([1]);
  });
});

describe('a send without an answer', () => {
  const cuts: readonly [string, Fault['mode'], 0 | 1][] = [
    ['a connection cut after the message arrived', 'apply_then_drop', 1],
    ['a connection cut before the message arrived', 'drop_before', 0],
    ['an answer that is no answer', 'http_502', 0],
  ];

  it.each(cuts)('is never repeated after %s; the nudge carries Start', async (_, mode, arrived) => {
    stage = await openQuickStage();
    await stage.world.client.setFault({ method: 'sendMessage', mode, count: 1 });
    await stage.world.goTo(FRIDAY.evening);
    expect((await stage.ledger('evening')).sort()).toEqual(['sent', 'sent', 'unknown']);
    for (const minute of ['16:31', '16:35', '17:00', '17:59']) {
      await stage.world.goTo(`2026-09-18T${minute}:00Z`);
    }
    expect(count(await stage.received(), 1)).toBe(2 + arrived);
    expect(await stage.calls('sendMessage', 200)).toBe(2);
    await stage.world.goTo(FRIDAY.nudge);
    expect(count(await stage.received(), 1)).toBe(1 - arrived);
    expect(count(await stage.received(), 2)).toBe(2 + arrived);
    // Without the first message, the family with one message is the one that only the nudge has reached.
    const phone = arrived ? stage.family(0) : stage.family((await stage.received()).indexOf(1));
    expect(await phone.buttons()).toEqual([BUTTONS.start, BUTTONS.notToday]);
    await phone.playEvening((part) => (part === 1 ? [2] : []));
    expect((await phone.last()).text).toContain('4 of 5');
    expect(await readTable(stage.world.store, 'part_score')).toHaveLength(2);
  });

  it('is known to have arrived once its button is tapped, and leads to where the evening stands', async () => {
    stage = await openQuickStage({ families: 1 });
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'apply_then_drop', count: 1 });
    await stage.world.goTo(FRIDAY.evening);
    expect(await stage.ledger('evening')).toEqual(['unknown']);
    const phone = stage.family(0);
    const first = await phone.last();
    await stage.world.goTo(FRIDAY.nudge);
    await phone.playEvening();
    await phone.tap(BUTTONS.start, first.id);
    expect((await phone.message(first.id)).text).toContain('5 of 5');
    expect(await stage.ledger('evening')).toEqual(['sent']);
    expect(await readTable(stage.world.store, 'part_score')).toHaveLength(2);
  });

  it('is not held against the family: its evening does not count as silent', async () => {
    stage = await openQuickStage();
    await stage.world.client.setFault({ method: 'sendMessage', mode: 'drop_before', count: 6 });
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.nudge);
    expect(await stage.received()).toEqual([0, 0, 0]);
    await stage.world.goTo(FRIDAY.digest);
    const digest = await new Phone(stage.world, stage.school.teacher).messagesWith('practised on');
    expect(digest).toHaveLength(1);
    expect(digest[0]?.text).not.toContain('without an answer');
  });
});

describe('a helper who cannot be written to', () => {
  it('is passed over while the other helper is served, and is back the day after unblocking', async () => {
    stage = await openQuickStage({ families: 2, helpers: 2 });
    const [one, other] = stage.school.families.map((each) => each.phones);
    if (!one || !other) throw new Error('two families are needed');
    await stage.world.client.block(one[0]);
    for (const phone of other) await stage.world.client.deactivate(phone);
    await stage.world.goTo(FRIDAY.evening);
    expect(await new Phone(stage.world, one[1] ?? 0).messagesWith('Friday')).toHaveLength(1);
    expect((await stage.ledger('evening')).sort()).toEqual(['failed', 'failed', 'failed', 'sent']);
    const unreachable = await readTable(stage.world.store, 'unreachable');
    expect(unreachable.map((row) => row.chat_id).sort()).toEqual([one[0], ...other]);
    await stage.world.goTo(FRIDAY.digest);
    const [digest] = await new Phone(stage.world, stage.school.teacher).messagesWith(
      'practised on',
    );
    const text = withoutIsolates(digest?.text ?? '');
    expect(text).toContain('2. Wren2 (messages no longer arrive)');
    expect(text).not.toContain('Wren1 (messages no longer arrive)');
    await stage.world.client.unblock(one[0]);
    await stage.world.settle();
    await stage.world.goTo('2026-09-21T16:30:00Z');
    expect(await new Phone(stage.world, one[0]).messagesWith('Monday')).toHaveLength(1);
    expect(await new Phone(stage.world, one[1] ?? 0).messagesWith('Monday')).toHaveLength(1);
    expect(await new Phone(stage.world, other[0]).messagesWith('Monday')).toHaveLength(0);
  });

  it('costs nothing but its own message: the call is not repeated', async () => {
    stage = await openQuickStage();
    await stage.world.client.deactivate(stage.family(1).id);
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.minuteLater);
    await stage.world.goTo(FRIDAY.nudge);
    expect(await stage.calls('sendMessage', 403)).toBe(1);
    expect(await stage.received()).toEqual([2, 0, 2]);
  });
});
