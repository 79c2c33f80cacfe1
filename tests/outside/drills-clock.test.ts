import { describe, expect, test } from 'vitest';
import { handAngles } from '../../drills/index.ts';

// Source: the clock-angle formula of general knowledge, hour = 30 (h mod 12) + m / 2, minute = 6 m, in degrees clockwise
// from 12, and the worked angles between the hands that go round with it. The table was worked out by hand.

const TABLE = [
  { hour: 3, minute: 0, hourHand: 90, minuteHand: 0, between: 90 },
  { hour: 3, minute: 15, hourHand: 97.5, minuteHand: 90, between: 7.5 },
  { hour: 3, minute: 30, hourHand: 105, minuteHand: 180, between: 75 },
  { hour: 3, minute: 45, hourHand: 112.5, minuteHand: 270, between: 157.5 },
  { hour: 12, minute: 0, hourHand: 0, minuteHand: 0, between: 0 },
  { hour: 10, minute: 30, hourHand: 315, minuteHand: 180, between: 135 },
  { hour: 6, minute: 30, hourHand: 195, minuteHand: 180, between: 15 },
  { hour: 12, minute: 50, hourHand: 25, minuteHand: 300, between: 85 },
  { hour: 9, minute: 55, hourHand: 297.5, minuteHand: 330, between: 32.5 },
  { hour: 11, minute: 55, hourHand: 357.5, minuteHand: 330, between: 27.5 },
  { hour: 1, minute: 5, hourHand: 32.5, minuteHand: 30, between: 2.5 },
  { hour: 2, minute: 10, hourHand: 65, minuteHand: 60, between: 5 },
];

describe('hand angles', () => {
  test.each(TABLE)('at $hour:$minute the hands stand at $hourHand and $minuteHand', (row) => {
    const hands = handAngles(row.hour, row.minute);
    expect(hands).toEqual({ hour: row.hourHand, minute: row.minuteHand });
    const apart = Math.abs(hands.hour - hands.minute);
    expect(Math.min(apart, 360 - apart)).toBe(row.between);
  });

  // Source: the hands of a twelve-hour clock meet 11 times in 12 hours, 12/11 hours apart (a classic puzzle).
  test('the minute hand passes the hour hand eleven times in a turn of the dial', () => {
    const lead = Array.from({ length: 721 }, (_, at) => {
      const { hour, minute } = handAngles(Math.floor(at / 60) % 12 || 12, at % 60);
      return (minute - hour + 360) % 360;
    });
    const meetings = lead.filter((degrees, at) => at > 0 && degrees < (lead[at - 1] ?? 0));
    expect(meetings).toHaveLength(11);
  });
});
