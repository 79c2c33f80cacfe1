import { describe, expect, test } from 'vitest';
import {
  type FactId,
  type FactMemory,
  type Mark,
  MEMORY_MODEL,
  rebuildMemory,
} from '../../../drills/index.ts';
import { simulateClass } from './class-term.ts';
import { learnMark } from './model-policy.ts';
import { NEAREST_ORACLE, ORACLES } from './oracle.ts';
import { BASELINE, OURS, POLICIES } from './policies.ts';
import { factsIn, planOn, STEADY, STEPPED } from './schedule.ts';
import { termOf } from './term.ts';

const FEW = {
  learner: 'activation',
  schedule: STEADY,
  children: 3,
  days: 15,
  missed: 0.2,
  slips: 0.03,
  seed: 'test',
} as const;

describe('a simulated class', () => {
  test('the same seed gives the same outcome, another seed another', () => {
    const first = simulateClass({ ...FEW, policy: OURS });
    expect(simulateClass({ ...FEW, policy: OURS })).toEqual(first);
    expect(simulateClass({ ...FEW, policy: OURS, seed: 'other' })).not.toEqual(first);
  });

  test('under every policy the same children miss the same evenings', () => {
    const outcomes = [...POLICIES.keys()].map((policy) => simulateClass({ ...FEW, policy }));
    expect(outcomes).toHaveLength(10);
    expect(new Set(outcomes.map(({ evenings }) => evenings)).size).toBe(1);
    expect(new Set(outcomes.map(({ knownBefore }) => knownBefore)).size).toBe(1);
  });

  test('practice teaches: without evenings less is known at the end', () => {
    const idle = simulateClass({ ...FEW, policy: BASELINE, missed: 1 });
    expect(idle.evenings).toBe(0);
    expect(idle.score).toBe(0);
    expect(simulateClass({ ...FEW, policy: BASELINE }).known).toBeGreaterThan(idle.known);
  });

  test('who sees the truth teaches more than random cards', () => {
    for (const learner of ['activation', 'power'] as const) {
      const random = simulateClass({ ...FEW, learner, policy: BASELINE });
      const oracle = simulateClass({ ...FEW, learner, policy: NEAREST_ORACLE });
      expect(oracle.known).toBeGreaterThan(random.known);
    }
  });

  test('a policy that does not exist is refused by its name', () => {
    expect(() => simulateClass({ ...FEW, policy: 'tea leaves' })).toThrow('tea leaves');
  });

  test('each oracle is listed once', () => {
    expect(new Set(ORACLES.map(({ name }) => name)).size).toBe(4);
  });
});

describe('memory in the bench', () => {
  test('marks one by one give what all marks at once give in the project', () => {
    const facts: readonly FactId[] = ['add:3+4', 'add:4+3', 'sub:7-3', 'add:3+4', 'double:2'];
    const marks = termOf(12).map(
      ({ today }, at): Mark => ({
        fact: facts[at % facts.length] ?? 'add:3+4',
        day: today,
        right: at % 3 !== 0,
        way: 'unmissed',
      }),
    );
    const memory = new Map<FactId, FactMemory>();
    for (const mark of marks) learnMark(memory, mark, MEMORY_MODEL);
    expect(memory).toEqual(rebuildMemory(marks));
  });
});

describe('the term', () => {
  test('weekends pass between school weeks', () => {
    expect(termOf(7).map(({ day }) => day)).toEqual([0, 1, 2, 3, 4, 7, 8]);
    expect(termOf(5).at(-1)?.next).toBe(7);
  });

  test('plans follow one another in equal stretches', () => {
    const rungs = [0, 19, 20, 39, 40, 59].map((at) => planOn(STEPPED, at, 60).parts[1]?.rung);
    expect(rungs).toEqual([
      'takeaway.within5',
      'takeaway.within5',
      'takeaway.to10',
      'takeaway.to10',
      'takeaway.to10',
      'takeaway.to10',
    ]);
  });

  test('each fact of a schedule is counted once', () => {
    expect(factsIn(STEADY)).toHaveLength(66 + 66 + 48);
    const stepped = factsIn(STEPPED).map(({ fact }) => fact);
    expect(new Set(stepped).size).toBe(stepped.length);
    expect(stepped).toHaveLength(66 + 66 + 48 + 36 + 10);
  });
});
