import { describe, expect, test } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { createPainter } from '../../../bot/media/index.ts';
import { copyScreen, eveningScreen } from '../../../bot/screens/evening-screen.ts';
import { fewerScreen } from '../../../bot/screens/fewer-screen.ts';
import { drillDaysScreen, pauseScreen } from '../../../bot/screens/pace-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { type ChildPace, type ChildStand, storedDay } from '../../../db/index.ts';
import { type FamilyPace, type PaceStand, START_PACE } from '../../../drills/index.ts';
import { EVENING_ID, TUESDAY, view } from '../support/evening.ts';
import { family, kingfisher } from '../support/kingfisher.ts';

const today = storedDay('2026-09-18');
const monday = storedDay('2026-09-21');
const of = (nickname: string, change: Partial<FamilyPace> = {}): ChildPace => ({
  child: family(nickname),
  pace: { ...START_PACE, ...change },
  today,
});
const labels = ({ buttons }: Screen) => buttons.map((row) => row.map(({ label }) => label));
const actions = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));

describe('the pause', () => {
  test('is offered until Monday, for one week, for two and until another day; each button carries its day', () => {
    const screen = pauseScreen([of('Wren')]);
    expect(labels(screen)).toEqual([
      ['Until Mon 21 Sept'],
      ['One week', 'Two weeks'],
      ['Until another day'],
      ['To the settings'],
    ]);
    expect(actions(screen).slice(0, 3)).toEqual(
      ['2026-09-21', '2026-09-25', '2026-10-02'].map((day) => ({ kind: 'pauseUntil', day })),
    );
  });

  test('under way says for each child until when, and begins with the way out', () => {
    const screen = pauseScreen([of('Wren', { pausedUntil: monday }), of('Robin')]);
    expect(String(screen.text)).toBe(
      [
        'A pause for Wren and Robin',
        'Wren: the drill comes again on Mon 21 Sept.',
        'Robin: no pause.',
      ].join('\n'),
    );
    expect(labels(screen)[0]).toEqual(['Start again now']);
  });

  test('that is over is not shown as one', () => {
    const over = pauseScreen([of('Wren', { pausedUntil: today })]);
    expect(labels(over).flat()).not.toContain('Start again now');
  });
});

describe('the days', () => {
  test('carry a tick where the drill comes, and each button turns its own day', () => {
    const screen = drillDaysScreen([of('Wren', { days: [1, 3] })]);
    expect(labels(screen)).toEqual([
      ['✓ Mon', 'Tue', '✓ Wed'],
      ['Thu', 'Fri'],
      ['Every school day'],
      ['To the settings'],
    ]);
    expect(actions(screen).slice(0, 2)).toEqual([
      { kind: 'drillDay', weekday: 1, on: 0 },
      { kind: 'drillDay', weekday: 2, on: 1 },
    ]);
  });

  test('have no way back to every school day where it is so', () => {
    expect(labels(drillDaysScreen([of('Wren')])).flat()).not.toContain('Every school day');
    const fewer = drillDaysScreen([of('Wren', { rate: 'three' })]);
    expect(labels(fewer).flat()).toContain('Every school day');
    expect(String(fewer.text)).toContain('three evenings a week now');
  });

  test('of many children fit a screen', () => {
    const many = Array.from({ length: 9 }, (_, at) => of(`Wren${at}`, { rate: 'one' }));
    for (const screen of [drillDaysScreen(many), pauseScreen(many)]) {
      expect(String(screen.text).split('\n').length).toBeLessThan(10);
    }
  });
});

describe('an evening of a family that has it less often', () => {
  const means = { painter: createPainter() };

  test('says so with the drill, and one tap brings every school day back', () => {
    const screen = eveningScreen(view({ fewer: 'three' }), TUESDAY, means, 'evening');
    expect(String(screen.text)).toMatch(
      /\n\nWe send the drill on three evenings a week now\. Tap to have it every school day\.$/,
    );
    expect(actions(screen).at(-1)).toEqual({ kind: 'everyDayNow', evening: EVENING_ID });
    const copy = copyScreen(view({ fewer: 'one' }), TUESDAY, false);
    expect(String(copy.text)).toContain('one evening a week');
  });

  test('says nothing of it in a nudge or a reminder', () => {
    for (const occasion of ['nudge', 'reminder'] as const) {
      const screen = eveningScreen(view({ fewer: 'three' }), TUESDAY, means, occasion);
      expect(String(screen.text)).not.toContain('evenings a week');
    }
  });
});

describe('the teacher’s list', () => {
  const STANDS: readonly PaceStand[] = [
    { kind: 'announced', rate: 'three', from: monday },
    { kind: 'kept' },
    { kind: 'paused', until: monday },
    { kind: 'days', days: [1, 3] },
    { kind: 'fewer', rate: 'one', from: today },
  ];
  const stands: readonly ChildStand[] = STANDS.map((stand, at) => ({
    id: String(at),
    number: at + 1,
    nickname: `Wren${at + 1}`,
    stand,
  }));

  test('has a button for what a teacher may change, and none for what a family chose', () => {
    const screen = fewerScreen(kingfisher, stands, 0);
    expect(labels(screen)).toEqual([
      ['Keep daily: 1. Wren1'],
      ['Not any more: 2. Wren2'],
      ['Keep daily: 5. Wren5'],
      ['Back'],
    ]);
    expect(actions(screen).slice(0, 2)).toMatchObject([
      { kind: 'keepDaily', number: 1, on: 1 },
      { kind: 'keepDaily', number: 2, on: 0 },
    ]);
    expect(String(screen.text)).toContain(
      '1. Wren1: no answer for two weeks. From Mon 21 Sept on three evenings a week.',
    );
  });

  test('of a whole class goes over pages of under ten lines, and an empty one says so', () => {
    const many = Array.from({ length: 5 }, () => stands).flat();
    for (const page of [0, 1, 4, 99]) {
      const screen = fewerScreen(kingfisher, many, page);
      expect(String(screen.text).split('\n').length).toBeLessThan(10);
      expect(screen.buttons.length).toBeLessThan(12);
    }
    expect(String(fewerScreen(kingfisher, [], 0).text)).toContain('Nobody just now');
  });
});
