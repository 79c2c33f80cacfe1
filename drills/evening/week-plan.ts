import type { RungId } from '../ladder/rung.ts';

/** One line of a class's week: which rung, how many cards (or numbers in a run), how many seconds for each. */
export interface PlanPart {
  readonly rung: RungId;
  readonly cards: number;
  readonly seconds: number;
}

/** What a class practises from the next evening on. The workbook is kept beside it, not in it. */
export interface WeekPlan {
  readonly parts: readonly PlanPart[];
}
