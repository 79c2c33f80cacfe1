import { describe, expect, test } from 'vitest';
import { stepFact } from '../../../drills/evening/step-facts.ts';
import {
  composeEvening,
  type EveningInput,
  type FactId,
  next,
  type RungId,
  runSteps,
} from '../../../drills/index.ts';
import { anEvening, startOf } from '../support/an-evening.ts';
import { day } from '../support/day.ts';
import { allAskedOn } from '../support/memories.ts';

const SEEDS = 400;
const monday = day('2026-09-07');

/** How often a run started where, over many seeds. */
function startsOver(input: EveningInput): Map<number, number> {
  const starts = new Map<number, number>();
  for (let seed = 0; seed < SEEDS; seed += 1) {
    const start = startOf(composeEvening({ ...input, seed: `wren|${seed}` }));
    starts.set(start, (starts.get(start) ?? 0) + 1);
  }
  return starts;
}

const sorted = (starts: ReadonlyMap<number, number>) => [...starts.keys()].sort((a, b) => a - b);

describe('where a run starts', () => {
  test('over many seeds it starts at every place it can', () => {
    expect(sorted(startsOver(anEvening(['counting.onesback20'])))).toEqual([
      9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20,
    ]);
  });

  test('at every place but the last one, where that is known', () => {
    const lastStarts = new Map<RungId, number>([['counting.onesback20', 14]]);
    expect(sorted(startsOver(anEvening(['counting.onesback20'], { lastStarts })))).toEqual([
      9, 10, 11, 12, 13, 15, 16, 17, 18, 19, 20,
    ]);
  });

  test('where nothing is shaky every start comes about equally often', () => {
    const starts = startsOver(anEvening(['counting.onesback20']));
    for (const count of starts.values()) expect(Math.abs(count - SEEDS / 12)).toBeLessThan(20);
  });

  test('a last start that is no longer possible changes nothing', () => {
    const lastStarts = new Map<RungId, number>([['counting.fives', 7]]);
    const input = anEvening(['counting.fives']);
    expect(composeEvening({ ...input, lastStarts })).toEqual(composeEvening(input));
  });

  test('a run too long for its range is shortened, and starts where it must', () => {
    const plan = { parts: [{ rung: 'counting.tens100', cards: 20, seconds: 3 } as const] };
    const lastStarts = new Map<RungId, number>([['counting.tens100', 0]]);
    expect(composeEvening({ ...anEvening([]), plan, lastStarts }).parts).toEqual([
      {
        kind: 'run',
        strand: 'counting',
        rung: 'counting.tens100',
        seconds: 3,
        start: 0,
        step: 10,
        length: 11,
      },
    ]);
  });
});

describe('shaky steps', () => {
  const steps = runSteps({ start: 0, step: 5, length: 41 });
  const missed: FactId = 'next:95+5';
  const known = allAskedOn(steps, [day('2026-09-04'), monday]);
  const memory = new Map([...known, ...allAskedOn([missed], [monday], false)]);
  const passes = (start: number) => start <= 95 && start + 45 > 95;

  const shareThatPasses = (input: EveningInput) => {
    const starts = [...startsOver(input)].filter(([start]) => passes(start));
    return starts.reduce((total, [, count]) => total + count, 0) / SEEDS;
  };

  test('a step that was missed is passed far more often than by chance', () => {
    const byChance = shareThatPasses(anEvening(['counting.fives']));
    const wanted = shareThatPasses(anEvening(['counting.fives'], { memory }));
    expect(byChance).toBeLessThan(0.4);
    expect(wanted).toBeGreaterThan(0.6);
  });

  test('now and then a run lies elsewhere', () => {
    expect(shareThatPasses(anEvening(['counting.fives'], { memory }))).toBeLessThan(0.95);
  });

  test('a step missed while counting back says nothing of counting on', () => {
    const back = allAskedOn(runSteps({ start: 100, step: -5, length: 10 }), [monday], false);
    const input = anEvening(['counting.fives']);
    expect(composeEvening({ ...input, memory: back })).toEqual(composeEvening(input));
  });
});

describe('stepFact', () => {
  test('a step is spelled as everywhere, and kept', () => {
    expect(stepFact(35, 5)).toBe('next:35+5');
    expect(stepFact(100, -1)).toBe(next(100, -1));
    expect(stepFact(35, 5)).toBe('next:35+5');
  });
});
