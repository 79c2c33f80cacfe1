import { expect, it } from 'vitest';
import { createPulse, LONGEST_SILENCE_MS } from '../../../bot/watch/pulse.ts';

it('a part that has given no sign for too long is silent, until it gives one; others are not', () => {
  let now = 0;
  const pulse = createPulse({ now: () => new Date(now) });
  expect(pulse.silent()).toEqual([]);
  pulse.begin('work');
  pulse.begin('tick');
  now = LONGEST_SILENCE_MS.work;
  expect(pulse.silent()).toEqual([]);
  now += 1;
  expect(pulse.silent()).toEqual(['work']);
  pulse.beat('work');
  expect(pulse.silent()).toEqual([]);
});
