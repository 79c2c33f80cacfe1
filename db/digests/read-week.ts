import { and, asc, desc, eq, gte, lte } from 'drizzle-orm';
import {
  addDays,
  type ChildWeek,
  type EveningRecord,
  type SchoolDay,
  SILENCE_DAYS,
  STRANDS,
  type Strand,
  silentRun,
  type WeekInput,
} from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { childrenOfClass } from '../children/list-children.ts';
import { getRunningClass } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { storedFact, storedRung } from '../evenings/drill-json.ts';
import { listPastEvenings, type PastEvening } from '../evenings/history.ts';
import { COUNTS } from '../memory/counts.ts';
import { evening, mark, pageLog, partScore } from '../schema/index.ts';

/** An evening sent less long ago than this and not marked yet is not shown as one without an answer. */
const ANSWER_MS = 2 * 60 * 60_000;

/**
 * Everything a digest is computed from: the marks that count, of the school days named.
 *
 * An evening may be marked until its own day is over, so one of today, in the class's zone at `now`, never counts as silence.
 * Unmarked, it has a record as `silent` once it was sent two hours ago; before that it has none.
 */
export async function readWeek(
  store: Store,
  input: { classId: string; days: readonly SchoolDay[]; now: Date },
): Promise<WeekInput> {
  const first = input.days.at(0);
  const last = input.days.at(-1);
  const children = await childrenOfClass(store, input.classId);
  if (!first || !last) return { days: [], children: children.map((child) => emptyWeek(child)) };
  const range = { classId: input.classId, first, last };
  const answerable = new Date(input.now.getTime() - ANSWER_MS);
  const all = await listPastEvenings(store, {
    classId: input.classId,
    from: addDays(last, -SILENCE_DAYS),
    until: last,
  });
  const { zone } = await getRunningClass(store, input.classId);
  const { day: today } = localTimeAt(input.now, zone);
  const evidence = {
    scores: await readScores(store, range),
    marks: await readMarks(store, range),
    pages: await readPages(store, range),
  };
  return {
    days: input.days,
    children: children.map((child) => {
      const own = all.filter((past) => past.childId === child.id);
      const isOver = (past: PastEvening) => past.status !== 'silent' || past.day < today;
      const isTold = (past: PastEvening) =>
        past.day >= first && (past.status !== 'silent' || past.plannedAt <= answerable);
      return {
        ...emptyWeek(child),
        silentRun: silentRun(own.filter(isOver)),
        evenings: own.filter(isTold).map((past) => recordOf(past, evidence)),
      };
    }),
  };
}

interface Range {
  readonly classId: string;
  readonly first: SchoolDay;
  readonly last: SchoolDay;
}

interface Evidence {
  readonly scores: Awaited<ReturnType<typeof readScores>>;
  readonly marks: Awaited<ReturnType<typeof readMarks>>;
  readonly pages: Awaited<ReturnType<typeof readPages>>;
}

function emptyWeek(child: Awaited<ReturnType<typeof childrenOfClass>>[number]): ChildWeek {
  return {
    childId: child.id,
    number: child.number,
    nickname: child.nickname,
    joined: child.helpers > 0,
    left: child.left,
    reachable: child.reachable > 0,
    silentRun: 0,
    evenings: [],
  };
}

function recordOf(past: PastEvening, evidence: Evidence): EveningRecord {
  const own = <T extends { eveningId: string }>(rows: readonly T[]) =>
    rows.filter((row) => row.eveningId === past.eveningId);
  return {
    day: past.day,
    status: past.status,
    parts: own(evidence.scores).map((row) => ({
      strand: storedStrand(row.strand),
      rung: storedRung(row.rung),
      right: row.right,
      asked: row.asked,
    })),
    facts: own(evidence.marks).map((row) => ({ fact: storedFact(row.fact), right: row.right })),
    pages: own(evidence.pages).at(0)?.pages ?? null,
  };
}

function inRange(range: Range) {
  return and(
    eq(evening.classId, range.classId),
    gte(evening.day, range.first),
    lte(evening.day, range.last),
  );
}

async function readScores({ db }: Store, range: Range) {
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

async function readMarks({ db }: Store, range: Range) {
  return db
    .select({ eveningId: mark.eveningId, fact: mark.fact, right: mark.right })
    .from(mark)
    .innerJoin(evening, eq(evening.id, mark.eveningId))
    .innerJoin(partScore, COUNTS)
    .where(inRange(range))
    .orderBy(asc(mark.part), asc(mark.card));
}

async function readPages({ db }: Store, range: Range) {
  return db
    .selectDistinctOn([pageLog.eveningId], { eveningId: pageLog.eveningId, pages: pageLog.pages })
    .from(pageLog)
    .innerJoin(evening, eq(evening.id, pageLog.eveningId))
    .where(inRange(range))
    .orderBy(pageLog.eveningId, desc(pageLog.revision));
}

function storedStrand(text: string): Strand {
  const strand = STRANDS.find((candidate) => candidate === text);
  if (!strand) throw new TypeError('stored strand is unknown');
  return strand;
}
