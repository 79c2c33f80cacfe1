import { describe, expect, test } from 'vitest';
import { nextRung } from '../../../drills/digest/next-rung.ts';
import { RUNGS, rungById, rungsOf, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, practised, score, unmarked, WEEK } from '../support/week.ts';

const summaryOf = (children: Parameters<typeof summariseWeek>[0]['children']) =>
  summariseWeek({ days: WEEK, today: FRIDAY, children });

const children = [1, 2, 3].map((number) =>
  child(number, {
    evenings: [
      practised(0, { parts: [score('clock.half', 10, 10), score('bonds.to10', 5, 10)] }),
      practised(1, { parts: [score('bonds.make10', 10, 10)] }),
    ],
  }),
);

describe('rungs of the week', () => {
  const { rungs, strands } = summaryOf([...children, child(4)]);

  test('only practised rungs are there, in the order of the ladder', () => {
    expect(rungs.map(({ rung }) => rung)).toEqual(['bonds.to10', 'bonds.make10', 'clock.half']);
  });

  test('each has its own tally and its own advice', () => {
    expect(rungs[0]).toMatchObject({
      strand: 'bonds',
      rung: 'bonds.to10',
      right: 15,
      asked: 30,
      children: 3,
      secure: 0,
      notYet: 3,
      tooFew: 0,
      proposal: { kind: 'stay' },
    });
    expect(rungs[2]).toMatchObject({ secure: 3, children: 3, proposal: { kind: 'move_up' } });
  });

  test('a strand adds up all its rungs over all children', () => {
    expect(strands).toMatchObject([
      { strand: 'bonds', right: 45, asked: 60, rose: 0, slipped: 0 },
      { strand: 'clock', right: 30, asked: 30, rose: 0, slipped: 0 },
    ]);
  });

  test('a child without marks is no evidence, for or against', () => {
    const silent = child(5, { evenings: [unmarked(0, 'silent')] });
    expect(summaryOf([...children, silent]).rungs[2]).toMatchObject({ children: 3, secure: 3 });
  });

  test('a child whose helper has left keeps its marks in the tally but is not judged', () => {
    const left = child(5, {
      joined: false,
      left: true,
      evenings: [practised(0, { parts: [score('clock.half', 2, 10)] })],
    });
    const clock = summaryOf([...children, left]).rungs[2];
    expect(clock).toMatchObject({ right: 32, asked: 40, children: 3, secure: 3, notYet: 0 });
  });

  test('the proposal to split names children and nothing of their scores', () => {
    const wobbly = [4, 5, 6].map((number) =>
      child(number, { evenings: [practised(0, { parts: [score('clock.half', 3, 10)] })] }),
    );
    expect(summaryOf([...children, ...wobbly]).rungs[2]?.proposal).toEqual({
      kind: 'split',
      smaller: 'not_yet',
      group: [4, 5, 6].map((number) => ({
        childId: `child-${number}`,
        number,
        nickname: `Wren ${number}`,
      })),
    });
  });
});

describe('the rung to go on to', () => {
  const nextOf = (id: Parameters<typeof score>[0], practisedToo: (typeof id)[] = []) => {
    const rung = rungById(id);
    if (rung === null) throw new Error(`no such rung: ${id}`);
    return nextRung(rung, rungsOf(rung.strand), new Set([id, ...practisedToo]));
  };

  test('is as its docstring says', () => {
    const rung = rungById('halves.to10');
    expect(rung && nextRung(rung, rungsOf('halves'), new Set())).toBe('halves.to20');
  });

  test('is the next of the strand, so that no rung is left out on the way up', () => {
    for (const strand of new Set(RUNGS.map((rung) => rung.strand))) {
      const ladder = rungsOf(strand).map(({ id }) => id);
      expect(ladder.map((id) => nextOf(id))).toEqual([...ladder.slice(1), null]);
    }
  });

  test('needs no rung of the strand that is still to come', () => {
    for (const rung of RUNGS) {
      const ladder = rungsOf(rung.strand).map(({ id }) => id);
      const next = rungById(nextOf(rung.id) ?? rung.id);
      const ahead = next?.needs.filter((id) => ladder.indexOf(id) > ladder.indexOf(rung.id));
      expect(ahead, rung.id).toEqual([]);
    }
  });

  test('from one times table is the next table, and the tables mixed come after all of them', () => {
    expect(nextOf('times.twos')).toBe('times.tens');
    expect(nextOf('times.twos', ['times.tens'])).toBe('times.fives');
    expect(nextOf('times.fives')).toBe('times.mixed');
  });

  test('is never the rung itself nor one of another strand', () => {
    for (const rung of RUNGS) {
      expect(nextOf(rung.id)).not.toBe(rung.id);
      expect((nextOf(rung.id) ?? rung.id).split('.')[0]).toBe(rung.strand);
    }
  });

  test('passes over what the class practises already', () => {
    const first = nextOf('halves.to10');
    expect(first).not.toBeNull();
    if (first !== null) expect(nextOf('halves.to10', [first])).not.toBe(first);
  });

  test('is none at the top of the ladder', () => {
    for (const strand of new Set(RUNGS.map((rung) => rung.strand))) {
      const top = rungsOf(strand).at(-1);
      if (top) expect(nextOf(top.id)).toBeNull();
    }
  });
});
