import { expect, test } from 'vitest';
import { paceRows } from '../../../bot/features/held-pace-rows.ts';
import { readIn } from '../../../bot/language/index.ts';
import { slowerLine } from '../../../bot/texts/fewer.ts';
import { storedDay } from '../../../db/index.ts';

const day = '2026-09-18';
const usual = {
  ...{ day, rate: 'daily', announcedFrom: null, keptByTeacher: false },
  ...{ pausedUntil: null, weekdays: null },
};

test('each time the pace changed is a row of the table of everything that is kept', () => {
  const pace = [
    { ...usual, announcedFrom: '2026-09-21' },
    { ...usual, rate: 'three', pausedUntil: '2026-10-05', weekdays: [1, 3, 4, 5] },
    { ...usual, keptByTeacher: true },
  ];
  const child = {
    ...{ nickname: 'Wren', number: 1, classTitle: 'Kingfisher class', zone: 'Europe/London' },
    ...{ eveningTime: '17:30', addedAt: day, archivedAt: null, erasingSince: null },
    ...{ adjustment: null, pace },
  };
  const what = 'how often the drill comes';
  expect(paceRows(child)).toEqual([
    [what, day, '', 'every school day', 'fewer evenings from 2026-09-21'],
    [
      what,
      day,
      '',
      'three evenings a week',
      'paused until 2026-10-05; only on Mon, Wed, Thu and Fri',
    ],
    [what, day, '', 'every school day', 'kept by the teacher'],
  ]);
  expect(readIn('de', () => paceRows(child))[2]?.[4]).toBe('von der Lehrkraft so gelassen');
});

test('a digest names three families that have it less often and counts the others', () => {
  const until = storedDay('2026-09-21');
  const slower = [1, 2, 3, 4, 5].map((number) => ({
    ...{ childId: String(number), number, nickname: `Wren${number}` },
    stand: { kind: 'paused', until } as const,
  }));
  expect(slowerLine(slower)).toBe(
    'Fewer evenings: 1. Wren1 (paused until Mon 21 Sept); 2. Wren2 (paused until Mon 21 Sept); 3. Wren3 (paused until Mon 21 Sept); and 2 more.',
  );
  expect(slowerLine([])).toBeNull();
});
