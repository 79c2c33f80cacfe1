import postgres from 'postgres';
import { channelOf, type Peers } from './peers.ts';

/** Locks of the session in which a process says what it does. `close` lets go of all of them. */
export interface ServerPeers extends Peers {
  close(): Promise<void>;
}

/** What a lock is about, so that joining and leading the same work are two locks. */
const lockName = (kind: 'join' | 'lead', work: string) => `suppersums ${kind} ${work}`;

/**
 * Peers by advisory locks and LISTEN of one connection that is kept open. A pooler between us and the server has to keep
 * sessions. After a broken connection the locks are taken again.
 */
export function createServerPeers(url: string, client: postgres.Sql): ServerPeers {
  const joined = new Set<string>();
  let isOpen = true;
  const session = postgres(url, {
    ...{ max: 1, connect_timeout: 5, max_lifetime: null, onnotice: () => {} },
    onclose: () => {
      if (isOpen) void rejoin();
    },
  });
  const holdShared = (work: string) =>
    session`select pg_advisory_lock_shared(hashtextextended(${lockName('join', work)}, 0))`;
  const rejoin = async () => {
    for (const work of joined) {
      // Without a server there is nobody to agree with: the next end of a connection leads here again.
      await holdShared(work).catch(() => {});
    }
  };
  const holdAlone = async (name: string) => {
    const [row] = await session`select pg_try_advisory_lock(hashtextextended(${name}, 0)) as held`;
    return row?.held === true;
  };
  return {
    listen: async (topic, onNews) => {
      await client.listen(channelOf(topic), onNews, () => onNews(''));
    },
    join: async (work, alone) => {
      const name = lockName('join', work);
      const isAlone = await holdAlone(name);
      try {
        if (isAlone) await alone();
      } finally {
        // First the lock that lets others in, then not the one that keeps them out.
        await holdShared(work);
        if (isAlone) await session`select pg_advisory_unlock(hashtextextended(${name}, 0))`;
      }
      joined.add(work);
    },
    leads: (work) => holdAlone(lockName('lead', work)),
    close: async () => {
      isOpen = false;
      await session.end({ timeout: 1 });
    },
  };
}
