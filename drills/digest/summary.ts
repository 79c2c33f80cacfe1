import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungId, Strand } from '../ladder/rung.ts';
import type { PaceStand } from '../pace/pace-stand.ts';
import type { Growth } from './growth.ts';
import type { Level } from './judge-security.ts';
import type { Proposal } from './propose-step.ts';
import type { ShareSecure } from './share-secure.ts';
import type { EveningStatus } from './silent-run.ts';
import type { StrandChange } from './strand-change.ts';

/** Right answers out of those asked. */
export interface Tally {
  readonly right: number;
  readonly asked: number;
}

/** A child as the teacher knows it. */
export interface Named {
  readonly childId: string;
  readonly number: number;
  readonly nickname: string;
}

/**
 * One child's line. `days` stands beside the week's days, `none` where no evening was planned; `strands`, `growth`
 * and `standings` (see levelIn) have the strands with marks this week; `pages` is null when nobody said.
 */
export interface ChildSummary extends Named {
  readonly days: readonly (EveningStatus | 'none')[];
  readonly daysPractised: number;
  readonly strands: ReadonlyMap<Strand, Tally>;
  readonly growth: ReadonlyMap<Strand, Growth>;
  readonly standings: ReadonlyMap<Strand, Level>;
  readonly pages: number | null;
}

/**
 * One strand over the class. `rose` and `slipped` count children whose own scores rise or fall over four weeks; children are
 * secure by their standing in the whole strand; `change` is since the week before, `weeks` are the last four, the oldest first (see
 * strandWeeks).
 */
export interface StrandSummary extends Tally, ShareSecure {
  readonly strand: Strand;
  readonly rose: number;
  readonly slipped: number;
  readonly change: StrandChange;
  readonly weeks: readonly (Tally | null)[];
}

/**
 * One rung over the class. `right` of `asked` is the week's tally. Of the `children` who have a helper and marks on the rung
 * this week, `secure` are secure, `notYet` are not yet, `tooFew` had too few answers, and the others are in between (see
 * judgeSecurity). `share` is the range in which the share of children secure lies, at 80 %, if those with marks stand for the
 * class. `proposal` is for the teacher to decide on; `next` is the rung to go on to, null at the top of the ladder.
 */
export interface RungSummary extends Tally, ShareSecure {
  readonly strand: Strand;
  readonly rung: RungId;
  readonly proposal: Proposal;
  readonly next: RungId | null;
}

/**
 * Something the class is unsure of: one fact, or a sum and its turned-round twin where both were missed. `children` counts
 * those who missed it.
 */
export interface Wobble {
  readonly facts: readonly FactId[];
  readonly missed: number;
  readonly asked: number;
  readonly children: number;
}

/**
 * A family worth a phone call. `evenings` is how many in a row went unanswered, or were not delivered; 0 for a child without a
 * helper.
 */
export interface Call extends Named {
  readonly reason: 'unreachable' | 'undelivered' | 'silent' | 'left' | 'not_joined';
  readonly evenings: number;
}

/** A family to which the drill comes less often than every school day, and why. */
export interface Slower extends Named {
  readonly stand: PaceStand;
}

/**
 * Friday's digest as numbers. `joined` children have a helper now, `left` ones have none any more. `practisedThree` counts
 * those who joined and practised on three days, or on all when there were fewer. `calls` are all families worth a call, the
 * most urgent first; the first {@link FIRST_CALLS} are enough for a day. `slower` are the families to which the drill comes less
 * often, by the class list: an evening that was not sent to them is no silence.
 */
export interface WeekSummary {
  readonly days: readonly SchoolDay[];
  readonly joined: number;
  readonly left: number;
  readonly practisedThree: number;
  readonly children: readonly ChildSummary[];
  readonly strands: readonly StrandSummary[];
  readonly rungs: readonly RungSummary[];
  readonly wobbling: readonly Wobble[];
  readonly calls: readonly Call[];
  readonly slower: readonly Slower[];
  readonly pages: number;
}
