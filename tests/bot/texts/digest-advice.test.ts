import { describe, expect, it } from 'vitest';
import { growthLine, readyLines, rungLines } from '../../../bot/texts/digest-advice.ts';
import type { Named, RungSummary } from '../../../drills/index.ts';

const SECURE = 'Secure: we expect 9 in 10 right, going by 8 answers or more.';
const NO_ADVICE = 'No advice where too few of the children practised.';

function rung(change: Partial<RungSummary> = {}): RungSummary {
  return {
    strand: 'bonds',
    rung: 'bonds.to10',
    right: 90,
    asked: 100,
    children: 10,
    secure: 6,
    notYet: 0,
    tooFew: 0,
    share: { lower: 0.4, upper: 0.8 },
    proposal: { kind: 'stay' },
    next: 'bonds.make10',
    ...change,
  };
}

const named = (...names: string[]): Named[] =>
  names.map((nickname, index) => ({ childId: nickname, number: index + 1, nickname }));

const up = rung({ secure: 9, notYet: 1, proposal: { kind: 'move_up' } });
const split = (smaller: 'secure' | 'not_yet', group: Named[], change = {}) =>
  rung({ secure: 6, notYet: 3, proposal: { kind: 'split', smaller, group }, ...change });

describe('the answer of a digest', () => {
  it('names what is ready to move up and what comes next', () => {
    expect(readyLines([up, rung()])).toEqual([
      'Ready to move up: adding within 10 (next: what makes 10).',
    ]);
  });

  it('says where the ladder ends', () => {
    expect(readyLines([{ ...up, next: null }])).toEqual([
      'Ready to move up: adding within 10 (top of its ladder).',
    ]);
  });

  it('names what is worth splitting in a line of its own', () => {
    expect(readyLines([up, split('not_yet', named('Wren', 'Otter', 'Robin'))])).toEqual([
      'Ready to move up: adding within 10 (next: what makes 10).',
      'Worth splitting: adding within 10.',
    ]);
  });

  it('says nothing where nobody practised', () => {
    expect(readyLines([])).toEqual([]);
  });

  it('keeps titles with commas apart by semicolons', () => {
    const two = [
      split('not_yet', named('Wren', 'Otter', 'Robin')),
      { ...rung(), rung: 'bonds.make10' as const },
    ];
    expect(
      readyLines(
        two.map((each) => ({ ...each, proposal: split('not_yet', named('Wren')).proposal })),
      ),
    ).toEqual(['Worth splitting: adding within 10; what makes 10.']);
  });

  it('says so when nothing is ready', () => {
    expect(readyLines([rung()])).toEqual(['Nothing is ready to move up yet.']);
  });
});

describe('the advice on a rung', () => {
  const lineOf = (one: RungSummary) => rungLines([one])[0];

  it('gives the reason for staying in counts of children', () => {
    expect(lineOf(rung())).toBe('adding within 10: 90 of 100, stay (6 of 10 children secure)');
    expect(lineOf(rung({ notYet: 2, tooFew: 1 }))).toBe(
      'adding within 10: 90 of 100, stay (6 of 10 children secure, 2 not yet, 1 with too few answers)',
    );
  });

  it('gives the reason for moving up', () => {
    expect(lineOf(up)).toBe(
      'adding within 10: 90 of 100, move up (9 of 10 children secure, 1 not yet)',
    );
  });

  it('names the smaller group of a split, and what it needs', () => {
    expect(lineOf(split('not_yet', named('Wren', 'Otter', 'Robin')))).toBe(
      'adding within 10: 90 of 100, split (6 of 10 children secure, 3 not yet): 1. Wren, 2. Otter and 3. Robin need more time',
    );
    expect(lineOf(split('secure', named('Wren', 'Otter', 'Robin')))).toContain(
      ': 1. Wren, 2. Otter and 3. Robin could go on to what makes 10',
    );
    expect(lineOf(split('secure', named('Wren', 'Otter', 'Robin'), { next: null }))).toContain(
      ': 1. Wren, 2. Otter and 3. Robin could leave it',
    );
  });

  it('gives only the class list’s numbers of a group of more than six', () => {
    const seven = named('Wren', 'Otter', 'Robin', 'Fern', 'Sorrel', 'Otto', 'Juniper');
    expect(lineOf(split('not_yet', seven))).toContain(
      ': numbers 1, 2, 3, 4, 5, 6 and 7 need more time',
    );
  });

  it('is left out where there is too little to tell, and why is said once', () => {
    const little = rung({ proposal: { kind: 'too_little' }, children: 2 });
    expect(rungLines([little, little, up])).toEqual([
      'adding within 10: 90 of 100',
      'adding within 10: 90 of 100',
      'adding within 10: 90 of 100, move up (9 of 10 children secure, 1 not yet)',
      NO_ADVICE,
      SECURE,
    ]);
    expect(rungLines([little])).toEqual(['adding within 10: 90 of 100', NO_ADVICE]);
  });

  it('explains “secure” only where the word is used', () => {
    expect(rungLines([])).toEqual([]);
    expect(rungLines([up]).at(-1)).toBe(SECURE);
  });
});

describe('growth in one line', () => {
  const strand = (rose: number, slipped: number) =>
    ({ strand: 'halves', right: 80, asked: 90, rose, slipped }) as const;

  it('counts who rose and who slipped, as its docstring says', () => {
    expect(growthLine([strand(9, 2)])).toBe(
      'Against their own last four weeks: halves 9 rose, 2 slipped.',
    );
  });

  it('says nothing of a nought, and nothing at all when nobody’s scores moved', () => {
    expect(growthLine([strand(0, 0), { ...strand(0, 1), strand: 'clock' }, strand(3, 0)])).toBe(
      'Against their own last four weeks: clock 1 slipped; halves 3 rose.',
    );
    expect(growthLine([strand(0, 0)])).toBeNull();
    expect(growthLine([])).toBeNull();
  });

  it('never names a child', () => {
    expect(growthLine([strand(1, 1)])).not.toMatch(/\d+\. /);
  });
});
