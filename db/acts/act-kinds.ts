import { z } from 'zod';
import { MAX_CHILDREN } from '../children/class-size.ts';
import { MOST_BREAKS_AT_ONCE } from '../classes/class-limits.ts';
import { planJson } from '../plans/plan-json.ts';
import { PLAN_SOURCES } from '../schema/index.ts';

/**
 * Everything a teacher can do that can be taken back, with what is kept to take it back. A stored kind never changes its
 * meaning. What is about one child names it `childId` and keeps no nickname: that is looked up while the child is there.
 */
export const ACT_KINDS = {
  /** The greeting that came to its end, and the one that took its place; null when none did. */
  greetingEnded: z.object({ noteId: z.uuid(), nextId: z.uuid().nullable() }),
  childrenAdded: z.object({ childIds: z.array(z.uuid()).min(1).max(MAX_CHILDREN) }),
  childArchived: z.object({ childId: z.uuid() }),
  childMoved: z.object({
    childId: z.uuid(),
    /** In the class it left, and in the class it came to: neither number is ever given to another child. */
    number: z.int(),
    toNumber: z.int(),
    toClassId: z.uuid(),
  }),
  proposalAccepted: z.object({ planId: z.uuid(), madeFrom: z.uuid() }),
  /** A draft put in use in place of another plan, or of none. */
  planUsed: z.object({ planId: z.uuid(), madeFrom: z.uuid().nullable() }),
  bookChanged: z.object({
    bookId: z.uuid(),
    title: z.string(),
    firstPage: z.int(),
    lastPage: z.int(),
    pagesADay: z.int(),
  }),
  bookPutAway: z.object({ bookId: z.uuid(), title: z.string() }),
  /** With `childId` of one child, without it of several. */
  pagesSet: z.object({
    bookId: z.uuid(),
    title: z.string(),
    placeIds: z.array(z.uuid()).min(1).max(MAX_CHILDREN),
    childId: z.uuid().exactOptional(),
  }),
  /** A draft of the week plan that gave way, or was dropped. */
  draftReplaced: z.object({ plan: planJson, source: z.enum(PLAN_SOURCES) }),
  /** A term was put in use in place of another, or of none; or one was ended. */
  termChanged: z.object({ started: z.uuid().nullable(), ended: z.uuid().nullable() }),
  /** Breaks typed in or taken over from the public holidays together. */
  breaksAdded: z.object({ breakIds: z.array(z.uuid()).min(1).max(MOST_BREAKS_AT_ONCE) }),
  breakRemoved: z.object({ first: z.iso.date(), last: z.iso.date(), title: z.string() }),
  classArchived: z.object({}),
  /** A co-teacher taken out of the class, and since when they taught it. */
  teacherRemoved: z.object({ removed: z.uuid(), since: z.iso.datetime() }),
  termWeekRemoved: z.object({ schemeId: z.uuid(), week: z.int(), plan: planJson }),
} as const satisfies Record<string, z.ZodType>;

/** One of {@link ACT_KINDS}. */
export type ActKind = keyof typeof ACT_KINDS;

/** What is kept to take back an act of a kind. */
export type ActBefore<K extends ActKind> = z.infer<(typeof ACT_KINDS)[K]>;

/** An act of a kind as its inverse sees it: whose class, who did it, and who takes it back. */
export interface ActToUndo<K extends ActKind> {
  readonly classId: string;
  readonly teacherId: string;
  /** Teaches the class now; not always the one who did it. */
  readonly by: string;
  readonly before: ActBefore<K>;
}

/** A kind with what was kept, as one value that a `switch` can tell apart. */
export type StoredAct = {
  [K in ActKind]: { readonly kind: K; readonly before: ActBefore<K> };
}[ActKind];

/** Reads a stored act. Null for one that an earlier release kept and this one does not know. */
export function storedAct(row: { kind: string; before: unknown }): StoredAct | null {
  const schema = Object.entries(ACT_KINDS).find(([kind]) => kind === row.kind)?.[1];
  const parsed = schema?.safeParse(row.before);
  // The table that the type is derived from has just checked the value.
  return parsed?.success ? ({ kind: row.kind, before: parsed.data } as StoredAct) : null;
}
