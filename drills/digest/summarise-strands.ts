import { STRANDS, type Strand } from '../ladder/rung.ts';
import { classRungs } from './class-rungs.ts';
import type { Growth } from './growth.ts';
import { type JudgedChild, levelIn } from './judge-class.ts';
import type { Level } from './judge-security.ts';
import { shareSecure } from './share-secure.ts';
import { strandChange, strandWeeks } from './strand-change.ts';
import type { ChildSummary, StrandSummary } from './summary.ts';
import { tallyOf } from './tally.ts';
import type { WeekInput } from './week.ts';

/**
 * The strands somebody practised this week, in the order of STRANDS. The tally is everybody's; children are counted as secure
 * or not only when they have a helper now, and only on the class's rungs, as in a rung's summary.
 */
export function summariseStrands(
  children: readonly ChildSummary[],
  judged: readonly JudgedChild[],
  days: WeekInput['days'],
): StrandSummary[] {
  const weeks = judged.map(({ child }) => child);
  const rungs = classRungs(judged);
  const joined = judged.filter(({ child }) => child.joined);
  return STRANDS.flatMap((strand) => {
    const tallies = children.flatMap(({ strands }) => strands.get(strand) ?? []);
    if (tallies.length === 0) return [];
    const levels = joined.flatMap((each): Level[] => {
      const own = new Map([...each.levels].filter(([rung]) => rungs.has(rung)));
      const level = levelIn(strand, own);
      return level === null ? [] : [level];
    });
    return {
      strand,
      ...tallyOf(tallies),
      rose: countOf(children, strand, 'rising'),
      slipped: countOf(children, strand, 'falling'),
      ...shareSecure(levels),
      change: strandChange(weeks, strand, days),
      weeks: strandWeeks(weeks, strand, days),
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
