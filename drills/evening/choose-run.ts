import { numberOf, type SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import { runStarts } from '../ladder/run-starts.ts';
import type { RunRung } from '../ladder/rung.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import type { RunPart } from './drill.ts';
import type { Random } from './random.ts';
import { stepFact } from './step-facts.ts';

/** What one counting run is made from. `lastStart` is where this child's previous run on this rung began. */
export interface RunChoice {
  readonly rung: RunRung;
  readonly cards: number;
  readonly seconds: number;
  readonly lastStart: number | undefined;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly today: SchoolDay;
  readonly random: Random;
  readonly model: MemoryModel;
}

/** So many starts are drawn, and the shakiest run of them is taken: often where it is needed, now and then anywhere. Ours. */
const DRAWS = 4;

/** A step with a lower chance of a right answer than this is shaky: it would pull an evening below four in five right. Ours. */
const SHAKY_BELOW = 0.8;

/**
 * A counting run of `cards` numbers from one of the rung's starts; shorter where the range holds fewer. It never begins where
 * the last one did unless there is no other beginning. Of four starts drawn by chance it takes the one with the most shaky
 * steps: steps that were asked and are not sure, by a miss or by time. Where nothing is known, or all is sure, every start is
 * equally likely.
 */
export function chooseRun(choice: RunChoice): RunPart {
  const { rung, cards, seconds, lastStart, random } = choice;
  const [length, starts] = longestFit(rung, cards);
  const step = rung.direction === 'on' ? rung.step : -rung.step;
  const lastAt = lastStart === undefined ? -1 : starts.indexOf(lastStart);
  const avoided = lastAt >= 0 && starts.length > 1;
  const day = numberOf(choice.today);
  let best = 0;
  let most = -1;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    const drawn = random.int(avoided ? starts.length - 1 : starts.length);
    // Drawing from one start less and stepping over the last one gives every other start the same chance.
    const start = starts[avoided && drawn >= lastAt ? drawn + 1 : drawn] ?? 0;
    const shaky = countShaky({ start, step, length }, day, choice);
    if (shaky > most) {
      best = start;
      most = shaky;
    }
  }
  return { kind: 'run', strand: rung.strand, rung: rung.id, seconds, start: best, step, length };
}

function countShaky(
  { start, step, length }: Pick<RunPart, 'start' | 'step' | 'length'>,
  day: number,
  { memory, model }: RunChoice,
): number {
  let shaky = 0;
  for (let said = 0; said < length - 1; said += 1) {
    const known = memory.get(stepFact(start + said * step, step));
    if (known !== undefined && model.recall(known.state, day) < SHAKY_BELOW) shaky += 1;
  }
  return shaky;
}

/** The longest run of at most `wanted` numbers that the rung has a start for, and its starts. */
function longestFit(rung: RunRung, wanted: number): [length: number, starts: readonly number[]] {
  for (let length = wanted; length > 1; length -= 1) {
    const starts = runStarts(rung, length);
    if (starts.length > 0) return [length, starts];
  }
  return [1, runStarts(rung, 1)];
}
