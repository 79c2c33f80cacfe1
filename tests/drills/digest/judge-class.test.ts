import { describe, expect, test } from 'vitest';
import { judgeClass, levelIn } from '../../../drills/digest/judge-class.ts';
import type { Level } from '../../../drills/digest/judge-security.ts';
import { MEMORY_MODEL, type RungId, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, practised, score, WEEK } from '../support/week.ts';

const levels = (...pairs: [RungId, Level][]) => new Map(pairs);

describe('where a child stands in a whole strand', () => {
  test('is at the weakest of its rungs, as its docstring says', () => {
    expect(levelIn('halves', levels(['halves.to10', 'secure'], ['halves.to20', 'not_yet']))).toBe(
      'not_yet',
    );
    expect(
      levelIn('halves', levels(['halves.to10', 'secure'], ['halves.to20', 'in_between'])),
    ).toBe('in_between');
  });

  test('is secure only on every rung that can be judged', () => {
    expect(levelIn('halves', levels(['halves.to10', 'secure'], ['halves.to20', 'secure']))).toBe(
      'secure',
    );
  });

  test('leaves a rung with too few answers out, unless there is no other', () => {
    expect(levelIn('halves', levels(['halves.to10', 'secure'], ['halves.to20', 'too_few']))).toBe(
      'secure',
    );
    expect(levelIn('halves', levels(['halves.to20', 'too_few']))).toBe('too_few');
  });

  test('looks at no other strand, and says nothing without marks', () => {
    expect(levelIn('halves', levels(['doubles.to5', 'not_yet']))).toBeNull();
    expect(levelIn('halves', new Map())).toBeNull();
  });
});

describe('a class judged', () => {
  const strong = child(1, {
    evenings: [0, 1].map((at) => practised(at, { parts: [score('halves.to10', 10, 10)] })),
  });
  const mixed = child(2, {
    evenings: [0, 1].map((at) =>
      practised(at, { parts: [score('halves.to10', 10, 10), score('halves.to20', 2, 10)] }),
    ),
  });
  const input = { days: WEEK, today: FRIDAY, children: [strong, mixed] };

  test('has a level for each rung with marks, and none for another', () => {
    const judged = judgeClass(input, MEMORY_MODEL);
    expect(judged.map((each) => [...each.levels])).toEqual([
      [['halves.to10', 'secure']],
      [
        ['halves.to10', 'secure'],
        ['halves.to20', 'not_yet'],
      ],
    ]);
  });

  test('a part of which nothing was asked is no mark', () => {
    const none = child(1, { evenings: [practised(0, { parts: [score('halves.to10', 0, 0)] })] });
    const summary = summariseWeek({ ...input, children: [none] });
    expect(summary.rungs).toEqual([]);
    expect(summary.children[0]?.standings.size).toBe(0);
  });

  test('counts the share secure per strand and per rung', () => {
    const { strands, rungs, children } = summariseWeek(input);
    expect(strands[0]).toMatchObject({ strand: 'halves', children: 2, secure: 1, notYet: 1 });
    expect(rungs.map(({ rung, children: on, secure }) => [rung, on, secure])).toEqual([
      ['halves.to10', 2, 2],
      ['halves.to20', 1, 0],
    ]);
    expect(children.map(({ standings }) => standings.get('halves'))).toEqual(['secure', 'not_yet']);
  });

  test('a child on easier steps of its own counts for the strand’s share with none of these', () => {
    const own = child(3, {
      evenings: [0, 1].map((at) =>
        practised(at, { parts: [{ ...score('halves.tens', 10, 10), own: true }] }),
      ),
    });
    const summary = summariseWeek({ ...input, children: [strong, own] });
    expect(summary.strands[0]).toMatchObject({ asked: 40, children: 1, secure: 1 });
    expect(summary.children[1]?.standings.get('halves')).toBe('secure');
  });

  test('a child whose helper has left is in the tally, and in no share', () => {
    const left = { ...mixed, joined: false, left: true };
    const { strands } = summariseWeek({ ...input, children: [strong, left] });
    expect(strands[0]).toMatchObject({ asked: 60, children: 1, secure: 1, notYet: 0 });
  });
});
