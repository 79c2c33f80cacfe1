import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungId, Strand } from '../ladder/rung.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { RunOutcome } from '../memory/run-evidence.ts';
import type { PaceStand } from '../pace/pace-stand.ts';
import type { EveningStatus } from './silent-run.ts';

/**
 * How one part of an evening was marked. A mixed part has a score for each of its rungs (see splitMixed); `mixed` is then the
 * whole part's blueprint, and left out for any other. `own` says that the steps were not the class's: that evening the child had
 * easier or harder ones of its own, or was in another class.
 */
export interface PartScore {
  readonly strand: Strand;
  readonly rung: RungId;
  readonly right: number;
  readonly asked: number;
  readonly mixed?: string;
  readonly own?: true;
}

/** What was marked on one day. */
export interface DayScores {
  readonly day: SchoolDay;
  readonly parts: readonly PartScore[];
}

/**
 * One child's evening as the digest sees it: the score of each part, the marks of its cards, how far its counting runs got.
 * `pages` is null when nobody said how many workbook pages were done.
 */
export interface EveningRecord extends DayScores {
  readonly status: EveningStatus;
  readonly facts: readonly { readonly fact: FactId; readonly right: boolean }[];
  readonly runs: readonly RunOutcome[];
  readonly pages: number | null;
}

/**
 * One child's week. `number` is the place in the class list; `joined` says that a helper has joined and is still there, `left`
 * that one was and none is any more; `reachable` that messages get through; `silentRun` counts beyond this week (see
 * silentRun). `earlier` are the scores of days before this week, back to {@link HISTORY_DAYS}; `memory` is what is known of
 * the child's facts today; `pace` is there when at the end of the week the drill did not simply come every school day.
 */
export interface ChildWeek {
  readonly childId: string;
  readonly number: number;
  readonly nickname: string;
  readonly joined: boolean;
  readonly left: boolean;
  readonly reachable: boolean;
  readonly silentRun: number;
  readonly pace?: PaceStand;
  readonly evenings: readonly EveningRecord[];
  readonly earlier: readonly DayScores[];
  readonly memory: ReadonlyMap<FactId, FactMemory>;
}

/** One class's week: the school days it covers, in order, the day on which it is told, and the class's children. */
export interface WeekInput {
  readonly days: readonly SchoolDay[];
  readonly today: SchoolDay;
  readonly children: readonly ChildWeek[];
}

/** How many days back a child's own past reaches, the week's last day counted: four weeks. */
export const HISTORY_DAYS = 28;
