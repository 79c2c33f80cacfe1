import type { Learner, Traits } from './learner.ts';

/*
 * The published values (Pavlik and Anderson 2005, Cognitive Science 29, 559-586), from memory: c, a (alpha), tau and s, and
 * h, by which time between sessions counts less than time within one.
 */
const C = 0.217;
const A = 0.177;
const TAU = -0.704;
const S = 0.255;
const H = 0.025;

const SECONDS_A_DAY = 86_400;
/**
 * Facts of small numbers are easier than the foreign words the values come from. Our own choice, in logits, made so that a
 * child starts at about 0.6 and same random cards end with about half of the facts known.
 */
const USUAL_EASE = 3;
/** Two askings on one evening are about a minute apart. Our own choice. */
const SAME_EVENING_SECONDS = 60;

/**
 * A child who remembers by activation: m = offset + ln(sum of t^-d) over all askings, each decaying at its own
 * d = c e^m + a, where m is the activation just before it, so that a fact still fresh gains least. The chance of a right answer is
 * 1 / (1 + e^((tau - m) / s)). The offset (ease times s) is ours, after the idea of the authors' later work.
 */
export function createActivationLearner({ ease, metBefore }: Traits): Learner {
  const days: number[][] = metBefore.map(() => []);
  const decays: number[][] = metBefore.map(() => []);

  const traceSum = (fact: number, day: number) => {
    const at = days[fact] ?? [];
    const rates = decays[fact] ?? [];
    let sum = 0;
    for (let index = 0; index < at.length; index += 1) {
      sum += Math.exp(-(rates[index] ?? 0) * logSeconds(day - (at[index] ?? 0)));
    }
    return sum;
  };
  const offset = (fact: number) => (USUAL_EASE + (ease[fact] ?? 0)) * S;
  const nextDecay = (fact: number, day: number) =>
    C * Math.exp(offset(fact)) * traceSum(fact, day) + A;
  const chanceOf = (fact: number, sum: number) =>
    sum === 0 ? 0 : 1 / (1 + Math.exp((TAU - offset(fact) - Math.log(sum)) / S));
  const ask = (fact: number, day: number) => {
    decays[fact]?.push(nextDecay(fact, day));
    days[fact]?.push(day);
  };

  metBefore.forEach((met, fact) => {
    for (const day of met) ask(fact, day);
  });
  return {
    ask,
    chance: (fact, day) => chanceOf(fact, traceSum(fact, day)),
    chanceIfAsked: (fact, day, later) => {
      const added = Math.exp(-nextDecay(fact, day) * logSeconds(later - day));
      return chanceOf(fact, traceSum(fact, later) + added);
    },
  };
}

const LOG_SECONDS = Float64Array.from({ length: 1024 }, (_, gap) =>
  Math.log(gap === 0 ? SAME_EVENING_SECONDS : gap * SECONDS_A_DAY * H),
);

function logSeconds(gap: number): number {
  return LOG_SECONDS[gap] ?? Math.log(gap * SECONDS_A_DAY * H);
}
