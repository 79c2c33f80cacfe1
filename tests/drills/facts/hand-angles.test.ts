import { expect, test } from 'vitest';
import { handAngles } from '../../../drills/index.ts';

test('at half past three the hour hand stands between three and four', () => {
  expect(handAngles(3, 30)).toEqual({ hour: 105, minute: 180 });
});

test('every minute of the dial has a pair of angles of its own', () => {
  const pairs = Array.from({ length: 720 }, (_, at) => {
    const { hour, minute } = handAngles(Math.floor(at / 60) || 12, at % 60);
    return `${hour} ${minute}`;
  });
  expect(new Set(pairs).size).toBe(720);
});

test('no hand goes beyond the full turn', () => {
  for (let hour = 1; hour <= 12; hour += 1) {
    expect(handAngles(hour, 59).hour).toBeLessThan(360);
    expect(handAngles(hour, 59).minute).toBeLessThan(360);
  }
});
