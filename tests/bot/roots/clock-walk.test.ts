import { expect, it } from 'vitest';
import { createClockWalk } from '../../../bot/roots/clock-walk.ts';
import { movableClock } from '../../../bot/roots/clocks.ts';

const START = new Date('2026-09-14T17:27:00Z');
const at = (time: string) => new Date(`2026-09-14T${time}:00Z`);

function openClock() {
  const clock = movableClock(START, { now: () => START });
  const time = () => clock.now().toISOString().slice(11, 16);
  return { clock, time };
}

it('a move stops at each whole five minutes, works there and saves', async () => {
  const { clock, time } = openClock();
  const seen: string[] = [];
  const note = (what: string) => async () => void seen.push(`${what} ${time()}`);
  const walk = createClockWalk(clock, note('work'), note('save'));
  await walk.moveTo(at('17:33'));
  expect(seen).toEqual(['work 17:30', 'save 17:30', 'work 17:33', 'save 17:33']);
  await walk.moveTo(at('17:00'));
  expect(time()).toBe('17:33');
});

it('a halted move ends after the step it is in, and no other begins', async () => {
  const { clock, time } = openClock();
  const works: (() => void)[] = [];
  const work = () => new Promise<void>((resolve) => works.push(resolve));
  const walk = createClockWalk(clock, work, async () => {});
  const move = walk.moveTo(at('18:30'));
  const halt = walk.halt();
  expect(works).toHaveLength(1);
  works[0]?.();
  await Promise.all([move, halt]);
  expect(time()).toBe('17:30');
  await walk.moveTo(at('18:30'));
  expect(time()).toBe('17:30');
});

it('halting does not throw what the move threw', async () => {
  const { clock } = openClock();
  const fail = async () => {
    throw new Error('no evening');
  };
  const walk = createClockWalk(clock, fail, async () => {});
  await expect(walk.moveTo(at('18:30'))).rejects.toThrow('no evening');
  await expect(walk.halt()).resolves.toBeUndefined();
});
