import { isDeepStrictEqual } from 'node:util';
import { eq } from 'drizzle-orm';
import type { FamilyPace, SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { child, pace } from '../schema/index.ts';
import { pacesOf } from './read-pace.ts';

/** A change to a family's pace. `isWord` says that somebody wished it; a review's change is nobody's word. */
export interface PaceChange {
  readonly childId: string;
  readonly day: SchoolDay;
  readonly now: Date;
  readonly isWord: boolean;
}

/**
 * Changes a family's pace by a function of drills/, one change at a time, and keeps the earlier one as history. What changes
 * nothing is not stored. Inside the caller's transaction. Returns the pace as it stands then.
 */
export async function changePace(
  inner: Store,
  { childId, day, now, isWord }: PaceChange,
  change: (before: FamilyPace) => FamilyPace,
): Promise<FamilyPace> {
  await inner.db.select({ id: child.id }).from(child).where(eq(child.id, childId)).for('update');
  const stored = (await pacesOf(inner, [childId]))(childId);
  const after = change(stored.pace);
  if (isDeepStrictEqual(after, stored.pace)) return after;
  const { announced, stopped: _, ...rest } = after;
  await inner.db.insert(pace).values({
    ...rest,
    id: newId(now),
    childId,
    step: stored.step + 1,
    day,
    at: now,
    saidAt: isWord ? now : stored.saidAt,
    announcedOn: announced?.on ?? null,
    announcedFrom: announced?.from ?? null,
    days: rest.days === null ? null : [...rest.days],
  });
  return after;
}
