import {
  type DayScores,
  type EveningRecord,
  type PartScore,
  STRANDS,
  type Strand,
} from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { storedFact, storedRung } from '../evenings/drill-json.ts';
import type { PastEvening } from '../evenings/history.ts';
import { type DayRange, readMarks, readPages, readRuns, readScores } from './week-rows.ts';

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
  const scores = byEvening(await readScores(store, past));
  const marks = byEvening(await readMarks(store, week));
  const runs = byEvening(await readRuns(store, week));
  const pages = byEvening(await readPages(store, week));
  const scoresOf = ({ eveningId, day }: PastEvening): DayScores => ({
    day,
    parts: scores(eveningId).map(toPartScore),
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

function byEvening<Row extends { readonly eveningId: string }>(
  rows: readonly Row[],
): (eveningId: string) => readonly Row[] {
  const grouped = new Map<string, Row[]>();
  for (const row of rows) {
    const group = grouped.get(row.eveningId);
    if (group) group.push(row);
    else grouped.set(row.eveningId, [row]);
  }
  return (eveningId) => grouped.get(eveningId) ?? [];
}

function toPartScore(row: { strand: string; rung: string; right: number; asked: number }) {
  const { right, asked } = row;
  const score: PartScore = {
    strand: storedStrand(row.strand),
    rung: storedRung(row.rung),
    right,
    asked,
  };
  return score;
}

function storedStrand(text: string): Strand {
  const strand = STRANDS.find((candidate) => candidate === text);
  if (!strand) throw new TypeError('stored strand is unknown');
  return strand;
}
