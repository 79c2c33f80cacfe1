import { expect, it } from 'vitest';
import { createClockMover } from '../../rehearsal/phone-api/moving-clock.ts';
import { createTestClock } from './support/stage.ts';

const at = (time: string) => new Date(`2026-09-07T${time}:00Z`);

/** An app whose moves end when the test says so. */
function openApp() {
  const clock = createTestClock(at('17:30'));
  const begun: string[] = [];
  const ends: (() => void)[] = [];
  const move = createClockMover({
    now: clock.now,
    moveTo: async (to) => {
      begun.push(to.toISOString().slice(11, 16));
      await new Promise<void>((resolve) => ends.push(resolve));
      clock.set(to);
    },
    stops: async () => [],
  });
  /** Ends the move under way, once it has begun. */
  const end = async (): Promise<void> => {
    while (ends.length === 0) await Promise.resolve();
    ends.shift()?.();
  };
  return { begun, end, move };
}

it('a second move begins when the first has ended', async () => {
  const { begun, end, move } = openApp();
  const both = [move(at('18:00')), move(at('19:00'))];
  await end();
  expect(begun).toEqual(['18:00']);
  await both[0];
  await end();
  await both[1];
  expect(begun).toEqual(['18:00', '19:00']);
});

it('a move that was overtaken while it waited is no move back', async () => {
  const { begun, end, move } = openApp();
  const both = [move(at('19:00')), move(at('18:00'))];
  await end();
  await Promise.all(both);
  expect(begun).toEqual(['19:00']);
});

it('a move that fails is told to whoever asked, and the next goes on', async () => {
  const clock = createTestClock(at('17:30'));
  const move = createClockMover({
    now: clock.now,
    moveTo: async (to) => {
      if (to.getTime() === at('18:00').getTime()) throw new Error('no evening');
      clock.set(to);
    },
    stops: async () => [],
  });
  const both = await Promise.allSettled([move(at('18:00')), move(at('19:00'))]);
  expect(both.map(({ status }) => status)).toEqual(['rejected', 'fulfilled']);
  expect(clock.now()).toEqual(at('19:00'));
});

it('a move back, or by more than 366 days, is refused', async () => {
  const { begun, move } = openApp();
  await expect(move(at('17:29'))).rejects.toThrow('The clock only goes forward.');
  await expect(move(new Date('2027-09-08T17:30:01Z'))).rejects.toThrow(
    'by up to 366 days at once, here to 2027-09-08T17:30:00.000Z',
  );
  expect(begun).toEqual([]);
});
