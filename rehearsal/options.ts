import type { LoggedCall } from './call-log.ts';

/** A named instant the page offers, for example "the next evening"; the page adds day and time. */
export interface Stop {
  readonly id: string;
  readonly label: string;
  readonly at: Date;
  /** The page's “Run the week” goes from stop to stop until the first of these. */
  readonly endsWeek?: boolean;
}

/** The app's clock as the rehearsal sees it; given by the composition root. */
export interface RehearsalControl {
  now(): Date;
  /** Moves the app's clock forward and lets the app do the work that fell due; resolves when it is done. */
  moveTo(instant: Date): Promise<void>;
  stops(): Promise<readonly Stop[]>;
}

/** One Bot API call, as a gate sees it. `index` counts calls from 0 since the rehearsal started. */
export interface GateCall {
  readonly method: string;
  readonly params: Record<string, unknown>;
  readonly index: number;
}

/** Awaited before a call is applied. `'drop'` cuts the connection with nothing applied. */
export type Gate = (call: GateCall) => Promise<'apply' | 'drop'>;

export interface RehearsalOptions {
  /** Default 127.0.0.1. Any other host than loopback needs `allowRemote`. */
  readonly host?: string;
  /** 0 picks a free port. */
  readonly port: number;
  /** Must begin with `0:rehearsal`. */
  readonly token: string;
  readonly botUsername: string;
  readonly botName: string;
  readonly control: RehearsalControl;
  /** JSON file that keeps chats over restarts; uploads go to `<dataFile>.files/`. Absent: memory only. */
  readonly dataFile?: string;
  readonly gate?: Gate;
  /** IANA name of the zone the page tells the time in; absent: the browser's own. */
  readonly timeZone?: string;
  /** Settings of the process, for example `process.env`. Does not start when one of them is a real bot's token. */
  readonly settings?: Readonly<Record<string, string | undefined>>;
  /** Lets other computers reach the rehearsal, and the rehearsal call webhooks on them. */
  readonly allowRemote?: boolean;
  /**
   * The machine's clock in milliseconds, default `Date.now`. Measures how long calls take and how fast they come, and
   * gives the first update id; nothing a person sees depends on it.
   */
  readonly machineClock?: () => number;
  /** Waits by the machine's clock, for slow answers and uploads in a queue. Default: really waits. */
  readonly machineSleep?: (ms: number) => Promise<void>;
  /** Keeps the service's rate limits from the start, default false. */
  readonly limited?: boolean;
  /** Hears of each call as it is logged; the log itself keeps the last 2000. */
  readonly logged?: (call: LoggedCall) => void;
}

export interface Rehearsal {
  /** Where the page is, without a trailing slash. */
  readonly url: string;
  /** What a bot uses instead of the service's address. */
  readonly apiRoot: string;
  readonly token: string;
  /** Updates not yet confirmed by the bot; expired ones are not counted. */
  pendingUpdates(): number;
  /** Ends waiting polls, cuts connections and writes the data file. */
  close(): Promise<void>;
}
