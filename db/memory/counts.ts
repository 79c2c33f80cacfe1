import { and, eq } from 'drizzle-orm';
import { mark, partScore, runResult } from '../schema/index.ts';

/** Joins a mark with its part's score only while it counts: a corrected one has an older revision. */
export const COUNTS = and(
  eq(partScore.eveningId, mark.eveningId),
  eq(partScore.part, mark.part),
  eq(partScore.revision, mark.revision),
);

/** The same for a counting run's result. */
export const RUN_COUNTS = and(
  eq(partScore.eveningId, runResult.eveningId),
  eq(partScore.part, runResult.part),
  eq(partScore.revision, runResult.revision),
);
