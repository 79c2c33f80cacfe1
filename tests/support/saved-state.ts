import type { Store } from '../../db/index.ts';
import { runSql, TABLES } from './raw-rows.ts';

const BESIDE = 'saved_state';

/** Everything stored at one moment, to go back to as often as wanted. On the real server only. */
export interface SavedState {
  restore(): Promise<void>;
  /** Forgets it. Has to be called before the store is closed: stores are kept. */
  drop(): Promise<void>;
}

/** Copies every table of ours to a schema beside it. */
export async function saveState(store: Store): Promise<SavedState> {
  await runSql(store, `drop schema if exists ${BESIDE} cascade`);
  await runSql(store, `create schema ${BESIDE}`);
  for (const table of TABLES) {
    await runSql(store, `create table ${BESIDE}."${table}" as table public."${table}"`);
  }
  const gone = [...TABLES.map((table) => `public."${table}"`), 'pgboss.job']
    .map((table) => `delete from ${table};`)
    .join('\n');
  const back = TABLES.map(
    (table) => `insert into public."${table}" select * from ${BESIDE}."${table}";`,
  ).join('\n');
  return {
    restore: async () => {
      // Without the checks between tables, so that their order does not matter.
      await runSql(
        store,
        `do $$ begin
          perform set_config('session_replication_role', 'replica', true);
          ${gone}
          ${back}
        end $$`,
      );
    },
    drop: async () => {
      await runSql(store, `drop schema ${BESIDE} cascade`);
    },
  };
}
