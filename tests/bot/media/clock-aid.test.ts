import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { countedClock } from '../../../bot/media/counted-clock.ts';
import { drawingOf } from '../../../bot/media/drawing.ts';
import { clockAid, clockAidSheet, loneCard } from '../../../bot/media/index.ts';
import { clockAidTitle, clockAidWords } from '../../../bot/texts/clock-aid.ts';
import { LANGUAGES, type Language } from '../../../drills/index.ts';
import { layoutFaults } from './layout-faults.ts';
import { textBoxes } from './text-boxes.ts';

const counted = (minute: number) =>
  textBoxes(
    drawingOf(200, 200, countedClock({ hour: 3, minute, cx: 100, cy: 100, radius: 60 })),
  ).map(({ content }) => Number(content));
const HOURS = Array.from({ length: 12 }, (_, i) => i + 1);
const explained = (hour: number, minute: number, language: Language = 'en') =>
  textBoxes(clockAid({ hour, minute, ...clockAidWords({ hour, minute }, language) })).map(
    ({ content }) => content,
  );

describe('a counted clock', () => {
  it('counts by fives as far as the long hand and no further', () => {
    expect(counted(15)).toEqual([...HOURS, 5, 10, 15]);
    expect(counted(55).slice(12)).toEqual(Array.from({ length: 11 }, (_, i) => (i + 1) * 5));
  });

  it('counts nothing at a full hour', () => {
    expect(counted(0)).toEqual(HOURS);
  });

  it('puts each count beside its mark: fifteen to the right of three, thirty under six', () => {
    const boxes = textBoxes(
      drawingOf(200, 200, countedClock({ hour: 3, minute: 30, cx: 100, cy: 100, radius: 60 })),
    );
    const [fifteen, thirty] = ['15', '30'].map((text) => boxes.find((box) => box.content === text));
    expect(fifteen?.left).toBeGreaterThan(160);
    expect(((thirty?.left ?? 0) + (thirty?.right ?? 0)) / 2).toBeCloseTo(100, 0);
    expect(thirty?.top).toBeGreaterThan(160);
  });
});

describe('an explained clock', () => {
  it('names the hands by length and thickness, never by colour, and says the time in words and figures', () => {
    const words = explained(3, 30).join(' ');
    expect(words).toContain('half past three · 3:30');
    expect(words).toMatch(/Short, thick hand: past 3, not yet at 4\. The hour is 3\./);
    expect(words).toMatch(/Long, thin hand: on 6\. Count by fives from the top: 30 minutes\./);
    expect(words).not.toMatch(/left until|brown|black|colour/);
  });

  it('says how much is left once the long hand is past six, also over twelve', () => {
    expect(explained(12, 40).join(' ')).toContain('20 minutes are left until 1.');
  });

  it('has no minutes at a full hour', () => {
    const words = explained(12, 0).join(' ');
    expect(words).toContain('on 12. The hour is 12.');
    expect(words).toContain('No minutes past the hour.');
  });

  it('explains in the reader’s language and says the time in the class’s', () => {
    const words = readIn('de', () => explained(3, 30, 'af').join(' '));
    expect(words).toContain('halfvier · 3:30');
    expect(words).toContain('Kurzer, dicker Zeiger:');
  });

  it('keeps its texts apart for every time and language, alone and on a sheet', () => {
    for (const language of Object.keys(LANGUAGES) as Language[]) {
      readIn(language, () => {
        const clocks = Array.from({ length: 20 }, (_, i) => {
          const time = { hour: (i % 12) + 1, minute: (i * 25) % 60 };
          return { number: i + 1, ...time, ...clockAidWords(time, language) };
        });
        for (const clock of clocks) expect(layoutFaults(clockAid(clock))).toEqual([]);
        expect(layoutFaults(clockAidSheet({ title: clockAidTitle(), rules: [], clocks }))).toEqual(
          [],
        );
      });
    }
  });

  it('a sheet of no clock is refused', () => {
    expect(() => clockAidSheet({ title: '', rules: [], clocks: [] })).toThrow(RangeError);
  });
});

it('a card alone carries no number, so it is the same picture at every place; a clock is square, a sum half as high', () => {
  expect(loneCard({ kind: 'clock', hour: 3, minute: 30 })).toMatchObject({
    width: 360,
    height: 360,
  });
  const sum = loneCard({ kind: 'text', text: '3 + 4' });
  expect(sum.height).toBe(180);
  expect(textBoxes(sum).map(({ content }) => content)).toEqual(['3 + 4']);
});
