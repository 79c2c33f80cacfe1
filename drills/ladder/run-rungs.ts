import type { RunRung } from './rung.ts';

const DEFAULT_NUMBERS = 10;
const DEFAULT_SECONDS = 3;

const TO_100 =
  'England national curriculum, Year 1: to and across 100, forwards and backwards; multiples of 2, 5 and 10';
const TO_200 =
  'South Africa, DBE annual teaching plan 2022, Grade 2: forwards and backwards to 200; the steps are ours';
const NO_SOURCE = 'common practice, no source';

/** The rungs that make counting runs, step by step, the shorter range first. */
export const RUN_RUNGS: readonly RunRung[] = [
  countingOn('tens100', 'tens', 10, 100, TO_100),
  countingOn('tens', 'tens', 10, 200, TO_200),
  countingOn('fives100', 'fives', 5, 100, TO_100),
  countingOn('fives', 'fives', 5, 200, TO_200),
  countingOn('twos100', 'twos', 2, 100, TO_100),
  countingOn('twos', 'twos', 2, 200, TO_200),
  countingBack('onesback20', 20, NO_SOURCE),
  countingBack('onesback100', 100, TO_100),
  countingBack('onesback', 200, TO_200),
];

function countingOn(
  id: string,
  inWords: string,
  step: number,
  limit: number,
  source: string,
): RunRung {
  const title = `counting in ${inWords} to ${limit}`;
  return { ...common(id, title, source), step, direction: 'on', limit };
}

function countingBack(id: string, limit: number, source: string): RunRung {
  const title = `counting back in ones within ${limit}`;
  return { ...common(id, title, source), step: 1, direction: 'back', limit };
}

function common(id: string, title: string, source: string) {
  return {
    kind: 'run',
    strand: 'counting',
    id: `counting.${id}`,
    title,
    cards: DEFAULT_NUMBERS,
    seconds: DEFAULT_SECONDS,
    source,
  } as const;
}
