import type { ChildPast, SchoolDay } from '../../drills/index.ts';
import type { ListedChild } from '../children/list-children.ts';
import { getChild } from '../children/own-child.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { childPast } from './child-past.ts';

/** A child of the class with its past. `heard` is the last day on which its family marked or put off an evening. */
export interface ChildWithPast {
  readonly child: ListedChild;
  readonly past: ChildPast;
  readonly heard: SchoolDay | null;
}

/**
 * One child's own past for a teacher of its class: the last `weeks` weeks up to `now`, or everything when that is null, and
 * nothing from before its first evening. Today counts as a school day only once it is practised. A child of another class or an
 * archived one is `not_found`. What was practised in another class before a move belongs to it.
 */
export async function readChildPast(
  store: Store,
  scope: TeacherScope,
  input: { number: number; weeks: number | null; now: Date },
): Promise<ChildWithPast> {
  const schoolClass = await getClass(store, scope);
  const child = await getChild(store, scope, input.number);
  const past = await childPast(store, schoolClass, {
    childId: child.id,
    weeks: input.weeks,
    now: input.now,
  });
  const heard = past.evenings.findLast(
    ({ status }) => status === 'practised' || status === 'not_today',
  );
  return { child, heard: heard?.day ?? null, past };
}
