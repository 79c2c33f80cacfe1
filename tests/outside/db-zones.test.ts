import { describe, expect, it } from 'vitest';
import { instantAt, localTimeAt } from '../../db/index.ts';
import { parseSchoolDay, parseTimeOfDay } from '../../drills/index.ts';

// Source: the IANA time zone database (tzdata). Rules EU ("last Sunday of March and October at 01:00 UTC"), US ("second Sunday
// of March and first Sunday of November at 2:00 local"), and the fixed offsets +2:00 of Africa/Johannesburg (since 1944) and
// +5:45 of Asia/Kathmandu (since 1986). The instants of 2026 follow from the rules and the calendar.
const CHANGES: readonly [zone: string, change: string, before: string, after: string][] = [
  ['Europe/London', '2026-03-29T01:00:00Z', '2026-03-29 00:59', '2026-03-29 02:00'],
  ['Europe/London', '2026-10-25T01:00:00Z', '2026-10-25 01:59', '2026-10-25 01:00'],
  ['America/New_York', '2026-03-08T07:00:00Z', '2026-03-08 01:59', '2026-03-08 03:00'],
  ['America/New_York', '2026-11-01T06:00:00Z', '2026-11-01 01:59', '2026-11-01 01:00'],
];

// Half past five in the evening before and after each change, from the same rules.
const EVENINGS: readonly [zone: string, day: string, instant: string][] = [
  ['Europe/London', '2026-03-28', '2026-03-28T17:30:00.000Z'],
  ['Europe/London', '2026-03-29', '2026-03-29T16:30:00.000Z'],
  ['Europe/London', '2026-10-24', '2026-10-24T16:30:00.000Z'],
  ['Europe/London', '2026-10-25', '2026-10-25T17:30:00.000Z'],
  ['America/New_York', '2026-03-07', '2026-03-07T22:30:00.000Z'],
  ['America/New_York', '2026-03-08', '2026-03-08T21:30:00.000Z'],
  ['America/New_York', '2026-10-31', '2026-10-31T21:30:00.000Z'],
  ['America/New_York', '2026-11-01', '2026-11-01T22:30:00.000Z'],
  ['Africa/Johannesburg', '2026-01-15', '2026-01-15T15:30:00.000Z'],
  ['Africa/Johannesburg', '2026-07-15', '2026-07-15T15:30:00.000Z'],
  ['Asia/Kathmandu', '2026-01-15', '2026-01-15T11:45:00.000Z'],
  ['Asia/Kathmandu', '2026-07-15', '2026-07-15T11:45:00.000Z'],
];

function clockAt(ms: number, zone: string): string {
  const { day, time } = localTimeAt(new Date(ms), zone);
  return `${day} ${time}`;
}

function set(day: string, time: string, zone: string): string {
  const [on, at] = [parseSchoolDay(day), parseTimeOfDay(time)];
  if (!on || !at) throw new Error('the table holds a wrong date or time');
  return instantAt(on, at, zone).toISOString();
}

describe('the published changes of the clocks in 2026', () => {
  it.each(CHANGES)('in %s the clock jumps at %s', (zone, change, before, after) => {
    expect(clockAt(Date.parse(change) - 60_000, zone)).toBe(before);
    expect(clockAt(Date.parse(change), zone)).toBe(after);
  });

  it.each(EVENINGS)('in %s half past five on %s is %s', (zone, day, instant) => {
    expect(set(day, '17:30', zone)).toBe(instant);
    expect(clockAt(Date.parse(instant), zone)).toBe(`${day} 17:30`);
  });

  it('a skipped time lies after the gap and a repeated one is the first of the two', () => {
    expect(set('2026-03-29', '01:30', 'Europe/London')).toBe('2026-03-29T01:30:00.000Z');
    expect(set('2026-03-08', '02:30', 'America/New_York')).toBe('2026-03-08T07:30:00.000Z');
    expect(set('2026-10-25', '01:30', 'Europe/London')).toBe('2026-10-25T00:30:00.000Z');
    expect(set('2026-11-01', '01:30', 'America/New_York')).toBe('2026-11-01T05:30:00.000Z');
  });
});
