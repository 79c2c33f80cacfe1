import { sql } from 'drizzle-orm';
import type { Store } from './db.ts';

/** What processes on one database tell each other. */
export type Topic = 'inbox' | 'paused';

/** The channel of the database that carries a topic; a database may be shared with other programs. */
export function channelOf(topic: Topic): string {
  return `suppersums_${topic}`;
}

/**
 * The other processes on the same database, so far as they have to agree. Who holds what ends with its connection: nobody has
 * to clean up after a process that died.
 */
export interface Peers {
  /**
   * Calls `onNews` with what {@link tell} said, and with an empty text whenever something may have been missed: once at the
   * beginning, and after a broken connection.
   */
  listen(topic: Topic, onNews: (text: string) => void): Promise<void>;
  /**
   * Counts this process among those that do a kind of work, until it ends. If nobody else does it, `alone` is done first, and
   * who comes meanwhile waits for it.
   */
  join(work: string, alone: () => Promise<void>): Promise<void>;
  /** Whether this process is the one that does a kind of work of which there is to be one; once it is, it stays it. */
  leads(work: string): Promise<boolean>;
}

/** Tells all processes that listen, this one too, once the caller's transaction is stored. */
export async function tell({ db }: Store, topic: Topic, text: string): Promise<void> {
  await db.execute(sql`select pg_notify(${channelOf(topic)}, ${text})`);
}
