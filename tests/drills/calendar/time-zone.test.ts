import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const PROGRAM = fileURLToPath(new URL('./print-calendar.ts', import.meta.url));

function calendarIn(timeZone: string): { calendar: unknown; machineOffset: number } {
  const printed = execFileSync(process.execPath, ['--import', 'tsx', PROGRAM], {
    env: { TZ: timeZone },
    encoding: 'utf8',
  });
  return JSON.parse(printed);
}

// Apia skipped 30 December 2011; Lord Howe shifts by half an hour; Sao Paulo changed its clocks at midnight.
test('no time zone of the machine changes the calendar', { timeout: 60_000 }, () => {
  const utc = calendarIn('UTC');
  for (const timeZone of ['Pacific/Apia', 'Australia/Lord_Howe', 'America/Sao_Paulo']) {
    const local = calendarIn(timeZone);
    expect(local.machineOffset, timeZone).not.toBe(utc.machineOffset);
    expect(local.calendar, timeZone).toEqual(utc.calendar);
  }
});
