import { sql } from 'drizzle-orm';
import {
  boolean,
  check,
  date,
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  unique,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';
import { child, helper, instant, schoolClass, teacher } from './people.ts';

/** What a class practises. At most one plan is active and at most one is a draft. */
export const weekPlan = pgTable(
  'week_plan',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    status: text('status', { enum: ['draft', 'active', 'past'] }).notNull(),
    plan: jsonb('plan').$type<unknown>().notNull(),
    createdAt: instant('created_at').notNull(),
    activatedAt: instant('activated_at'),
  },
  (t) => [
    uniqueIndex('week_plan_one_active').on(t.classId).where(sql`${t.status} = 'active'`),
    uniqueIndex('week_plan_one_draft').on(t.classId).where(sql`${t.status} = 'draft'`),
    check('week_plan_status', sql`${t.status} in ('draft', 'active', 'past')`),
  ],
);

/** A class workbook: pages `firstPage` to `lastPage`, so many a day. The newest row that is not retired is in use. */
export const book = pgTable(
  'book',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    title: text('title').notNull(),
    firstPage: integer('first_page').notNull(),
    lastPage: integer('last_page').notNull(),
    pagesADay: integer('pages_a_day').notNull(),
    createdAt: instant('created_at').notNull(),
    retiredAt: instant('retired_at'),
  },
  (t) => [uniqueIndex('book_one_in_use').on(t.classId).where(sql`${t.retiredAt} is null`)],
);

/** One child's drill and page target for one school day. The drill is never altered once written. */
export const evening = pgTable(
  'evening',
  {
    id: uuid('id').primaryKey(),
    childId: uuid('child_id').notNull(),
    classId: uuid('class_id').notNull(),
    day: date('day', { mode: 'string' }).notNull(),
    planId: uuid('plan_id')
      .notNull()
      .references(() => weekPlan.id),
    seed: text('seed').notNull(),
    drill: jsonb('drill').$type<unknown>().notNull(),
    bookId: uuid('book_id').references(() => book.id),
    pageFrom: integer('page_from'),
    pageTo: integer('page_to'),
    createdAt: instant('created_at').notNull(),
    startedAt: instant('started_at'),
    declinedAt: instant('declined_at'),
    remindAt: instant('remind_at'),
  },
  (t) => [
    unique('evening_once_a_day').on(t.childId, t.day),
    foreignKey({ columns: [t.childId, t.classId], foreignColumns: [child.id, child.classId] }),
    index('evening_by_class_day').on(t.classId, t.day),
    index('evening_to_remind').on(t.remindAt).where(sql`${t.remindAt} is not null`),
  ],
);

/** Cards tapped as missed, before Done. One row while a part is being marked. */
export const marking = pgTable(
  'marking',
  {
    eveningId: uuid('evening_id')
      .notNull()
      .references(() => evening.id),
    part: integer('part').notNull(),
    missed: jsonb('missed').$type<number[]>().notNull(),
  },
  (t) => [primaryKey({ columns: [t.eveningId, t.part] })],
);

/** One card, right or not yet. Appended, never overwritten: a correction is a set of rows with the next revision. */
export const mark = pgTable(
  'mark',
  {
    id: uuid('id').primaryKey(),
    eveningId: uuid('evening_id')
      .notNull()
      .references(() => evening.id),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    part: integer('part').notNull(),
    card: integer('card').notNull(),
    fact: text('fact').notNull(),
    right: boolean('right').notNull(),
    revision: integer('revision').notNull(),
    helperId: uuid('helper_id')
      .notNull()
      .references(() => helper.id),
    markedAt: instant('marked_at').notNull(),
  },
  (t) => [
    unique('mark_once').on(t.eveningId, t.part, t.card, t.revision),
    index('mark_by_child').on(t.childId, t.fact),
  ],
);

/** How far a counting run got: `said` of `length` numbers. Appended, like a mark. */
export const runResult = pgTable(
  'run_result',
  {
    id: uuid('id').primaryKey(),
    eveningId: uuid('evening_id')
      .notNull()
      .references(() => evening.id),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    part: integer('part').notNull(),
    rung: text('rung').notNull(),
    start: integer('start').notNull(),
    step: integer('step').notNull(),
    length: integer('length').notNull(),
    said: integer('said').notNull(),
    revision: integer('revision').notNull(),
    helperId: uuid('helper_id')
      .notNull()
      .references(() => helper.id),
    markedAt: instant('marked_at').notNull(),
  },
  (t) => [
    unique('run_result_once').on(t.eveningId, t.part, t.revision),
    index('run_result_by_child').on(t.childId, t.rung),
  ],
);

/** A part's latest score, derived from marks or run results of the same revision. */
export const partScore = pgTable(
  'part_score',
  {
    eveningId: uuid('evening_id')
      .notNull()
      .references(() => evening.id),
    part: integer('part').notNull(),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    strand: text('strand').notNull(),
    rung: text('rung').notNull(),
    blueprint: text('blueprint').notNull(),
    right: integer('right').notNull(),
    asked: integer('asked').notNull(),
    revision: integer('revision').notNull(),
    markedAt: instant('marked_at').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.eveningId, t.part] }),
    index('part_score_by_blueprint').on(t.childId, t.blueprint),
  ],
);

/** Pages done on an evening, as the helper says. Appended: the row with the highest revision counts. */
export const pageLog = pgTable(
  'page_log',
  {
    id: uuid('id').primaryKey(),
    eveningId: uuid('evening_id')
      .notNull()
      .references(() => evening.id),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    bookId: uuid('book_id')
      .notNull()
      .references(() => book.id),
    pages: integer('pages').notNull(),
    revision: integer('revision').notNull(),
    loggedAt: instant('logged_at').notNull(),
  },
  (t) => [
    unique('page_log_once').on(t.eveningId, t.revision),
    index('page_log_by_child').on(t.childId, t.bookId),
  ],
);

/** What is known about a child and a fact, derived from marks. */
export const factMemory = pgTable(
  'fact_memory',
  {
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    fact: text('fact').notNull(),
    asked: integer('asked').notNull(),
    right: integer('right').notNull(),
    streak: integer('streak').notNull(),
    lastDay: date('last_day', { mode: 'string' }).notNull(),
    lastRight: boolean('last_right').notNull(),
  },
  (t) => [primaryKey({ columns: [t.childId, t.fact] })],
);

/** A teacher's own voice or text for the week. */
export const note = pgTable(
  'note',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    teacherId: uuid('teacher_id')
      .notNull()
      .references(() => teacher.id),
    kind: text('kind', { enum: ['text', 'voice', 'video'] }).notNull(),
    body: text('body').notNull(),
    firstDay: date('first_day', { mode: 'string' }).notNull(),
    lastDay: date('last_day', { mode: 'string' }).notNull(),
    createdAt: instant('created_at').notNull(),
  },
  (t) => [index('note_by_class').on(t.classId, t.lastDay)],
);
