import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungId, Strand } from '../ladder/rung.ts';
import type { EveningStatus } from './silent-run.ts';

/** How one part of an evening was marked. */
export interface PartScore {
  readonly strand: Strand;
  readonly rung: RungId;
  readonly right: number;
  readonly asked: number;
}

/** One child's evening as the digest sees it. `pages` is null when nobody said how many workbook pages were done. */
export interface EveningRecord {
  readonly day: SchoolDay;
  readonly status: EveningStatus;
  readonly parts: readonly PartScore[];
  readonly facts: readonly { readonly fact: FactId; readonly right: boolean }[];
  readonly pages: number | null;
}

/**
 * One child's week. `number` is the place in the class list; `joined` says that a helper has joined and is still there, `left`
 * that one was and none is any more; `reachable` that messages get through; `silentRun` counts beyond this week (see
 * silentRun).
 */
export interface ChildWeek {
  readonly childId: string;
  readonly number: number;
  readonly nickname: string;
  readonly joined: boolean;
  readonly left: boolean;
  readonly reachable: boolean;
  readonly silentRun: number;
  readonly evenings: readonly EveningRecord[];
}

/** One class's week: the school days it covers, in order, and its children. */
export interface WeekInput {
  readonly days: readonly SchoolDay[];
  readonly children: readonly ChildWeek[];
}

/** Right answers out of those asked. */
export interface Tally {
  readonly right: number;
  readonly asked: number;
}

/** One child's line. `days` stands beside the week's days, `none` where no evening was planned; a strand without marks is absent; `pages` is null when nobody said. */
export interface ChildSummary {
  readonly childId: string;
  readonly number: number;
  readonly nickname: string;
  readonly days: readonly (EveningStatus | 'none')[];
  readonly daysPractised: number;
  readonly strands: ReadonlyMap<Strand, Tally>;
  readonly pages: number | null;
}

/**
 * One strand over the class. `children` have marks in it; `secure` of them got at least 9 in 10 of at least 8 right, and
 * `tooFew` were asked fewer than 8. `proposal` is for the teacher to decide on.
 */
export interface StrandSummary {
  readonly strand: Strand;
  readonly rungs: readonly RungId[];
  readonly right: number;
  readonly asked: number;
  readonly children: number;
  readonly secure: number;
  readonly tooFew: number;
  readonly proposal: 'move_on' | 'stay' | 'too_little';
}

/** A fact the class is unsure of. `children` counts those who missed it. */
export interface Wobble {
  readonly fact: FactId;
  readonly missed: number;
  readonly asked: number;
  readonly children: number;
}

/** A family worth a phone call. `evenings` is how many in a row went unanswered, 0 for a child without a helper. */
export interface Call {
  readonly childId: string;
  readonly number: number;
  readonly nickname: string;
  readonly reason: 'unreachable' | 'silent' | 'left' | 'not_joined';
  readonly evenings: number;
}

/** Friday's digest as numbers. `practisedThree` counts children who practised on three days, or on all when there were fewer. */
export interface WeekSummary {
  readonly days: readonly SchoolDay[];
  readonly joined: number;
  readonly practisedThree: number;
  readonly children: readonly ChildSummary[];
  readonly strands: readonly StrandSummary[];
  readonly wobbling: readonly Wobble[];
  readonly calls: readonly Call[];
  readonly moreCalls: number;
  readonly pages: number;
}
