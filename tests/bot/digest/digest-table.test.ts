import { describe, expect, it } from 'vitest';
import { cell, digestTable } from '../../../bot/digest/digest-table.ts';
import { growthWords } from '../../../bot/texts/digest-table.ts';
import { addDays } from '../../../drills/index.ts';
import { practised, summaryOf, WEEK, week } from '../support/kingfisher.ts';

const [monday, tuesday, wednesday, thursday, friday] = WEEK;

/** The rows of a table in which nothing needs quoting. */
function rowsOf(table: string): (string | undefined)[][] {
  return table
    .replace(/^\ufeff/, '')
    .replaceAll('"', '')
    .trimEnd()
    .split('\r\n')
    .map((line) => line.split(','));
}

describe('the table of a digest', () => {
  it('has a row for each child under its headings, with the numbers of the summary', () => {
    const summary = summaryOf([week(1, 'Wren'), week(2, 'Otto')], WEEK.slice(0, 2));
    const [header, ...rows] = rowsOf(digestTable(summary));
    expect(header?.slice(0, 2)).toEqual(['number', 'nickname']);
    expect(header?.slice(-5)).toEqual([
      'days practised',
      'number bonds right',
      'number bonds asked',
      'pages',
      'number bonds over four weeks',
    ]);
    const line = [
      'practised',
      'practised',
      '2',
      '16',
      '20',
      '4',
      'too little to tell (2 evenings)',
    ];
    expect(rows).toEqual([
      ['1', 'Wren', ...line],
      ['2', 'Otto', ...line],
    ]);
    expect(rows.map((row) => Number(row.at(-2))).reduce((sum, n) => sum + n)).toBe(summary.pages);
  });

  it('leaves a cell empty where there is nothing, and never writes nought for it', () => {
    if (!monday || !tuesday || !wednesday || !thursday || !friday) throw new Error('five days');
    const clock = { strand: 'clock', rung: 'clock.half', right: 0, asked: 3 } as const;
    const otto = week(2, 'Otto', {
      evenings: [
        practised(monday, { parts: [clock] }),
        practised(tuesday, { status: 'silent' }),
        practised(wednesday, { status: 'not_today' }),
        practised(thursday, { status: 'unsent' }),
      ],
    });
    const summary = summaryOf([week(1, 'Wren', { evenings: [practised(monday)] }), otto]);
    const [, wren, other] = rowsOf(digestTable(summary));
    expect(wren?.slice(2, 12)).toEqual(['practised', '', '', '', '', '1', '8', '10', '', '']);
    expect(other?.slice(2, 12)).toEqual([
      'practised',
      'no answer',
      'not today',
      'not delivered',
      '',
      '1',
      '',
      '',
      '0',
      '3',
    ]);
  });

  it('says where a child’s own scores go, with how many evenings say so', () => {
    const earlier = [3, 4, 5].map((right, at) => ({
      day: addDays(WEEK[0] ?? never(), at - 5),
      parts: [{ strand: 'bonds', rung: 'bonds.to10', right, asked: 10 } as const],
    }));
    const summary = summaryOf([week(1, 'Wren', { earlier }), week(2, 'Otto', { evenings: [] })]);
    const [, wren, otto] = rowsOf(digestTable(summary));
    expect(wren?.at(-1)).toBe('rising (8 evenings)');
    expect(otto?.at(-1)).toBe('');
  });

  it('of a class without children is a row of headings', () => {
    expect(rowsOf(digestTable(summaryOf([])))).toHaveLength(1);
  });
});

describe('growth in words', () => {
  it('is as its docstring says', () => {
    expect(growthWords({ trend: 'steady', evenings: 9, aWeek: 0 })).toBe('steady (9 evenings)');
  });
});

describe('a cell', () => {
  it('is as its docstring says', () => {
    expect(cell('=SUM(A1)')).toBe("'=SUM(A1)");
    expect(cell('Otto, B')).toBe('"Otto, B"');
  });

  it('that holds a number is never taken for a formula', () => {
    expect(cell(-3)).toBe('-3');
    expect(cell(0)).toBe('0');
  });
});

function never(): never {
  throw new Error('the week has a first day');
}
