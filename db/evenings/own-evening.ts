import { and, eq, isNull, type SQL } from 'drizzle-orm';
import { evening, helperChild } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';

/** Whether a row of `evening` joined with `helper_child` is the helper's own: the one rule of what a family may see and change. */
export function isOwn(scope: HelperScope): SQL | undefined {
  return and(
    eq(evening.id, scope.eveningId),
    eq(helperChild.helperId, scope.helperId),
    isNull(helperChild.leftAt),
  );
}
