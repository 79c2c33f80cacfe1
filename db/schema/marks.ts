import {
  boolean,
  date,
  doublePrecision,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  unique,
  uuid,
} from 'drizzle-orm/pg-core';
import { child, helper, instant } from './people.ts';
import { book, evening } from './practice.ts';

/**
 * Cards tapped as missed, before Done. One row while a part is being marked. Where cards are asked one by one, `card` is the
 * one that is asked now, those before it are answered, and `shown` says whether its answer is to be seen.
 */
export const marking = pgTable(
  'marking',
  {
    eveningId: uuid('evening_id')
      .notNull()
      .references(() => evening.id),
    part: integer('part').notNull(),
    missed: jsonb('missed').$type<number[]>().notNull(),
    card: integer('card'),
    shown: boolean('shown').notNull().default(false),
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
    /** How it was seen: `card`, marked by itself, or `unmissed`, where only missed cards were tapped. */
    way: text('way').notNull(),
    revision: integer('revision').notNull(),
    helperId: uuid('helper_id')
      .notNull()
      .references(() => helper.id),
    markedAt: instant('marked_at').notNull(),
  },
  (t) => [
    unique('mark_once').on(t.eveningId, t.part, t.card, t.revision),
    index('mark_by_child').on(t.childId, t.fact),
    index('mark_by_helper').on(t.helperId),
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
    index('run_result_by_helper').on(t.helperId),
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

/**
 * Where a child is in a workbook, as the teacher says: `page` is the next one to do, the one after the last says that the book
 * is done. Appended: the newest that was not taken back counts, until an evening that was planned after it says more.
 */
export const pagePlace = pgTable(
  'page_place',
  {
    id: uuid('id').primaryKey(),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    bookId: uuid('book_id')
      .notNull()
      .references(() => book.id),
    page: integer('page').notNull(),
    saidAt: instant('said_at').notNull(),
    takenBackAt: instant('taken_back_at'),
  },
  (t) => [index('page_place_by_child').on(t.childId, t.bookId)],
);

/**
 * What is known about a child and a fact, derived from marks and run results. `state` is the belief of the model named beside
 * it; a fact that only its relatives spoke of was never asked and has no last day.
 */
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
    lastDay: date('last_day', { mode: 'string' }),
    lastRight: boolean('last_right').notNull(),
    model: text('model').notNull(),
    state: doublePrecision('state').array().notNull(),
  },
  (t) => [primaryKey({ columns: [t.childId, t.fact] })],
);

/**
 * What the marks that were deleted after their school year said of a child and a fact: the memory that the marks which are
 * still there are folded upon. Columns as in {@link factMemory}.
 */
export const memoryBase = pgTable(
  'memory_base',
  {
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    fact: text('fact').notNull(),
    asked: integer('asked').notNull(),
    right: integer('right').notNull(),
    streak: integer('streak').notNull(),
    lastDay: date('last_day', { mode: 'string' }),
    lastRight: boolean('last_right').notNull(),
    model: text('model').notNull(),
    state: doublePrecision('state').array().notNull(),
  },
  (t) => [primaryKey({ columns: [t.childId, t.fact] })],
);
