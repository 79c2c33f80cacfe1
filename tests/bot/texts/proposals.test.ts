import { describe, expect, it } from 'vitest';
import { type ProposalsInput, proposals } from '../../../bot/texts/proposals.ts';
import type { Named, RungSummary, StepUp } from '../../../drills/index.ts';

const SECURE = 'Secure: we expect 9 in 10 right, going by 8 answers or more.';

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
const step: StepUp = { part: 0, strand: 'bonds', from: 'bonds.to10', to: 'bonds.make10' };

const linesOf = (rungs: readonly RungSummary[], rest: Partial<ProposalsInput> = {}) =>
  proposals({ rungs, steps: [], said: null, ...rest })
    .text.split('\n')
    .slice(1);

describe('the proposals', () => {
  it('say what accepting would change, and why', () => {
    expect(linesOf([up], { steps: [step] })).toEqual([
      'adding within 10: move up to what makes 10 (9 of 10 children secure, 1 not yet).',
      SECURE,
    ]);
  });

  it('say where the ladder ends', () => {
    expect(linesOf([{ ...up, next: null }])[0]).toContain('the top of its ladder');
  });

  it('say that a step the plan does not hold any more is ready all the same', () => {
    expect(linesOf([up])[0]).toBe(
      'adding within 10: ready to move up, and not in the plan any more (9 of 10 children secure, 1 not yet).',
    );
  });

  it('name what would be next while no plan is in use', () => {
    expect(linesOf([up], { steps: null })[0]).toContain('next would be what makes 10');
  });

  it('give the reason for staying in counts of children', () => {
    expect(linesOf([rung(), rung({ notYet: 2, tooFew: 1 })])[0]).toBe(
      'Stay: adding within 10 (6 of 10 children secure); adding within 10 (6 of 10 children secure, 2 not yet, 1 with too few answers).',
    );
  });

  it('name the smaller group of a split, and what it needs', () => {
    const group = named('Wren', 'Otter', 'Robin');
    expect(linesOf([split('not_yet', group)])[0]).toBe(
      'adding within 10: worth splitting (6 of 10 children secure, 3 not yet). 1. Wren, 2. Otter and 3. Robin need more time.',
    );
    expect(linesOf([split('secure', group)])[0]).toContain('Robin could go on to what makes 10.');
    expect(linesOf([split('secure', group, { next: null })])[0]).toContain('could leave it.');
  });

  it('give only the class list’s numbers of a group of more than six', () => {
    const seven = named('Wren', 'Otter', 'Robin', 'Fern', 'Sorrel', 'Otto', 'Juniper');
    expect(linesOf([split('not_yet', seven)])[0]).toContain(
      'numbers 1, 2, 3, 4, 5, 6 and 7 need more time',
    );
  });

  it('advise nothing where too few practised, and say so without the word secure', () => {
    const little = rung({ proposal: { kind: 'too_little' }, children: 2 });
    expect(linesOf([little])).toEqual(['Too few children practised to say: adding within 10.']);
  });

  it('say that there is nothing when nobody practised', () => {
    expect(linesOf([])).toEqual(['Nobody has practised in these days: nothing to propose.']);
  });

  it('of a week that is over are not shown at all', () => {
    const { text } = proposals({ rungs: [up], steps: [step], said: null, isOver: true });
    expect(text).toContain('of an earlier week');
    expect(text).not.toContain('move up');
  });

  it('keep to nine lines, whatever is proposed', () => {
    const many = Array.from({ length: 8 }, () => up);
    const rest = [rung(), rung({ proposal: { kind: 'too_little' } })];
    const all = linesOf([...many, ...rest], { said: 'In use from the next evening: halves.' });
    expect(all.length + 1).toBeLessThan(10);
    expect(all).toContain('and 5 more');
    expect(linesOf(many.slice(0, 7))).toHaveLength(8);
    expect(linesOf(many)).toContain('and 2 more');
  });
});
