import { type RunRung, rungsOf } from '../../drills/index.ts';

/** Counting runs of one kind: the same step from the same sort of numbers, up to several limits, on and back. */
export interface RunGroup {
  /** Travels in buttons: `10` for full tens, `10off` for 13, 23, 33, `1across` for ones over a hundred. */
  readonly id: string;
  readonly runs: readonly [RunRung, ...RunRung[]];
}

/** Every group of counting runs, in the order of their easiest run. A teacher finds one of many runs by its step first. */
export function runGroups(): readonly RunGroup[] {
  const groups = new Map<string, [RunRung, ...RunRung[]]>();
  for (const rung of rungsOf('counting')) {
    if (rung.kind !== 'run') continue;
    const known = groups.get(groupOf(rung));
    if (known) known.push(rung);
    else groups.set(groupOf(rung), [rung]);
  }
  return [...groups].map(([id, runs]) => ({ id, runs }));
}

function groupOf({ step, starts, crosses }: RunRung): string {
  return `${step}${starts === 'others' ? 'off' : ''}${crosses === undefined ? '' : 'across'}`;
}
