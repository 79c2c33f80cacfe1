import type { RunRung } from '../ladder/rung.ts';
import type { RunPart } from './drill.ts';
import type { Random } from './random.ts';

/** What one counting run is made from. `lastStart` is where this child's previous run on this rung began. */
export interface RunChoice {
  readonly rung: RunRung;
  readonly cards: number;
  readonly seconds: number;
  readonly lastStart: number | undefined;
  readonly random: Random;
}

/**
 * A counting run of `cards` numbers, all multiples of the step between 0 and the rung's limit; shorter where the
 * range holds fewer. It never begins where the last one did unless there is no other beginning.
 */
export function chooseRun({ rung, cards, seconds, lastStart, random }: RunChoice): RunPart {
  const multiples = Math.floor(rung.limit / rung.step) + 1;
  const length = Math.min(cards, multiples);
  const on = rung.direction === 'on';
  const lowestStart = on ? 0 : (length - 1) * rung.step;
  const starts = Array.from(
    { length: multiples - length + 1 },
    (_, index) => lowestStart + index * rung.step,
  );
  const fresh = starts.filter((start) => start !== lastStart);
  const choices = fresh.length > 0 ? fresh : starts;
  return {
    kind: 'run',
    strand: rung.strand,
    rung: rung.id,
    seconds,
    start: choices[random.int(choices.length)] ?? lowestStart,
    step: on ? rung.step : -rung.step,
    length,
  };
}
