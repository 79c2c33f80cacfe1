import type { Drill, DrillRate, Language, SchoolDay } from '../../drills/index.ts';

/** What the latest marks say of one part. `missed` are card indexes; for a run, `right` numbers were said. */
export interface PartResult {
  readonly right: number;
  readonly asked: number;
  readonly missed: readonly number[];
  readonly revision: number;
  /** Scores of earlier evenings on the same blueprint, for own best. */
  readonly earlier: readonly number[];
}

/** The pages an evening asks for. */
export interface EveningPages {
  readonly title: string;
  readonly from: number;
  readonly to: number;
  /** The book's last page. */
  readonly last: number;
  /** Once the last page is done: the book that comes next and its page, null when there is none. */
  readonly next: { readonly title: string; readonly from: number } | null;
}

/** An evening as its helpers see it: everything a screen is drawn from. */
export interface EveningView {
  readonly id: string;
  readonly childId: string;
  readonly classId: string;
  readonly nickname: string;
  readonly zone: string;
  /** The class's: cards are worded in it, whoever reads what stands around them. */
  readonly language: Language;
  readonly day: SchoolDay;
  readonly drill: Drill;
  /** Tonight's pages; null without a workbook. */
  readonly book: EveningPages | null;
  readonly started: boolean;
  readonly declined: boolean;
  /** Whether the family has stopped for the day; what is marked stays. */
  readonly stopped: boolean;
  readonly remindAt: Date | null;
  /** Before anybody has started: that the drill comes on fewer evenings, since nobody answered for long. */
  readonly fewer?: Exclude<DrillRate, 'daily'>;
  /** One entry per part; null until it is marked. */
  readonly results: readonly (PartResult | null)[];
  /**
   * The part being marked and the cards tapped so far. `single` while its cards are asked one by one: the card that is asked
   * now, from 0, and whether its answer is to be seen.
   */
  readonly marking: {
    readonly part: number;
    readonly missed: readonly number[];
    readonly single?: { readonly card: number; readonly shown: boolean };
  } | null;
  /** Pages done as the helper says; null until asked. */
  readonly pages: number | null;
}
