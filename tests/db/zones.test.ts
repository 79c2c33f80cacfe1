import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { instantAt, localTimeAt, parseZone } from '../../db/index.ts';
import { timeOfDayFrom } from '../../drills/index.ts';
import { day, time } from '../support/term.ts';

describe('a zone’s name', () => {
  it.each([
    ['africa/johannesburg', 'Africa/Johannesburg'],
    [' Europe/London ', 'Europe/London'],
    ['AMERICA/NEW_YORK', 'America/New_York'],
    ['america/port-au-prince', 'America/Port-au-Prince'],
    ['asia/kathmandu', 'Asia/Kathmandu'],
    ['asia/kolkata', 'Asia/Kolkata'],
    ['utc', 'UTC'],
    ['Etc/GMT+5', 'Etc/GMT+5'],
  ])('%s is kept as %s', (typed, kept) => {
    expect(parseZone(typed)).toBe(kept);
  });

  it.each([
    'Mars/Base',
    '',
    '+02:00',
    'GMT+2',
    'Europe/',
    'Europe/London; drop table',
    '5',
    'Лондон',
  ])('%s is no zone', (typed) => {
    expect(parseZone(typed)).toBeNull();
  });

  it('once kept is kept again', () => {
    for (const name of Intl.supportedValuesOf('timeZone')) expect(parseZone(name)).toBe(name);
  });
});

describe('a wall clock', () => {
  it('shows the example of the documentation', () => {
    const at = localTimeAt(new Date('2026-10-25T17:30:00Z'), 'Europe/London');
    expect(at).toEqual({ day: '2026-10-25', time: '17:30' });
    const instant = instantAt(day('2026-03-29'), time('17:30'), 'Europe/London');
    expect(instant.toISOString()).toBe('2026-03-29T16:30:00.000Z');
  });

  it('cuts off seconds, so that a minute lasts a minute', () => {
    const at = localTimeAt(new Date('2026-09-14T15:30:59.999Z'), 'Africa/Johannesburg');
    expect(at).toEqual({ day: '2026-09-14', time: '17:30' });
  });

  it('set to a time that daylight saving skips means the same stretch after the gap', () => {
    const at = instantAt(day('2026-03-29'), time('01:30'), 'Europe/London');
    expect(localTimeAt(at, 'Europe/London')).toEqual({ day: '2026-03-29', time: '02:30' });
  });

  it('set to a time that comes twice means the first', () => {
    const first = instantAt(day('2026-10-25'), time('01:30'), 'Europe/London');
    expect(first.toISOString()).toBe('2026-10-25T00:30:00.000Z');
    const second = new Date(first.getTime() + 3_600_000);
    expect(localTimeAt(second, 'Europe/London')).toEqual(localTimeAt(first, 'Europe/London'));
  });

  it('read back shows what it was set to, on every day and in every zone, but for skipped times', () => {
    const zones = ['Europe/London', 'America/New_York', 'Africa/Johannesburg', 'Asia/Kathmandu'];
    const dates = [
      '2026-03-07',
      '2026-03-08',
      '2026-03-29',
      '2026-10-25',
      '2026-11-01',
      '2026-12-31',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.constantFrom(...dates.map(day)),
        fc.integer({ min: 3 * 60, max: 1_439 }).map(timeOfDayFrom),
        (zone, on, at) => {
          expect(localTimeAt(instantAt(on, at, zone), zone)).toEqual({ day: on, time: at });
        },
      ),
      { seed: 20_260_914, numRuns: 400 },
    );
  });
});
