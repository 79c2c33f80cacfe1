import { sql } from 'drizzle-orm';
import {
  bigint,
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
import { child, instant, schoolClass, teacher } from './people.ts';

/** Where a week plan comes from. */
export const PLAN_SOURCES = ['teacher', 'proposal', 'scheme'] as const;

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
    /** Who put it together: the teacher, the teacher from the digest's proposals, or the term's scheme. */
    source: text('source', { enum: PLAN_SOURCES }).notNull().default('teacher'),
    createdAt: instant('created_at').notNull(),
    activatedAt: instant('activated_at'),
  },
  (t) => [
    uniqueIndex('week_plan_one_active').on(t.classId).where(sql`${t.status} = 'active'`),
    uniqueIndex('week_plan_one_draft').on(t.classId).where(sql`${t.status} = 'draft'`),
    check('week_plan_status', sql`${t.status} in ('draft', 'active', 'past')`),
  ],
);

/**
 * A class's term, week by week. Its first week is the one of `firstDay`; weeks without school days are passed over. At most
 * one is in use.
 */
export const scheme = pgTable(
  'scheme',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    firstDay: date('first_day', { mode: 'string' }).notNull(),
    createdAt: instant('created_at').notNull(),
    /** Since when its weeks are as they are: a change counts from the next evening. */
    changedAt: instant('changed_at').notNull(),
    retiredAt: instant('retired_at'),
  },
  (t) => [uniqueIndex('scheme_one_in_use').on(t.classId).where(sql`${t.retiredAt} is null`)],
);

/** What a term's scheme has for one of its weeks, from 1. */
export const schemeWeek = pgTable(
  'scheme_week',
  {
    schemeId: uuid('scheme_id')
      .notNull()
      .references(() => scheme.id),
    week: integer('week').notNull(),
    plan: jsonb('plan').$type<unknown>().notNull(),
  },
  (t) => [primaryKey({ columns: [t.schemeId, t.week] })],
);

/**
 * A workbook: pages `firstPage` to `lastPage`, so many a day, for the whole class or for one child. A child works through its
 * own books that are not retired, then the class's, by `place`: the first one not finished is in use.
 */
export const book = pgTable(
  'book',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    /** Null for a book of the whole class. */
    childId: uuid('child_id'),
    place: integer('place').notNull().default(1),
    title: text('title').notNull(),
    firstPage: integer('first_page').notNull(),
    lastPage: integer('last_page').notNull(),
    pagesADay: integer('pages_a_day').notNull(),
    createdAt: instant('created_at').notNull(),
    retiredAt: instant('retired_at'),
  },
  (t) => [
    // A child that moves to another class takes its own books along; a book of the class has no child and stays.
    foreignKey({
      columns: [t.childId, t.classId],
      foreignColumns: [child.id, child.classId],
    }).onUpdate('cascade'),
    index('book_by_class').on(t.classId).where(sql`${t.retiredAt} is null`),
  ],
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
    /** Since when the family has stopped for the day; null again once it goes on after all. */
    stoppedAt: instant('stopped_at'),
    remindAt: instant('remind_at'),
    /** Since when its scores are all that is kept: the marks were deleted after their school year. */
    summarisedAt: instant('summarised_at'),
  },
  (t) => [
    unique('evening_once_a_day').on(t.childId, t.day),
    // A child that moves to another class takes its evenings along.
    foreignKey({
      columns: [t.childId, t.classId],
      foreignColumns: [child.id, child.classId],
    }).onUpdate('cascade'),
    index('evening_by_class_day').on(t.classId, t.day),
    index('evening_to_remind').on(t.remindAt).where(sql`${t.remindAt} is not null`),
    index('evening_to_summarise').on(t.day, t.childId).where(sql`${t.summarisedAt} is null`),
  ],
);

/**
 * A teacher's own greeting to the families, sent with the week's first evening or with every one, from `firstDay` to
 * `lastDay`. `body` is a text, or the chat service's id of a file that was sent to bot `botId`, which is sent on by reference.
 */
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
    botId: bigint('bot_id', { mode: 'number' }),
    evenings: text('evenings', { enum: ['first', 'every'] })
      .notNull()
      .default('first'),
    firstDay: date('first_day', { mode: 'string' }).notNull(),
    lastDay: date('last_day', { mode: 'string' }).notNull(),
    createdAt: instant('created_at').notNull(),
    removedAt: instant('removed_at'),
  },
  (t) => [
    index('note_by_class').on(t.classId, t.lastDay),
    uniqueIndex('note_one_in_use').on(t.classId).where(sql`${t.removedAt} is null`),
    index('note_over').on(t.lastDay).where(sql`${t.body} <> ''`),
    index('note_removed').on(t.removedAt).where(sql`${t.body} <> ''`),
  ],
);
