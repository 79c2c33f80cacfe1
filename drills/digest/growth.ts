import { addDays, numberOf } from '../calendar/school-day.ts';
import type { Strand } from '../ladder/rung.ts';
import { type Point, theilSen } from '../statistics/theil-sen.ts';
import { mannKendall } from './mann-kendall.ts';
import { practisedEvenings } from './practised-evenings.ts';
import type { Tally } from './summary.ts';
import { type ChildWeek, type DayScores, HISTORY_DAYS, type WeekInput } from './week.ts';

const DAYS_A_WEEK = 7;
/** Fewer evenings than this are too little to tell (our choice, no source). */
const FEWEST_EVENINGS = 6;
/** The normal deviate that chance passes once in forty, on either side. */
const Z_95 = 1.959964;

/**
 * Where a child's own scores go. `evenings` is how many the word rests on; `aWeek` is the slope, as a share of the cards a
 * week (0.1 is one card of ten), null while there is too little to tell.
 */
export interface Growth {
  readonly trend: 'rising' | 'steady' | 'falling' | 'too_little';
  readonly evenings: number;
  readonly aWeek: number | null;
}

/**
 * A child's growth in one strand against that child's own past and nobody else's: the Theil-Sen slope of the share right over
 * the child's evenings of the last four weeks. Only evenings of one blueprint are compared, the same rung with the same number
 * asked, or the same mixture: of those practised this week the one with most evenings, the first by spelling when two have as many.
 *
 * Rising and falling are said only when the slope is not level and scores standing still would come in such an order less than
 * once in forty (Mann and Kendall's test); everything else is steady. Fewer than six evenings are too little.
 *
 * @example
 * growthOf(child, 'halves', days).trend; // 'rising' after 2, 3, 4, 5, 6, 7, 8 and 9 of ten
 */
export function growthOf(child: ChildWeek, strand: Strand, days: WeekInput['days']): Growth {
  const scores = mostPractised(child, strand, days);
  const evenings = scores.length;
  const line = theilSen(scores);
  if (evenings < FEWEST_EVENINGS || !line) return { trend: 'too_little', evenings, aWeek: null };
  return { trend: trendOf(scores, line.slope), evenings, aWeek: line.slope * DAYS_A_WEEK };
}

function trendOf(scores: readonly Point[], slope: number): Growth['trend'] {
  const inOrder = scores.toSorted((one, other) => one.x - other.x).map(({ y }) => y);
  const { z } = mannKendall(inOrder);
  if (slope > 0 && z > Z_95) return 'rising';
  return slope < 0 && z < -Z_95 ? 'falling' : 'steady';
}

/** The scores of the chosen blueprint as points: day number and share right. */
function mostPractised(child: ChildWeek, strand: Strand, days: WeekInput['days']): Point[] {
  const week = byBlueprint(practisedEvenings(child, days), strand);
  const earlier = byBlueprint(recent(child.earlier, days), strand);
  return [...week]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([blueprint, points]) => [...(earlier.get(blueprint) ?? []), ...points])
    .reduce((most, points) => (points.length > most.length ? points : most), []);
}

function recent(earlier: readonly DayScores[], days: WeekInput['days']): readonly DayScores[] {
  const last = days.at(-1);
  if (!last) return [];
  const from = addDays(last, 1 - HISTORY_DAYS);
  return earlier.filter(({ day }) => day >= from);
}

function byBlueprint(evenings: readonly DayScores[], strand: Strand): Map<string, Point[]> {
  const points = new Map<string, Point[]>();
  for (const { day, parts } of evenings) {
    for (const [blueprint, { right, asked }] of tallies(parts, strand)) {
      const found = points.get(blueprint) ?? [];
      points.set(blueprint, [...found, { x: numberOf(day), y: right / asked }]);
    }
  }
  return points;
}

/** One evening's tally of a strand under each blueprint. Of a mixed part the strand's own cards count, all its rungs together. */
function tallies(parts: DayScores['parts'], strand: Strand): Map<string, Tally> {
  const found = new Map<string, Tally>();
  for (const { strand: own, rung, right, asked, mixed } of parts) {
    if (own !== strand || asked === 0) continue;
    const blueprint = mixed ?? `${rung}|${asked}`;
    const before = found.get(blueprint) ?? { right: 0, asked: 0 };
    found.set(blueprint, { right: before.right + right, asked: before.asked + asked });
  }
  return found;
}
