import { and, asc, desc, eq, gte, like, lte, sql } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { COUNTS, RUN_COUNTS } from '../memory/counts.ts';
import { evening, mark, pageLog, partScore, runResult, weekPlan } from '../schema/index.ts';

/** A class's evenings from one day to another, both included; of one child alone when it is named. */
export interface DayRange {
  readonly classId: string;
  readonly childId?: string;
  readonly first: SchoolDay;
  readonly last: SchoolDay;
}

/**
 * The scores that count, in the order of their parts. `own` says that the steps were not the class's: the child had its own that
 * evening, or it was another class's, which it was in then.
 */
export async function readScores({ db }: Store, range: DayRange) {
  return db
    .select({
      eveningId: partScore.eveningId,
      part: partScore.part,
      blueprint: partScore.blueprint,
      strand: partScore.strand,
      rung: partScore.rung,
      right: partScore.right,
      asked: partScore.asked,
      own: sql<boolean>`coalesce((${evening.drill}->'adjusted'->>'steps')::int, 0) <> 0 or ${weekPlan.classId} <> ${evening.classId}`,
    })
    .from(partScore)
    .innerJoin(evening, eq(evening.id, partScore.eveningId))
    .innerJoin(weekPlan, eq(weekPlan.id, evening.planId))
    .where(inRange(range))
    .orderBy(asc(partScore.part));
}

/** The marks that count, in the order of their cards. */
export async function readMarks({ db }: Store, range: DayRange) {
  return db
    .select({ eveningId: mark.eveningId, fact: mark.fact, right: mark.right })
    .from(mark)
    .innerJoin(evening, eq(evening.id, mark.eveningId))
    .innerJoin(partScore, COUNTS)
    .where(inRange(range))
    .orderBy(asc(mark.part), asc(mark.card));
}

/** The marks that count of mixed parts alone, with the part each is of. */
export async function readMixedMarks({ db }: Store, range: DayRange) {
  return db
    .select({ eveningId: mark.eveningId, part: mark.part, fact: mark.fact, right: mark.right })
    .from(mark)
    .innerJoin(evening, eq(evening.id, mark.eveningId))
    .innerJoin(partScore, COUNTS)
    .where(and(inRange(range), like(partScore.blueprint, '%+%')))
    .orderBy(asc(mark.part), asc(mark.card));
}

/** How far counting runs got, by the results that count. */
export async function readRuns({ db }: Store, range: DayRange) {
  return db
    .select({
      eveningId: runResult.eveningId,
      start: runResult.start,
      step: runResult.step,
      length: runResult.length,
      said: runResult.said,
    })
    .from(runResult)
    .innerJoin(evening, eq(evening.id, runResult.eveningId))
    .innerJoin(partScore, RUN_COUNTS)
    .where(inRange(range))
    .orderBy(asc(runResult.part));
}

/** What was last said of each evening's workbook pages. */
export async function readPages({ db }: Store, range: DayRange) {
  return db
    .selectDistinctOn([pageLog.eveningId], { eveningId: pageLog.eveningId, pages: pageLog.pages })
    .from(pageLog)
    .innerJoin(evening, eq(evening.id, pageLog.eveningId))
    .where(inRange(range))
    .orderBy(pageLog.eveningId, desc(pageLog.revision));
}

function inRange(range: DayRange) {
  return and(
    eq(evening.classId, range.classId),
    range.childId === undefined ? undefined : eq(evening.childId, range.childId),
    gte(evening.day, range.first),
    lte(evening.day, range.last),
  );
}
