import { and, asc, desc, eq, gte, lte } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { COUNTS, RUN_COUNTS } from '../memory/counts.ts';
import { evening, mark, pageLog, partScore, runResult } from '../schema/index.ts';

/** A class's evenings from one day to another, both included. */
export interface DayRange {
  readonly classId: string;
  readonly first: SchoolDay;
  readonly last: SchoolDay;
}

/** The scores that count, in the order of their parts. */
export async function readScores({ db }: Store, range: DayRange) {
  return db
    .select({
      eveningId: partScore.eveningId,
      strand: partScore.strand,
      rung: partScore.rung,
      right: partScore.right,
      asked: partScore.asked,
    })
    .from(partScore)
    .innerJoin(evening, eq(evening.id, partScore.eveningId))
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
    gte(evening.day, range.first),
    lte(evening.day, range.last),
  );
}
