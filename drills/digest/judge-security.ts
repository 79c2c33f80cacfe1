import { numberOf, type SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { Rung } from '../ladder/rung.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import { betaPosterior } from '../statistics/beta-posterior.ts';
import { askedOnRung } from './rung-memory.ts';
import { tallyOf } from './tally.ts';
import type { PartScore } from './week.ts';

/** A child with fewer answers than this can be lucky: nothing is said of it (our choice, no source). */
export const ENOUGH_ASKED = 8;

/** Right answers expected of a child who is secure (90 to 95 % before moving on is common practice, no source). */
const SECURE_EXPECTED = 0.9;
/** The share right that a child who is not yet secure fails to reach, as far as we can be fairly sure. */
const BAR = 0.8;
const FAIRLY_SURE = 0.8;

/**
 * What memory expects counts as this many answers beside the week's own. It has seen the same answers, so it must not drown
 * them; and it alone knows how a fact went in earlier weeks and how long ago that was. Our choice, no source.
 */
const MEMORY_ANSWERS = 8;
/** Memory is never taken for certain. */
const LEAST_CHANCE = 0.01;

/** What can be said of one child on one rung. */
export type Level = 'secure' | 'in_between' | 'not_yet' | 'too_few';

/**
 * A child's standing on a rung: `expected` share right if asked today, the chance `sure` that it is 8 in 10 or more, and the
 * number of `answers` it rests on.
 */
export interface Security {
  readonly level: Level;
  readonly expected: number;
  readonly sure: number;
  readonly answers: number;
}

/**
 * Judges one child on one rung from the memory of its facts and the week's scores on it.
 *
 * In plain words: a child is secure when we expect 9 in 10 right, going by at least 8 answers to at least 8 different facts (or
 * to all, where the rung has fewer); then we are also fairly sure of 8 in 10. A child is not yet secure when we are fairly
 * sure of fewer than 8 in 10. Between the two, nothing is claimed. "Fairly sure" is four chances in five: at 95 % not even ten
 * right of ten would do.
 *
 * In numbers: the mean recall m of the facts asked is worth 8 answers, so that the belief is Beta(8m + right, 8(1 - m) + wrong)
 * with the week's answers; without any memory it is Beta(1 + right, 1 + wrong). In a counting run an answer is a number of
 * the run, said or not: from the mean recall m of a step, (1 + m + ... + m^(n-1)) / n of a run of n numbers are expected.
 * The days are the digest's own: memory fades until `today`.
 *
 * @example
 * judgeSecurity(rung, { memory: new Map(), parts: [{ strand, rung, right: 10, asked: 10 }] }, today, model);
 * // { level: 'secure', expected: 0.916667, sure: 0.914101, answers: 10 }
 */
export function judgeSecurity(
  rung: Rung,
  child: { readonly memory: ReadonlyMap<FactId, FactMemory>; readonly parts: readonly PartScore[] },
  today: SchoolDay,
  model: MemoryModel,
): Security {
  const known = askedOnRung(rung, child.memory);
  const week = tallyOf(child.parts);
  const recalled = meanRecall(known, today, model);
  const share = rung.kind === 'run' ? shareSaid(recalled, child.parts) : recalled;
  const belief = betaPosterior(week.right, week.asked, priorOf(share));
  const sure = belief.chanceAbove(BAR);
  const answers = Math.max(
    week.asked,
    known.reduce((total, { asked }) => total + asked, 0),
  );
  const enough = answers >= ENOUGH_ASKED && isSpread(rung, known);
  const level = enough ? levelOf(belief.mean, sure) : 'too_few';
  return { level, expected: belief.mean, sure, answers };
}

function levelOf(expected: number, sure: number): Level {
  // A mean of 0.9 has no exact binary form.
  if (expected > SECURE_EXPECTED - 1e-9) return 'secure';
  return sure <= 1 - FAIRLY_SURE ? 'not_yet' : 'in_between';
}

/** A few facts asked again and again say little of a rung of many. The numbers of a run all differ. */
function isSpread(rung: Rung, known: readonly FactMemory[]): boolean {
  if (rung.kind === 'run' || known.length === 0) return true;
  return known.length >= Math.min(ENOUGH_ASKED, rung.facts.length);
}

function meanRecall(
  known: readonly FactMemory[],
  today: SchoolDay,
  model: MemoryModel,
): number | null {
  if (known.length === 0) return null;
  const day = numberOf(today);
  return known.reduce((total, { state }) => total + model.recall(state, day), 0) / known.length;
}

function shareSaid(step: number | null, parts: readonly PartScore[]): number | null {
  if (step === null || parts.length === 0) return null;
  const numbers = Math.max(1, Math.round(tallyOf(parts).asked / parts.length));
  const said = Array.from({ length: numbers }, (_, index) => step ** index);
  return said.reduce((total, chance) => total + chance, 0) / numbers;
}

function priorOf(share: number | null): { alpha: number; beta: number } {
  if (share === null) return { alpha: 1, beta: 1 };
  const bounded = Math.min(1 - LEAST_CHANCE, Math.max(LEAST_CHANCE, share));
  return { alpha: MEMORY_ANSWERS * bounded, beta: MEMORY_ANSWERS * (1 - bounded) };
}
