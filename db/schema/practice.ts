import { sql } from 'drizzle-orm';
import {
  check,
  date,
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  text,
  unique,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';
import { child, instant, schoolClass, teacher } from './people.ts';

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
