import { STRANDS, type Strand } from '../ladder/rung.ts';
import { RUNGS } from '../ladder/rungs.ts';
import { practisedEvenings } from './practised-evenings.ts';
import { proposeStep } from './propose-step.ts';
import { tallyOf } from './tally.ts';
import type { PartScore, StrandSummary, WeekInput } from './week.ts';

/** The strands somebody practised this week, in the order of STRANDS. */
export function summariseStrands({ days, children }: WeekInput): StrandSummary[] {
  const joined = children.filter((child) => child.joined).length;
  const partsOfChildren = children.map((child) =>
    practisedEvenings(child, days).flatMap((evening) => evening.parts),
  );
  return STRANDS.flatMap((strand) => {
    const summary = summariseStrand(strand, partsOfChildren, joined);
    return summary.asked > 0 ? [summary] : [];
  });
}

function summariseStrand(
  strand: Strand,
  partsOfChildren: readonly (readonly PartScore[])[],
  joined: number,
): StrandSummary {
  const own = partsOfChildren.map((parts) => parts.filter((part) => part.strand === strand));
  const tallies = own.map(tallyOf).filter(({ asked }) => asked > 0);
  const practised = new Set(own.flat().map((part) => part.rung));
  return {
    strand,
    rungs: RUNGS.map(({ id }) => id).filter((id) => practised.has(id)),
    ...tallyOf(own.flat()),
    ...proposeStep(tallies, joined),
  };
}
