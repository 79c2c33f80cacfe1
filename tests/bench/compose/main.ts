import { composeEvening } from '../../../drills/index.ts';
import { createChildren } from './children.ts';
import { measure, measureBest, perEvening } from './measure.ts';
import { composeSameForAll } from './same-for-all.ts';

/*
 * How fast evenings are composed: `npm run bench:compose`. Three parts of ten cards and a run of ten numbers for each child,
 * each child with its own memory of 100 to 250 facts; processor time of one process, the cheapest of three rounds.
 */

const SCHOOLS = [30, 10_000, 100_000];
const GOAL = 20_000;

const childAt = createChildren();
// Both are run warm: what counts is a service that has been up for a while.
measure(500, childAt, (input) => composeEvening(input));
measure(500, childAt, composeSameForAll);

const rows = SCHOOLS.map((children) => {
  const own = measureBest(children, childAt, (input) => composeEvening(input));
  const same = measureBest(Math.min(children, 10_000), childAt, composeSameForAll);
  return { children, each: perEvening(own), same: perEvening(same), heap: own.heap };
});

const cells = (values: readonly string[]) => values.map((value) => value.padStart(17)).join('');
const lines = [
  cells([
    'children',
    'evenings/s/core',
    'us/evening',
    'same-for-all us',
    'times as dear',
    'heap MB',
  ]),
  ...rows.map(({ children, each, same, heap }) =>
    cells([
      String(children),
      (1e6 / each).toFixed(0),
      each.toFixed(1),
      same.toFixed(1),
      (each / same).toFixed(2),
      (heap / 2 ** 20).toFixed(0),
    ]),
  ),
];
const [first, last] = [rows[0]?.each ?? 0, rows.at(-1)?.each ?? 0];
const slowest = Math.min(...rows.map(({ each }) => 1e6 / each));
lines.push(
  `cost per child at ${SCHOOLS.at(-1)} to ${SCHOOLS[0]} children: ${(last / first).toFixed(2)}`,
  `goal of ${GOAL} evenings a second per core: ${slowest >= GOAL ? 'met' : 'missed'}`,
  `process memory at most ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB`,
);
process.stdout.write(`${lines.join('\n')}\n`);
