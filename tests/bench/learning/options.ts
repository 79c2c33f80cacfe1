import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';

/** How much is simulated. `seedPrefix` tells the seeds that values were tuned on from those of the final table. */
export interface Options {
  readonly children: number;
  readonly days: number;
  readonly seeds: number;
  readonly workers: number;
  readonly seedPrefix: 'final' | 'tune';
}

const FULL = { children: 200, seeds: 10 };
const QUICK = { children: 30, seeds: 4 };
const DAYS = 60;
const MOST_WORKERS = 4;

/**
 * Reads the flags `--children`, `--days`, `--seeds`, `--workers`, `--quick` and `--tuning`. Throws RangeError for a number
 * that is not whole or out of range, and for a flag it does not know.
 *
 * @example
 * readOptions(['--quick', '--days', '20']).days; // 20
 */
export function readOptions(args: readonly string[]): Options {
  const { values } = parseArgs({
    args: [...args],
    options: {
      children: { type: 'string' },
      days: { type: 'string' },
      seeds: { type: 'string' },
      workers: { type: 'string' },
      quick: { type: 'boolean', default: false },
      tuning: { type: 'boolean', default: false },
    },
  });
  const size = values.quick ? QUICK : FULL;
  const cores = Math.min(MOST_WORKERS, availableParallelism());
  return {
    children: wholeNumber('children', values.children, size.children, 10_000),
    days: wholeNumber('days', values.days, DAYS, 200),
    seeds: wholeNumber('seeds', values.seeds, size.seeds, 100),
    workers: wholeNumber('workers', values.workers, cores, 64),
    seedPrefix: values.tuning ? 'tune' : 'final',
  };
}

function wholeNumber(name: string, text: string | undefined, usual: number, most: number): number {
  if (text === undefined) return usual;
  const value = Number(text);
  if (Number.isInteger(value) && value >= 1 && value <= most) return value;
  throw new RangeError(`--${name} ${text}: give a whole number from 1 to ${most}`);
}
