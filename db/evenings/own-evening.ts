import { and, eq, isNull, type SQL, sql } from 'drizzle-orm';
import { child, evening, helperChild } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';

/** Whether a row of `evening` joined with `helper_child` is the helper's own: the one rule of what a family may see and change. */
export function isOwn(scope: HelperScope): SQL | undefined {
  return and(
    eq(evening.id, scope.eveningId),
    eq(helperChild.helperId, scope.helperId),
    isNull(helperChild.leftAt),
    // A child that is being erased is seen by nobody.
    sql`not exists (select 1 from ${child} where ${child.id} = ${helperChild.childId} and ${child.erasingSince} is not null)`,
  );
}
