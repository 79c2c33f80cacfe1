import { STRANDS, strandTitle, type WeekSummary } from '../../drills/index.ts';
import { type Drawing, digestPicture } from '../media/index.ts';
import { DIGEST_CAUTION } from '../texts/digest.ts';
import { dayRange, shortDate } from '../texts/words.ts';

/** The digest as a picture: children down, days and strands across. */
export function digestDrawing(title: string, summary: WeekSummary): Drawing {
  const strands = STRANDS.filter((strand) => summary.strands.some((row) => row.strand === strand));
  const [first, last] = [summary.days.at(0), summary.days.at(-1)];
  return digestPicture({
    title,
    subtitle: first && last ? dayRange(first, last) : '',
    dayLabels: summary.days.map((day) => shortDate(day).slice(0, 3)),
    strandLabels: strands.map(strandTitle),
    rows: summary.children.map((child) => ({
      number: child.number,
      name: child.nickname,
      days: child.days,
      strands: strands.map((strand) => child.strands.get(strand) ?? null),
    })),
    footer: DIGEST_CAUTION,
  });
}
