import { describe, expect, it } from 'vitest';
import { drillCards, drillTasks } from '../../../bot/paper/index.ts';
import type { Drill } from '../../../drills/index.ts';

const DRILL: Drill = {
  version: 1,
  parts: [
    {
      kind: 'facts',
      strand: 'bonds',
      rung: 'bonds.to10',
      seconds: 3,
      cards: ['add:3+4', 'gap:7+10'],
    } as Drill['parts'][number],
    {
      kind: 'run',
      strand: 'counting',
      rung: 'counting.fives',
      seconds: 3,
      start: 35,
      step: 5,
      length: 4,
    },
  ],
};

describe('a drill on paper', () => {
  it('is its cards with their answers, a run being one card', () => {
    expect(drillCards(DRILL, 'en')).toEqual([
      { face: { kind: 'text', text: '3 + 4' }, answer: '7', part: 'adding within 10' },
      { face: { kind: 'text', text: '7 + ? = 10' }, answer: '3', part: 'adding within 10' },
      {
        face: { kind: 'text', text: 'Start at 35. Count on in fives.' },
        answer: '35, 40, 45, 50',
        part: expect.stringContaining('fives'),
      },
    ]);
  });

  it('asks for as many answers as on a phone: each number of a run is one', () => {
    expect(drillTasks(DRILL, 'en').map(({ asked }) => asked)).toEqual([2, 4]);
  });

  it('words its run in the language asked for', () => {
    expect(drillTasks(DRILL, 'de')[1]?.faces).toEqual([
      { kind: 'text', text: 'Fang bei 35 an. Zähle in 5er-Schritten weiter.' },
    ]);
  });
});
