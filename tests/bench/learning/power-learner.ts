import type { Learner, Traits } from './learner.ts';

/** How fast the odds of a right answer grow with practice, and fall with time. Our own choice, of the size the sources report. */
const PRACTICE_EXPONENT = 2;
const FORGETTING_EXPONENT = 0.6;
/** The odds, one day later, after a single asking of a fact of usual ease. Our own choice. */
const FIRST_ODDS = 0.25;
/** An asking right after another adds only half; the rest comes back with the days between them. Our own choice. */
const MASSED_LOSS = 0.5;
const SPACING_DAYS = 2;

/**
 * A child whose odds of a right answer are a power of practice times a power of time: odds = a N^c ((1 + T) / 2)^-d, with N
 * askings that count and T days since the latest. The power law of practice is Newell and Rosenbloom's (1981), power-law
 * forgetting Wickelgren's (1974) and Rubin and Wenzel's (1996); their product for the odds follows Anderson and Schooler (1991).
 * All cited from memory. That massed askings count less follows the spacing effect (Cepeda and others 2006); how much is ours.
 */
export function createPowerLearner({ ease, metBefore }: Traits): Learner {
  const practice = new Float64Array(metBefore.length);
  const latest = new Float64Array(metBefore.length).fill(Number.NEGATIVE_INFINITY);

  const gain = (fact: number, day: number) =>
    1 - MASSED_LOSS * Math.exp(-(day - (latest[fact] ?? 0)) / SPACING_DAYS);
  const chanceOf = (fact: number, askings: number, gap: number) => {
    if (askings === 0) return 0;
    const odds =
      FIRST_ODDS *
      Math.exp(ease[fact] ?? 0) *
      askings ** PRACTICE_EXPONENT *
      ((1 + gap) / 2) ** -FORGETTING_EXPONENT;
    return odds / (1 + odds);
  };
  const ask = (fact: number, day: number) => {
    practice[fact] = (practice[fact] ?? 0) + gain(fact, day);
    latest[fact] = day;
  };

  metBefore.forEach((met, fact) => {
    for (const day of met) ask(fact, day);
  });
  return {
    ask,
    chance: (fact, day) => chanceOf(fact, practice[fact] ?? 0, day - (latest[fact] ?? 0)),
    chanceIfAsked: (fact, day, later) =>
      chanceOf(fact, (practice[fact] ?? 0) + gain(fact, day), later - day),
  };
}
