import { describe, expect, it } from 'vitest';
import { answerPages, cardPages, practicePages, slipPages } from '../../../bot/paper/index.ts';
import { pageOf } from '../../../bot/paper/page.ts';
import { qrSquare } from '../../../bot/paper/qr-square.ts';
import { smallClock } from '../../../bot/paper/small-clock.ts';
import { longDate, PAPER_WORDS } from '../../../bot/texts/paper.ts';
import { storedDay } from '../../../db/index.ts';
import { cardsOf, days, slipsInput } from './samples.ts';

const words = PAPER_WORDS.en;

describe('an example beside the code', () => {
  it('gives what it says', () => {
    const cards = cardsOf('bonds.to20', 9);
    expect(pageOf('letter', '').width).toBe(612);
    expect(cardPages({ cards, paper: 'a4' })).toHaveLength(4);
    const ten = cardsOf('bonds.to20', 10);
    const answers = {
      title: 'Kingfisher class',
      right: '',
      cards: ten,
      paper: 'a4',
      words,
    } as const;
    expect(answerPages(answers)).toHaveLength(1);
    const sheets = [{ child: null, days: days(1), workbook: null }];
    const practice = { sheets, right: '', paper: 'a4', words } as const;
    expect(practicePages(practice)).toHaveLength(1);
    expect(slipPages(slipsInput(24))).toHaveLength(4);
    expect(qrSquare('https://example.org', { x: 0, y: 0, size: 100 })).toMatch(/^<path/);
    const clock = smallClock(
      { kind: 'clock', hour: 3, minute: 30 },
      { x: 0, middle: 20, radius: 20 },
    );
    expect(clock).toMatch(/^<g/);
    expect(PAPER_WORDS.de.run(35, 5)).toBe('Fang bei 35 an. Zähle in 5er-Schritten weiter.');
    expect(longDate(storedDay('2026-11-12'), 'en')).toBe('12 November 2026');
  });
});

describe('a QR code', () => {
  it('of a text longer than 300 characters is refused', () => {
    expect(() => qrSquare('x'.repeat(301), { x: 0, y: 0, size: 100 })).toThrow('takes 300');
  });
});

describe('the words on paper', () => {
  it('count back where a run goes down, in every language', () => {
    const downs = Object.values(PAPER_WORDS).map(({ run }) => run(50, -10));
    const ups = Object.values(PAPER_WORDS).map(({ run }) => run(50, 10));
    for (const [i, down] of downs.entries()) {
      expect(down).not.toBe(ups[i]);
      expect(down).toContain('50');
      expect(down).not.toMatch(/-\d/);
    }
  });
});
