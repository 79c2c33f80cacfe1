import { asc, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { byEvening } from '../digests/by-evening.ts';
import { evening, mark, pageLog, partScore, runResult } from '../schema/index.ts';
import type { HeldData } from './held-data.ts';

/** A child's evenings in order, each with all that was marked of it, earlier revisions too. */
export async function readHeldEvenings(
  { db }: Store,
  childId: string,
): Promise<HeldData['evenings']> {
  const evenings = await db
    .select()
    .from(evening)
    .where(eq(evening.childId, childId))
    .orderBy(asc(evening.day));
  const marks = await db
    .select()
    .from(mark)
    .where(eq(mark.childId, childId))
    .orderBy(asc(mark.part), asc(mark.revision), asc(mark.card));
  const runs = await db
    .select()
    .from(runResult)
    .where(eq(runResult.childId, childId))
    .orderBy(asc(runResult.part), asc(runResult.revision));
  const scores = await db.select().from(partScore).where(eq(partScore.childId, childId));
  const pages = await db.select().from(pageLog).where(eq(pageLog.childId, childId));
  const of = {
    marks: byEvening(marks),
    runs: byEvening(runs),
    scores: byEvening(scores),
    pages: byEvening(pages),
  };
  return evenings.map(({ id, day, drill, pageFrom, pageTo, startedAt, declinedAt, stoppedAt }) => ({
    day,
    drill,
    pages: pageFrom === null || pageTo === null ? null : { from: pageFrom, to: pageTo },
    startedAt: startedAt === null ? null : startedAt.toISOString(),
    declinedAt: declinedAt === null ? null : declinedAt.toISOString(),
    stoppedAt: stoppedAt === null ? null : stoppedAt.toISOString(),
    marks: of.marks(id).map(({ part, card, fact, right, way, revision, markedAt }) => {
      return { part, card, fact, right, way, revision, at: markedAt.toISOString() };
    }),
    runs: of.runs(id).map(({ part, rung, start, step, length, said, revision, markedAt }) => {
      return { part, rung, start, step, length, said, revision, at: markedAt.toISOString() };
    }),
    scores: of.scores(id).map(({ part, rung, right, asked, markedAt }) => {
      return { part, rung, right, asked, at: markedAt.toISOString() };
    }),
    pagesDone: of.pages(id).map(({ pages: done, revision, loggedAt }) => {
      return { pages: done, revision, at: loggedAt.toISOString() };
    }),
  }));
}
