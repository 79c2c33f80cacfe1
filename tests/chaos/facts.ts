/** What the bot sends a family by itself. */
export type Prompt = 'evening' | 'nudge';

/** A call of the bot as the service saw it. Instants are milliseconds of the shared clock. */
export interface Call {
  /** When it arrived. */
  readonly at: number;
  readonly method: string;
  /** 0 when it was never answered. */
  readonly status: number;
  readonly chatId: number | null;
  /** The message it made or changed; null when it was not carried out. */
  readonly messageId: number | null;
  readonly prompt: Prompt | null;
  /** The tap it answers. */
  readonly queryId: string | null;
  /** For how long the service asked for a pause. */
  readonly pauseSeconds: number | null;
  /** Refused because the suite wanted it so. */
  readonly byFault: boolean;
}

/** A message owed, as the database has it in the end. */
export interface Owed {
  readonly childId: string;
  readonly phone: number;
  readonly kind: Prompt;
  readonly status: 'planned' | 'attempting' | 'sent' | 'failed' | 'unknown';
  readonly messageId: number | null;
  readonly problem: string | null;
}

/** A part as the database has it. */
export interface StoredPart {
  readonly childId: string;
  readonly part: number;
  readonly right: number;
  readonly asked: number;
  readonly revision: number;
}

/** A card's mark as the database has it. Cards are counted from 0. */
export interface StoredMark {
  readonly childId: string;
  readonly part: number;
  readonly card: number;
  readonly right: boolean;
  readonly revision: number;
}

/** A part that a family has marked and seen acknowledged: the screen after it came. Cards are counted from 0. */
export interface SeenPart {
  readonly part: number;
  /** Null for a run. */
  readonly missed: readonly number[] | null;
  readonly right: number;
}

/** What a family did and saw on one evening. */
export interface FamilyEvening {
  readonly childId: string;
  readonly phones: readonly number[];
  /** Its phones could be reached all day. */
  readonly reachable: boolean;
  readonly declined: boolean;
  readonly seen: readonly SeenPart[];
}

/** A stretch in which the suite's own process could not look at what arrived; what arrived in it came in a heap. */
export interface Stall {
  readonly from: number;
  readonly to: number;
}

/** All that is known of one evening, from the service, the families and the database. */
export interface EveningFacts {
  /** Sending to families is allowed from here to there. */
  readonly hours: { readonly from: number; readonly to: number };
  /** The phones of families; others are teachers'. */
  readonly families: readonly FamilyEvening[];
  readonly calls: readonly Call[];
  readonly owed: readonly Owed[];
  readonly parts: readonly StoredPart[];
  readonly marks: readonly StoredMark[];
  /** What has not come to an end, by what it is. */
  readonly open: Readonly<Record<string, number>>;
  /** The rate the bot was told to keep, in new messages a second. */
  readonly perSecond: number;
  readonly stalls: readonly Stall[];
  /** When Postgres was down, so that a pause could not be told. */
  readonly outages: readonly Stall[];
}

/** Something that must not be. `what` says it in one line, with ids and numbers only. */
export interface Violation {
  readonly invariant: string;
  readonly what: string;
}
