import { describe, expect, it } from 'vitest';
import { childFacts, childPage } from '../../../bot/texts/child-page.ts';
import { reportWords } from '../../../bot/texts/report.ts';
import { storedDay } from '../../../db/index.ts';
import { aReport, noReport } from '../support/child-report.ts';

const WREN = { number: 4, nickname: 'Wren' };
const words = reportWords(WREN, aReport, 'Workbook: Pebble Path, at page 23 of 48.');
const all = JSON.stringify(words);

describe('a report in words', () => {
  it('begins with how often was practised, of how many school days, and when', () => {
    expect(words.lead).toBe(
      'Wren practised mental maths at home on 11 of 15 school days, from 31 August 2026 to 18 September 2026.',
    );
    expect(words.under).toBe(
      '22 workbook pages were done. Workbook: Pebble Path, at page 23 of 48.',
    );
  });

  it('says strand by strand what is known, what is growing and what is still being met', () => {
    expect(words.strands).toEqual([
      {
        title: 'Number bonds',
        sentences: [
          'On the way: adding within 10.',
          'Needs more time: adding across 10.',
          'Wren is still meeting 7 + 8 = 15; 4 + 9 = 13.',
        ],
      },
      { title: 'Doubles', sentences: ['Knows this well: doubles to 10 + 10.'] },
      {
        title: 'Clock',
        sentences: [
          'Just begun, too early to say: clock (half past).',
          'Wren is still meeting half past three.',
        ],
      },
    ]);
  });

  it('gives small next steps: three facts at most, then what comes next', () => {
    expect(words.steps).toEqual([
      'Say these aloud together, once a day: 7 + 8 = 15; 4 + 9 = 13; the clock at half past three.',
      'Ready to meet what comes next: doubles to 20 + 20.',
    ]);
  });

  it('says what it does not say', () => {
    expect(words.notSaid.join(' ')).toMatch(/no test and no diagnosis.*nobody.*not a nought/);
  });

  it('ranks nothing, gives no marks and presses nobody', () => {
    expect(all).not.toMatch(/%|rank|average|better than|worse|weak|fail|behind|must|\bof 100\b/i);
  });

  it('of a child without an evening says just that, and proposes nothing', () => {
    const none = reportWords(WREN, noReport, null);
    expect(none.lead).toContain('nothing to tell yet');
    expect([none.under, none.strands, none.steps]).toEqual(['', [], []]);
  });

  it('of a child who is sure of everything says to go on as now', () => {
    const doubles = aReport.strands.filter(({ strand }) => strand === 'doubles');
    const sure = { ...aReport, strands: doubles, goOn: [], practise: [] };
    expect(reportWords(WREN, sure, null).steps).toEqual([
      'Go on as now: a few minutes, with a rest when a day was long.',
    ]);
  });
});

describe('a child’s page', () => {
  const page = {
    ...WREN,
    report: aReport,
    week: [],
    workbook: null,
    adjusted: null,
    helpers: 2,
    reachable: 2,
    left: false,
    heard: storedDay('2026-09-18'),
  };

  it('tells what is sure and what is still being met', () => {
    const { text } = childPage(page);
    expect(text).toContain('\nSure of: doubles to 10 + 10.\n');
    expect(text).toContain(
      '\nStill meeting: 7 + 8 = 15; 4 + 9 = 13; the clock at half past three.\n',
    );
    expect(text).toContain('\nFamily: 2 helpers, last heard from on Fri 18 Sept.\n');
  });

  it('tells a family that left from one that never joined', () => {
    expect(childPage({ ...page, helpers: 0, left: true }).text).toContain('the helper has left');
    expect(childPage({ ...page, helpers: 0 }).text).toContain('nobody has joined yet');
  });

  it('says without any evening that there is none, and nothing of marks', () => {
    const { text } = childPage({ ...page, report: noReport, heard: null });
    expect(text).toContain('No evening to tell of yet.');
    expect(text).not.toContain('marks');
  });

  it('lists facts to say together two a line, with their answers', () => {
    expect(childFacts(WREN, aReport.practise).text.split('\n').slice(1, -1)).toEqual([
      '7 + 8 = 15 · 4 + 9 = 13',
      'the clock at half past three · double 9 = 18',
      'half of 14 = 7',
    ]);
  });
});
