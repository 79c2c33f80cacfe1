import type { DayScores, EveningRecord } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { storedFact } from '../evenings/drill-json.ts';
import type { PastEvening } from '../evenings/history.ts';
import { byEvening } from './by-evening.ts';
import { readPartScores } from './part-scores.ts';
import { type DayRange, readMarks, readPages, readRuns } from './week-rows.ts';

/** Turns a past evening into what the digest reads of it. */
export interface EveningReader {
  scores(past: PastEvening): DayScores;
  record(past: PastEvening): EveningRecord;
}

/** Reads what was marked of a class: scores of the whole `past`, marks, runs and pages of its `week` alone. */
export async function readEvenings(
  store: Store,
  past: DayRange,
  week: DayRange,
): Promise<EveningReader> {
  const scores = await readPartScores(store, past);
  const marks = byEvening(await readMarks(store, week));
  const runs = byEvening(await readRuns(store, week));
  const pages = byEvening(await readPages(store, week));
  const scoresOf = ({ eveningId, day }: PastEvening): DayScores => ({
    day,
    parts: scores(eveningId),
  });
  return {
    scores: scoresOf,
    record: (evening) => ({
      ...scoresOf(evening),
      status: evening.status,
      facts: marks(evening.eveningId).map(({ fact, right }) => ({ fact: storedFact(fact), right })),
      runs: runs(evening.eveningId).map(({ eveningId: _, ...run }) => run),
      pages: pages(evening.eveningId).at(0)?.pages ?? null,
    }),
  };
}
