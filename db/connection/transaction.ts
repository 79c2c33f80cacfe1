import type { Store } from './db.ts';

/** Runs `work` in one transaction (a savepoint inside an open one): all of it is stored, or none. */
export async function inTransaction<T>(
  store: Store,
  work: (inner: Store) => Promise<T>,
): Promise<T> {
  return store.db.transaction((tx) => work({ ...store, db: tx }));
}
