import type { Store } from '../../db/index.ts';
import { runSql } from './raw-rows.ts';

/** Makes the database refuse the next changes of a table: so many, then no more. */
export async function strike(store: Store, table: string, times: number): Promise<void> {
  // A sequence counts on even when the transaction that was struck is undone.
  for (const statement of [
    'create sequence strikes',
    `create function strike() returns trigger language plpgsql as
      'begin if nextval(''strikes'') <= ${times} then raise exception ''struck''; end if; return new; end'`,
    `create trigger strike before insert or update on "${table}" for each row execute function strike()`,
  ]) {
    await runSql(store, statement);
  }
}

/** Lets the database take every change again. */
export async function unstrike(store: Store): Promise<void> {
  await runSql(store, 'drop function if exists strike cascade');
  await runSql(store, 'drop sequence if exists strikes');
}
