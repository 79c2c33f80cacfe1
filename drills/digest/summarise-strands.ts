import { STRANDS, type Strand } from '../ladder/rung.ts';
import type { Growth } from './growth.ts';
import type { ChildSummary, StrandSummary } from './summary.ts';

/** The strands somebody practised this week, in the order of STRANDS. */
export function summariseStrands(children: readonly ChildSummary[]): StrandSummary[] {
  return STRANDS.flatMap((strand) => {
    const tallies = children.flatMap(({ strands }) => strands.get(strand) ?? []);
    if (tallies.length === 0) return [];
    return {
      strand,
      right: tallies.reduce((total, { right }) => total + right, 0),
      asked: tallies.reduce((total, { asked }) => total + asked, 0),
      rose: countOf(children, strand, 'rising'),
      slipped: countOf(children, strand, 'falling'),
    };
  });
}

function countOf(
  children: readonly ChildSummary[],
  strand: Strand,
  trend: Growth['trend'],
): number {
  return children.filter(({ growth }) => growth.get(strand)?.trend === trend).length;
}
