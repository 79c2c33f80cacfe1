import { addDays, type Level, STRANDS, type WeekSummary, weekdayOf } from '../../drills/index.ts';
import {
  classMap,
  type Drawing,
  digestPicture,
  type Standing,
  trendPicture,
} from '../media/index.ts';
import { digestCaution } from '../texts/digest.ts';
import { strandColumn, strandName } from '../texts/part-title.ts';
import { dayAndMonth, dayRange, weekdayName } from '../texts/words.ts';

/** The digest as a picture: children down, days and strands across. */
export function digestDrawing(title: string, summary: WeekSummary): Drawing {
  const strands = STRANDS.filter((strand) => summary.strands.some((row) => row.strand === strand));
  const [first, last] = [summary.days.at(0), summary.days.at(-1)];
  return digestPicture({
    title,
    subtitle: first && last ? dayRange(first, last) : '',
    dayLabels: summary.days.map((day) => weekdayName(weekdayOf(day), 'short')),
    strandLabels: strands.map(strandColumn),
    rows: summary.children.map((child) => ({
      number: child.number,
      name: child.nickname,
      days: child.days,
      strands: strands.map((strand) => child.strands.get(strand) ?? null),
    })),
    footer: digestCaution(),
  });
}

/** How the class map shows what can be said of a child. */
export const STANDINGS: Readonly<Record<Level, Standing>> = {
  secure: 'secure',
  in_between: 'growing',
  not_yet: 'not_yet',
  too_few: 'few',
};

/** Children down, strands across: the share right in each, and how sure one can be of it. */
export function mapDrawing(title: string, { strands, children }: WeekSummary): Drawing {
  return classMap({
    title,
    strandLabels: strands.map(({ strand }) => strandColumn(strand)),
    rows: children.map((child) => ({
      number: child.number,
      name: child.nickname,
      cells: strands.map(({ strand }) => {
        const tally = child.strands.get(strand);
        const level = child.standings.get(strand);
        return tally && level ? { ...tally, standing: STANDINGS[level] } : null;
      }),
    })),
    footer: digestCaution(),
  });
}

/** Each strand of the class week by week, the latest last. */
export function trendDrawing(title: string, { strands, days }: WeekSummary): Drawing {
  const [first] = days;
  const weeks = strands[0]?.weeks ?? [null];
  const labels = weeks.map((_, index) =>
    first ? dayAndMonth(addDays(first, -7 * (weeks.length - 1 - index))) : '',
  );
  return trendPicture({
    title,
    weekLabels: labels,
    strands: strands.map((row) => ({ label: strandName(row.strand), weeks: row.weeks })),
    footer: digestCaution(),
  });
}
