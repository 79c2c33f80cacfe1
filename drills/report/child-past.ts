import type { SchoolDay } from '../calendar/school-day.ts';
import type { EveningStatus } from '../digest/silent-run.ts';
import type { DayScores } from '../digest/week.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { FactMemory } from '../memory/fact-memory.ts';

/** One evening of a child's past: how it ended, its scores, and the pages somebody said were done, null when nobody did. */
export interface PastDay extends DayScores {
  readonly status: EveningStatus;
  readonly pages: number | null;
}

/**
 * What a child's report is made of, and nothing of any other child: the class's school days in the span since the child's first
 * evening, the child's evenings among them in order, and what is known of its facts on the day it is told.
 */
export interface ChildPast {
  readonly days: readonly SchoolDay[];
  readonly evenings: readonly PastDay[];
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly today: SchoolDay;
}
