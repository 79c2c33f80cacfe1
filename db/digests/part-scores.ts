import { isMixed, type PartScore, STRANDS, type Strand, splitMixed } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { storedFact, storedRung } from '../evenings/drill-json.ts';
import { byEvening } from './by-evening.ts';
import { type DayRange, readMixedMarks, readScores } from './week-rows.ts';

type ScoreRow = Awaited<ReturnType<typeof readScores>>[number];
type MixedMark = Awaited<ReturnType<typeof readMixedMarks>>[number];

/** The scores that count, by evening, in the order of the parts; a mixed part has one for each of its rungs. */
export async function readPartScores(
  store: Store,
  range: DayRange,
): Promise<(eveningId: string) => readonly PartScore[]> {
  const scores = byEvening(await readScores(store, range));
  const mixed = byEvening(await readMixedMarks(store, range));
  return (eveningId) =>
    scores(eveningId).flatMap((score) => {
      const parts = toPartScores(score, mixed(eveningId));
      return score.own ? parts.map((part) => ({ ...part, own: true as const })) : parts;
    });
}

function toPartScores(row: ScoreRow, mixed: readonly MixedMark[]): readonly PartScore[] {
  const { part, blueprint, right, asked } = row;
  if (!isMixed(blueprint)) {
    return [{ strand: storedStrand(row.strand), rung: storedRung(row.rung), right, asked }];
  }
  const own = mixed.filter((each) => each.part === part);
  const marks = own.map((each) => ({ fact: storedFact(each.fact), right: each.right }));
  return splitMixed({ blueprint, marks });
}

function storedStrand(text: string): Strand {
  const strand = STRANDS.find((candidate) => candidate === text);
  if (!strand) throw new TypeError('stored strand is unknown');
  return strand;
}
