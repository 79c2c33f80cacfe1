import type { PgDatabase, PgQueryResultHKT } from 'drizzle-orm/pg-core';
import type * as schema from '../schema/index.ts';
import type { DeliveryQueue } from './delivery-queue.ts';

/** A connection or an open transaction, on either back end. */
export type Db = PgDatabase<PgQueryResultHKT, typeof schema>;

/** What every verb of db/ takes first: where the rows are and how deliveries are woken up. */
export interface Store {
  readonly db: Db;
  readonly queue: DeliveryQueue;
  /**
   * Whether no other process works for this bot on the same database. Once true, this process is the one others wait for,
   * until it closes the store or dies.
   */
  isAlone(botId: number): Promise<boolean>;
}

/** A store with its life in the opener's hands. */
export interface OpenStore extends Store {
  /** Stops the engine and closes the connection; safe to call once. */
  close(): Promise<void>;
}
