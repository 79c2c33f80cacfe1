import type { ClassOutcome } from './class-term.ts';
import { type Interval, intervalOf } from './interval.ts';

/** One policy's classes, one for each seed in the same order as the others'. */
export type Classes = readonly ClassOutcome[];

/** One line of the table. All intervals are over seeds; ratios are taken seed by seed, on the same children. */
export interface Line {
  readonly policy: string;
  readonly known: Interval;
  readonly nearly: Interval;
  readonly gained: Interval;
  readonly gainedAnEvening: Interval;
  readonly score: Interval;
  /** Of a hundred children, so many had nine facts in ten known at some week's end. */
  readonly reachedMost: number;
  /** The middle one of their practised evenings until then; null when none came so far. */
  readonly eveningsToMost: number | null;
  readonly ofBaseline: Ratios;
  readonly ofOracle: Ratios;
}

/** Facts known at the end, and facts gained since the beginning, as parts of another policy's. */
export interface Ratios {
  readonly known: Interval;
  readonly gained: Interval;
}

/** What a policy did, beside what the baseline and the oracle did for the same classes. */
export function compare(
  policy: string,
  classes: Classes,
  baseline: Classes,
  oracle: Classes,
): Line {
  const over = (of: (outcome: ClassOutcome) => number) => intervalOf(classes.map(of));
  const toMost = classes.flatMap((each) => each.toMost).sort((one, other) => one - other);
  const children = classes.reduce((sum, each) => sum + each.children, 0);
  return {
    policy,
    known: over(({ known }) => known),
    nearly: over(({ nearly }) => nearly),
    gained: over(gainedBy),
    gainedAnEvening: over((each) => gainedBy(each) / each.evenings),
    score: over(({ score }) => score),
    reachedMost: (100 * toMost.length) / children,
    eveningsToMost: toMost[Math.floor(toMost.length / 2)] ?? null,
    ofBaseline: ratios(classes, baseline),
    ofOracle: ratios(classes, oracle),
  };
}

/** Practice before the term fades, so a class may also lose facts. */
function gainedBy({ known, knownBefore }: ClassOutcome): number {
  return known - knownBefore;
}

function ratios(classes: Classes, others: Classes): Ratios {
  const ratio = (of: (outcome: ClassOutcome) => number) =>
    intervalOf(
      classes.map((each, at) => {
        const other = others[at];
        return other === undefined ? Number.NaN : of(each) / of(other);
      }),
    );
  return { known: ratio(({ known }) => known), gained: ratio(gainedBy) };
}
