import { STRANDS, type Strand } from '../ladder/rung.ts';
import { type Growth, growthOf } from './growth.ts';
import { type JudgedChild, levelIn } from './judge-class.ts';
import type { Level } from './judge-security.ts';
import type { ChildSummary, Tally } from './summary.ts';
import { tallyOf } from './tally.ts';
import type { ChildWeek, WeekInput } from './week.ts';

/** One child's line of the digest. Evenings outside the week's days are left out; pages count on any evening. */
export function summariseChild(
  { child, parts, levels }: JudgedChild,
  days: WeekInput['days'],
): ChildSummary {
  const strands = new Map<Strand, Tally>();
  const growth = new Map<Strand, Growth>();
  const standings = new Map<Strand, Level>();
  for (const strand of STRANDS) {
    const tally = tallyOf(parts.filter((part) => part.strand === strand));
    if (tally.asked === 0) continue;
    strands.set(strand, tally);
    growth.set(strand, growthOf(child, strand, days));
    const level = levelIn(strand, levels);
    if (level !== null) standings.set(strand, level);
  }
  const evenings = child.evenings.filter(({ day }) => days.includes(day));
  const statuses = days.map(
    (day) => evenings.find((evening) => evening.day === day)?.status ?? 'none',
  );
  return {
    childId: child.childId,
    number: child.number,
    nickname: child.nickname,
    days: statuses,
    daysPractised: statuses.filter((status) => status === 'practised').length,
    strands,
    growth,
    standings,
    pages: pagesOf(evenings),
  };
}

/** Pages somebody reported, added up; null when nobody did. */
function pagesOf(evenings: ChildWeek['evenings']): number | null {
  const said = evenings.flatMap(({ pages }) => (pages === null ? [] : [pages]));
  return said.length === 0 ? null : said.reduce((total, pages) => total + pages, 0);
}
