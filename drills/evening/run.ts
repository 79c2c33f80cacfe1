import type { RunPart } from './drill.ts';

/**
 * The numbers of a counting run, in the order they are said.
 *
 * @example
 * runNumbers({ kind: 'run', strand: 'counting', rung: 'counting.fives', seconds: 3, start: 35, step: 5, length: 4 });
 * // [35, 40, 45, 50]
 */
export function runNumbers({ start, step, length }: RunPart): number[] {
  return Array.from({ length }, (_, index) => start + index * step);
}
