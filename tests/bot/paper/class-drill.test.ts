import { describe, expect, it } from 'vitest';
import { classDrill } from '../../../bot/paper/index.ts';
import { storedDay } from '../../../db/index.ts';
import { rungById, type WeekPlan } from '../../../drills/index.ts';

const MONDAY = storedDay('2026-09-14');
const PLAN: WeekPlan = {
  parts: [
    { rung: 'bonds.to20', cards: 10, seconds: 3 },
    { rung: 'counting.fives', cards: 6, seconds: 3 },
    { rung: 'doubles.to5', cards: 5, seconds: 3 },
  ],
};
const cardsFor = (seed: string) => {
  const [part] = classDrill(PLAN, MONDAY, seed).parts;
  return part?.kind === 'facts' ? part.cards : [];
};

describe('a drill for nobody in particular', () => {
  it('has the parts and sizes of the plan, no card twice, and cards of its rungs alone', () => {
    const { parts } = classDrill(PLAN, MONDAY, 'a');
    expect(parts.map(({ rung }) => rung)).toEqual(PLAN.parts.map(({ rung }) => rung));
    const cards = cardsFor('a');
    expect(new Set(cards).size).toBe(10);
    const rung = rungById('bonds.to20');
    for (const card of cards) expect(rung?.kind === 'facts' && rung.facts).toContain(card);
  });

  it('is the same for the same seed, and another for another week or child', () => {
    expect(cardsFor('a')).toEqual(cardsFor('a'));
    expect(cardsFor('b')).not.toEqual(cardsFor('a'));
  });

  it('reaches every card of a rung over the weeks', () => {
    const rung = rungById('bonds.to20');
    const facts = rung?.kind === 'facts' ? rung.facts : [];
    const weeks = Array.from({ length: 300 }, (_, week) => cardsFor(`week ${week}`));
    expect(new Set(weeks.flat()).size).toBe(facts.length);
  });

  it('with a rung that does not exist is refused', () => {
    const plan: WeekPlan = { parts: [{ rung: 'bonds.none', cards: 5, seconds: 3 }] };
    expect(() => classDrill(plan, MONDAY, 'a')).toThrow(RangeError);
  });
});
