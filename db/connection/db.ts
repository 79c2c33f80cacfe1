import type { PgDatabase, PgQueryResultHKT } from 'drizzle-orm/pg-core';
import type * as schema from '../schema/index.ts';
import type { DeliveryQueue } from './delivery-queue.ts';
import type { Peers } from './peers.ts';

/** A connection or an open transaction, on either back end. */
export type Db = PgDatabase<PgQueryResultHKT, typeof schema>;

/** What every verb of db/ takes first: where the rows are, how deliveries are woken up, and who else works on the same rows. */
export interface Store {
  readonly db: Db;
  readonly queue: DeliveryQueue;
  readonly peers: Peers;
}

/** A store with its life in the opener's hands. */
export interface OpenStore extends Store {
  /** Stops the engine and closes the connection; safe to call once. */
  close(): Promise<void>;
}
