import { sql } from 'drizzle-orm';
import {
  type AnyPgColumn,
  bigint,
  boolean,
  date,
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  timestamp,
  unique,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';

/** An instant, stored with its zone. */
export const instant = (name: string) => timestamp(name, { withTimezone: true, mode: 'date' });

/** Who answers for a class: its `lead` alone invites, removes and hands over; a `co` teacher does everything else. */
export const TEACHER_ROLES = ['lead', 'co'] as const;

/** A teacher's chat account. */
export const teacher = pgTable('teacher', {
  id: uuid('id').primaryKey(),
  chatId: bigint('chat_id', { mode: 'number' }).notNull().unique(),
  /** Which language the bot speaks with this teacher: a `Language` of drills. */
  language: text('language').notNull().default('en'),
  createdAt: instant('created_at').notNull(),
});

/**
 * A one-time code by which somebody becomes a teacher. Only the hash is kept. From the operator it has no class; from a
 * teacher (`issuedBy`) it makes whoever takes it a teacher of that class as well.
 */
export const teacherInvite = pgTable('teacher_invite', {
  id: uuid('id').primaryKey(),
  codeHash: text('code_hash').notNull().unique(),
  classId: uuid('class_id').references((): AnyPgColumn => schoolClass.id),
  issuedBy: uuid('issued_by').references(() => teacher.id),
  /** What the taker becomes in the class: a co-teacher, or its lead in place of whoever issued the code. */
  role: text('role', { enum: TEACHER_ROLES }),
  revokedAt: instant('revoked_at'),
  expiresAt: instant('expires_at').notNull(),
  usedBy: uuid('used_by').references(() => teacher.id),
  usedAt: instant('used_at'),
  createdAt: instant('created_at').notNull(),
});

/** A class and its week. Times are `HH:MM` in `zone`; weekdays are ISO 8601, 1 = Monday. */
export const schoolClass = pgTable(
  'class',
  {
    id: uuid('id').primaryKey(),
    /** The bot that writes to the class's families and teachers: the one in whose chat it was made, until the operator moves it. */
    botId: bigint('bot_id', { mode: 'number' }).notNull().default(0),
    title: text('title').notNull(),
    zone: text('zone').notNull(),
    weekdays: jsonb('weekdays').$type<number[]>().notNull(),
    eveningTime: text('evening_time').notNull(),
    nudgeTime: text('nudge_time').notNull(),
    digestWeekday: integer('digest_weekday').notNull(),
    digestTime: text('digest_time').notNull(),
    /** The language of instruction: cards, number words and clocks are worded in it. A `Language` of drills. */
    language: text('language').notNull().default('en'),
    /** By which curriculum steps are shown as usual: a profile of drills/curriculum, or `own`; and its grade, if it has any. */
    curriculum: text('curriculum').notNull().default('own'),
    grade: text('grade'),
    /** Whose public holidays are offered: a country, or a country and its region, as in ISO 3166 (`ZA`, `GB-SCT`). */
    country: text('country'),
    /** Since when the school days, breaks and evening time are as they are: a change counts from the next evening. */
    timesSince: instant('times_since').notNull(),
    /** Since when the digest's day and time are as they are. */
    digestSince: instant('digest_since').notNull(),
    createdAt: instant('created_at').notNull(),
    archivedAt: instant('archived_at'),
    /** From which age on a brother or sister may help: the school's choice. */
    siblingAge: integer('sibling_age').notNull().default(12),
    /** The last day on which it was looked at how often the drill comes to each family. */
    paceDay: date('pace_day', { mode: 'string' }),
    /** The highest number that was ever given to a child whose rows are gone. */
    topNumber: integer('top_number').notNull().default(0),
    /** When the planner next looks at the class; brought forward by whatever changes something that tonight depends on. */
    lookAt: instant('look_at').notNull().default(new Date(0)),
    /** What the clock showed when the planner last looked. */
    lookedAt: instant('looked_at').notNull().default(new Date(0)),
  },
  (t) => [
    index('class_to_look').on(t.lookAt).where(sql`${t.archivedAt} is null`),
    index('class_looked').on(t.lookedAt).where(sql`${t.archivedAt} is null`),
    index('class_archived').on(t.archivedAt).where(sql`${t.archivedAt} is not null`),
  ],
);

/** Who teaches which class. Every teacher-side read and write is scoped through this table. */
export const classTeacher = pgTable(
  'class_teacher',
  {
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    teacherId: uuid('teacher_id')
      .notNull()
      .references(() => teacher.id),
    role: text('role', { enum: TEACHER_ROLES }).notNull().default('lead'),
    createdAt: instant('created_at').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.classId, t.teacherId] }),
    index('class_teacher_by_teacher').on(t.teacherId),
  ],
);

/** School days without practice, first and last day included. */
export const classBreak = pgTable(
  'break',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    firstDay: date('first_day', { mode: 'string' }).notNull(),
    lastDay: date('last_day', { mode: 'string' }).notNull(),
    title: text('title').notNull(),
    createdAt: instant('created_at').notNull(),
  },
  (t) => [index('break_by_class').on(t.classId, t.lastDay)],
);

/** A child: a nickname and a roster number, nothing more. `eveningTime` overrides the class's for this family. */
export const child = pgTable(
  'child',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    number: integer('number').notNull(),
    nickname: text('nickname').notNull(),
    eveningTime: text('evening_time'),
    timeSince: instant('time_since'),
    createdAt: instant('created_at').notNull(),
    archivedAt: instant('archived_at'),
    /** Since when the family wishes it erased, and which helper said so. It is archived too; a day later its rows go. */
    erasingSince: instant('erasing_since'),
    erasingBy: uuid('erasing_by'),
  },
  (t) => [
    unique('child_number_in_class').on(t.classId, t.number),
    unique('child_with_class').on(t.id, t.classId),
    uniqueIndex('child_nickname_in_class')
      .on(t.classId, sql`lower(${t.nickname})`)
      .where(sql`${t.archivedAt} is null`),
    index('child_archived').on(t.archivedAt).where(sql`${t.archivedAt} is not null`),
    index('child_erasing').on(t.erasingSince).where(sql`${t.erasingSince} is not null`),
  ],
);

/** The adult or older sibling who marks. */
export const helper = pgTable('helper', {
  id: uuid('id').primaryKey(),
  chatId: bigint('chat_id', { mode: 'number' }).notNull().unique(),
  /** Which language the bot speaks with this helper: a `Language` of drills. */
  language: text('language').notNull().default('en'),
  /** How the evening is shown to this helper: a `Way` of db/helpers. */
  way: text('way').notNull().default('clip'),
  /** How else it is shown and sent: see `Display` of db/helpers. */
  bigger: boolean('bigger').notNull().default(false),
  noTiming: boolean('no_timing').notNull().default(false),
  quiet: boolean('quiet').notNull().default(false),
  clockAid: boolean('clock_aid').notNull().default(false),
  monthly: boolean('monthly').notNull().default(true),
  createdAt: instant('created_at').notNull(),
});

/** Which helper sits beside which child. Every family-side read and write is scoped through this table. */
export const helperChild = pgTable(
  'helper_child',
  {
    helperId: uuid('helper_id')
      .notNull()
      .references(() => helper.id),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    joinedAt: instant('joined_at').notNull(),
    leftAt: instant('left_at'),
    /** Who the helper is to the child: a `Relation` of db/helpers, null while unsaid. Shown to nobody but the family. */
    relation: text('relation'),
    /** The latest month (`YYYY-MM`) whose picture of the child's own progress the helper was given. */
    pictureMonth: text('picture_month'),
  },
  (t) => [
    primaryKey({ columns: [t.helperId, t.childId] }),
    index('helper_child_by_child').on(t.childId),
    index('helper_child_left').on(t.leftAt).where(sql`${t.leftAt} is not null`),
  ],
);

/** A join code for one child, as printed on a slip or passed on by a helper. Only the hash is kept. */
export const slip = pgTable(
  'slip',
  {
    id: uuid('id').primaryKey(),
    childId: uuid('child_id').notNull(),
    classId: uuid('class_id').notNull(),
    codeHash: text('code_hash').notNull().unique(),
    usesLeft: integer('uses_left').notNull(),
    expiresAt: instant('expires_at').notNull(),
    revokedAt: instant('revoked_at'),
    createdAt: instant('created_at').notNull(),
    /** The helper who passes it on to another adult; null for a slip of the class's teacher. */
    sharedBy: uuid('shared_by').references(() => helper.id),
    usedAt: instant('used_at'),
  },
  (t) => [
    // A child that moves to another class takes its slips along.
    foreignKey({
      columns: [t.childId, t.classId],
      foreignColumns: [child.id, child.classId],
    }).onUpdate('cascade'),
    index('slip_by_child').on(t.childId),
    index('slip_old').on(t.expiresAt),
    index('slip_revoked').on(t.revokedAt).where(sql`${t.revokedAt} is not null`),
    index('slip_by_sharer').on(t.sharedBy).where(sql`${t.sharedBy} is not null`),
  ],
);

/** Proof of a family's agreement: who, to which text, in which language, when, on what evidence, and when it was withdrawn. */
export const consent = pgTable(
  'consent',
  {
    id: uuid('id').primaryKey(),
    helperId: uuid('helper_id')
      .notNull()
      .references(() => helper.id),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    textVersion: text('text_version').notNull(),
    language: text('language').notNull(),
    evidence: jsonb('evidence').$type<{ messageId: number }>().notNull(),
    agreedAt: instant('agreed_at').notNull(),
    withdrawnAt: instant('withdrawn_at'),
  },
  (t) => [index('consent_by_helper').on(t.helperId, t.childId)],
);

/** What was deleted and when. Never a name. */
export const erasure = pgTable(
  'erasure',
  {
    id: uuid('id').primaryKey(),
    subjectKind: text('subject_kind').notNull(),
    subjectId: uuid('subject_id').notNull(),
    erasedAt: instant('erased_at').notNull(),
  },
  (t) => [index('erasure_old').on(t.erasedAt)],
);

/**
 * Something a teacher did that can be taken back for a day: what it was (`kind`), to what, and what is needed to undo it
 * (`before`). Written in the same transaction as the change itself.
 */
export const act = pgTable(
  'act',
  {
    id: uuid('id').primaryKey(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    teacherId: uuid('teacher_id')
      .notNull()
      .references(() => teacher.id),
    kind: text('kind').notNull(),
    before: jsonb('before').$type<unknown>().notNull(),
    createdAt: instant('created_at').notNull(),
    undoneAt: instant('undone_at'),
  },
  (t) => [index('act_by_teacher').on(t.teacherId, t.createdAt), index('act_old').on(t.createdAt)],
);

/**
 * How a child's drill differs from the class's plan: `steps` is -1 for an easier step of each strand, 1 for a harder one;
 * `fewer` means fewer cards; `untimed` means no clip and no seconds. Only the family and the teacher see it.
 */
export const adjustment = pgTable('adjustment', {
  childId: uuid('child_id')
    .primaryKey()
    .references(() => child.id),
  steps: integer('steps').notNull().default(0),
  fewer: boolean('fewer').notNull().default(false),
  untimed: boolean('untimed').notNull().default(false),
  since: instant('since').notNull(),
});

/**
 * How often the drill comes to a child's family: a `FamilyPace` of drills/pace. Appended: the row with the highest `step` counts,
 * and of a past day the one with the highest of its day and before.
 */
export const pace = pgTable(
  'pace',
  {
    id: uuid('id').primaryKey(),
    childId: uuid('child_id')
      .notNull()
      .references(() => child.id),
    step: integer('step').notNull(),
    day: date('day', { mode: 'string' }).notNull(),
    at: instant('at').notNull(),
    /** When the family or a teacher last said something: that counts from the next evening. */
    saidAt: instant('said_at'),
    rate: text('rate').notNull(),
    rateFrom: date('rate_from', { mode: 'string' }),
    announcedOn: date('announced_on', { mode: 'string' }),
    announcedFrom: date('announced_from', { mode: 'string' }),
    kept: boolean('kept').notNull(),
    heard: date('heard', { mode: 'string' }),
    pausedUntil: date('paused_until', { mode: 'string' }),
    days: jsonb('days').$type<number[]>(),
  },
  (t) => [unique('pace_once').on(t.childId, t.step)],
);
