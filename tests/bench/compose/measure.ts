import type { Drill, EveningInput } from '../../../drills/index.ts';

/** What composing cost: processor time alone, so that other programs on the machine change it little. */
export interface Cost {
  readonly evenings: number;
  readonly microseconds: number;
  /** The most memory in use after a batch, in bytes. */
  readonly heap: number;
}

/** One class is held at a time, as when evenings are planned. */
const BATCH = 30;

/** So many evenings are composed at least, or a small school could not be timed. */
const LEAST_EVENINGS = 20_000;

/** Of so many rounds the cheapest counts: other programs on the machine can only make one dearer. */
const ROUNDS = 3;

/** The cheapest of three rounds of {@link measure}. */
export function measureBest(...input: Parameters<typeof measure>): Cost {
  const rounds = Array.from({ length: ROUNDS }, () => measure(...input));
  return rounds.reduce((best, round) => (perEvening(round) < perEvening(best) ? round : best));
}

/** What one evening cost, in microseconds. */
export function perEvening({ evenings, microseconds }: Cost): number {
  return microseconds / evenings;
}

/**
 * Composes the evening of `children` children, again with new memories while that is too few to time. Each child's memory is made
 * before the clock starts, batch by batch.
 */
export function measure(
  children: number,
  childAt: (number: number) => EveningInput,
  compose: (input: EveningInput) => Drill,
): Cost {
  const size = Math.min(children, BATCH);
  let [evenings, microseconds, heap] = [0, 0, 0];
  while (evenings < Math.max(children, LEAST_EVENINGS)) {
    const first = evenings;
    const batch = Array.from({ length: size }, (_, at) => childAt(first + at));
    const before = process.cpuUsage();
    let parts = 0;
    for (const input of batch) parts += compose(input).parts.length;
    const { user, system } = process.cpuUsage(before);
    // Looked at, so that no composing can be left out as useless.
    if (parts === 0) throw new Error('the bench composed nothing');
    evenings += size;
    microseconds += user + system;
    heap = Math.max(heap, process.memoryUsage().heapUsed);
  }
  return { evenings, microseconds, heap };
}
