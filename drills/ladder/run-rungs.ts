import { sourcesOf } from '../curriculum/sources.ts';
import type { RungId, RunRung } from './rung.ts';

const DEFAULT_NUMBERS = 10;
const DEFAULT_SECONDS = 3;

const WORDS = { 1: 'ones', 10: 'tens', 5: 'fives', 2: 'twos', 3: 'threes', 4: 'fours' } as const;
type Step = keyof typeof WORDS;

/** The order in which South Africa's curriculum lists its steps: 1s, 10s, 5s, 2s, 3s, 4s. */
const STEPS: readonly Step[] = [1, 10, 5, 2, 3, 4];
const DIRECTIONS = ['on', 'back'] as const;

/** What tells one run rung from another. */
interface Run {
  readonly step: Step;
  readonly direction: 'on' | 'back';
  readonly limit: number;
  /** `off`: tens that are not full tens. `across`: over a hundred. */
  readonly kind: 'plain' | 'off' | 'across';
}

const LIMITS: readonly number[] = [100, 200, 1000];

/**
 * The rungs that make counting runs: the smaller range first, in it step by step, on before back, the plain before the special.
 *
 * @example
 * RUN_RUNGS[0]?.id; // 'counting.onesback20'
 */
export const RUN_RUNGS: readonly RunRung[] = [
  runRung({ step: 1, direction: 'back', limit: 20, kind: 'plain' }),
  ...LIMITS.flatMap((limit) => STEPS.flatMap((step) => rungsOfStep(step, limit))),
];

function rungsOfStep(step: Step, limit: number): RunRung[] {
  const kinds: Run['kind'][] = ['plain'];
  if (step === 10) kinds.push('off');
  // Up to 100 there is no hundred to go over.
  if (step === 1 && limit > 100) kinds.push('across');
  return kinds.flatMap((kind) =>
    DIRECTIONS.map((direction) => runRung({ step, direction, limit, kind })),
  );
}

function runRung(run: Run): RunRung {
  const id = idOf(run);
  const { step, direction, limit, kind } = run;
  return {
    kind: 'run',
    strand: 'counting',
    id,
    title: titleOf(run),
    cards: DEFAULT_NUMBERS,
    seconds: DEFAULT_SECONDS,
    needs: needsOf(run),
    sources: sourcesOf(id),
    step,
    direction,
    limit,
    starts: kind === 'off' ? 'others' : 'multiples',
    ...(kind === 'across' ? { crosses: 100 } : {}),
  };
}

/** Step, `off` where it is, direction where it is back, `across` where it is, limit where it is not 200: `tensoffback1000`. */
function idOf({ step, direction, limit, kind }: Run): RungId {
  const off = kind === 'off' ? 'off' : '';
  const back = direction === 'back' ? 'back' : '';
  const across = kind === 'across' ? 'across' : '';
  return `counting.${WORDS[step]}${off}${back}${across}${limit === 200 ? '' : limit}`;
}

function titleOf({ step, direction, limit, kind }: Run): string {
  const way = direction === 'on' ? 'counting' : 'counting back';
  const example = direction === 'on' ? ' like 13, 23, 33' : ' like 33, 23, 13';
  const off = kind === 'off' ? example : '';
  const across = kind === 'across' ? ' across hundreds' : '';
  return `${way} in ${WORDS[step]}${off}${across} ${direction === 'on' ? 'to' : 'within'} ${limit}`;
}

/** Back after on, the special after the plain, a larger range after the smaller one, other steps after ones. */
function needsOf(run: Run): RungId[] {
  const smaller = smallerOf(run);
  return [
    ...(run.direction === 'back' && run.limit > 20 ? [idOf({ ...run, direction: 'on' })] : []),
    ...(run.kind === 'plain' ? [] : [idOf({ ...run, kind: 'plain' })]),
    ...(smaller === null ? [] : [idOf(smaller)]),
  ];
}

function smallerOf(run: Run): Run | null {
  const { step, direction, limit, kind } = run;
  const isOnes = step === 1 && kind === 'plain';
  if (limit === 100) {
    if (isOnes && direction === 'back') return { ...run, limit: 20 };
    return isOnes || direction === 'back' || kind !== 'plain' ? null : { ...run, step: 1 };
  }
  if (kind === 'across' && limit === 200) return null;
  const limitBelow = LIMITS[LIMITS.indexOf(limit) - 1];
  return limitBelow === undefined ? null : { ...run, limit: limitBelow };
}
