import { createRandom, type FactId, type Random } from '../../../drills/index.ts';
import type { Learner } from './learner.ts';
import { KNOWN, NEARLY, type Outcome } from './outcome.ts';
import type { BenchMark, Chooser, EveningNeed, Policy } from './policy.ts';
import { factsIn, planOn, type Schedule } from './schedule.ts';
import { termOf } from './term.ts';

/** What may differ between two simulations beside the policy. `missed` and `slips` are chances. */
export interface Conditions {
  readonly schedule: Schedule;
  readonly days: number;
  readonly missed: number;
  readonly slips: number;
}

/** A child's term. `seed` is the child's own: under any policy the same evenings are missed. */
export interface ChildTerm extends Conditions {
  readonly learner: Learner;
  readonly policy: Policy;
  readonly seed: string;
}

const MOST = 0.9;
const WEEK = 5;

/** Simulates one child's term under one policy. The same input gives the same outcome. */
export function simulateTerm({ learner, policy, seed, ...conditions }: ChildTerm): Outcome {
  const facts = factsIn(conditions.schedule);
  const numbers = new Map(facts.map(({ fact }, at) => [fact, at]));
  const numberOf = (fact: FactId) => numbers.get(fact) ?? -1;
  const missing = createRandom(`${seed}|missed evenings`);
  const random = createRandom(`${seed}|answers`);
  const chooser = policy.start();
  const count = (day: number, chance: number) => countKnown(learner, facts.length, day, chance);

  const term = termOf(conditions.days);
  const knownBefore = count(0, KNOWN);
  let evenings = 0;
  let cards = 0;
  let chances = 0;
  let eveningsToMost: number | null = null;
  term.forEach((day, at) => {
    if (missing.next() >= conditions.missed) {
      const plan = planOn(conditions.schedule, at, conditions.days);
      const need = { ...day, plan, seed: `${seed}|${day.today}`, random, learner, numberOf };
      const asked = practise(chooser, need, conditions.slips);
      evenings += 1;
      cards += asked.cards;
      chances += asked.chances;
    }
    const isWeekEnd = at % WEEK === WEEK - 1;
    if (isWeekEnd && eveningsToMost === null && count(day.next, KNOWN) >= MOST * facts.length) {
      eveningsToMost = evenings;
    }
  });
  const after = term.at(-1)?.next ?? 0;
  return {
    knownBefore,
    known: count(after, KNOWN),
    nearly: count(after, NEARLY),
    evenings,
    score: cards === 0 ? 0 : chances / cards,
    eveningsToMost,
  };
}

/** One evening: each card is answered by the true chance, and the adult's mark slips now and then, either way. */
function practise(chooser: Chooser, need: EveningNeed, slips: number) {
  const { learner, numberOf, random, day, today } = need;
  const marks: BenchMark[] = [];
  let chances = 0;
  for (const fact of chooser.cards(need).flat()) {
    const chance = learner.chance(numberOf(fact), day);
    chances += chance;
    marks.push({ fact, day: today, right: markOf(random.next() < chance, slips, random) });
    learner.ask(numberOf(fact), day);
  }
  chooser.marked(marks);
  return { cards: marks.length, chances };
}

function markOf(right: boolean, slips: number, random: Random): boolean {
  return random.next() < slips ? !right : right;
}

function countKnown(learner: Learner, facts: number, day: number, chance: number): number {
  let known = 0;
  for (let fact = 0; fact < facts; fact += 1) if (learner.chance(fact, day) >= chance) known += 1;
  return known;
}
