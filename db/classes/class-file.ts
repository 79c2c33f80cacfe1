import { z } from 'zod';
import {
  LANGUAGES,
  type Language,
  PROFILES,
  parseSchoolDay,
  parseTimeOfDay,
  WEEKDAYS,
} from '../../drills/index.ts';
import { planJson } from '../plans/plan-json.ts';
import { childRecord } from '../rights/read-child-record.ts';

const day = z.string().transform((text, context) => {
  const parsed = parseSchoolDay(text);
  if (parsed) return parsed;
  context.addIssue({ code: 'custom', message: `“${text}” is no date like 2026-09-14` });
  return z.NEVER;
});

const time = z.string().transform((text, context) => {
  const parsed = parseTimeOfDay(text);
  if (parsed) return parsed;
  context.addIssue({ code: 'custom', message: `“${text}” is no time of day like 17:30` });
  return z.NEVER;
});

const weekday = z.literal(WEEKDAYS, 'is a weekday from 1, Monday, to 7, Sunday');
const languages = Object.keys(LANGUAGES) as Language[];
const profiles = PROFILES.map(({ id }) => id);

/** A class's settings in a file. Only the title and the zone have to be there; the rest is what most classes start from. */
const settings = z.object({
  title: z.string(),
  zone: z.string(),
  weekdays: z.array(weekday).default([1, 2, 3, 4, 5]),
  eveningTime: time.prefault('17:30'),
  nudgeTime: time.prefault('19:00'),
  digestWeekday: weekday.default(5),
  digestTime: time.prefault('20:00'),
  language: z.enum(languages, `is one of ${languages.join(', ')}`).default('en'),
  curriculum: z.enum(profiles, `is one of ${profiles.join(', ')}`).default('own'),
  grade: z.string().nullable().default(null),
  country: z.string().nullable().default(null),
  siblingAge: z.int().nullable().default(null),
});

const bookOfClass = z.object({
  title: z.string(),
  firstPage: z.int(),
  lastPage: z.int(),
  pagesADay: z.int(),
});

const common = {
  format: z.literal('suppersums-class', 'is not “suppersums-class”: this is no class file'),
  version: z.literal(1, 'is not 1: this release reads version 1 only'),
  plan: planJson.nullable().default(null),
  books: z.array(bookOfClass).default([]),
  breaks: z.array(z.object({ first: day, last: day, title: z.string() })).default([]),
};

/**
 * A class in a file, as it is taken in: written by hand, or by {@link exportClass}. More than this may stand in the file; it is
 * passed over.
 */
export const classFile = z.object({
  ...common,
  class: settings,
  children: z
    .array(
      z.union([
        z.string().transform((nickname) => ({ nickname, archivedAt: null })),
        z.object({ nickname: z.string(), archivedAt: z.iso.datetime().nullable().default(null) }),
      ]),
    )
    .default([]),
});

/** See {@link classFile}. */
export type ClassFile = z.infer<typeof classFile>;

/** Everything that is kept about one class and its children, as it is given out. The shape of a version never changes. */
export const classExport = z.strictObject({
  ...common,
  madeAt: z.iso.datetime(),
  classId: z.uuid(),
  class: settings.extend({ archivedAt: z.iso.datetime().nullable() }),
  /** What each teacher is to the class; nobody's name is kept. */
  teachers: z.array(z.object({ role: z.string(), since: z.iso.datetime() })),
  /** What is being put together and not in use. */
  draft: planJson.nullable(),
  term: z.object({ firstDay: day, weeks: z.array(planJson) }).nullable(),
  children: z.array(
    z.object({
      childId: z.uuid(),
      number: z.int(),
      nickname: z.string(),
      archivedAt: z.iso.datetime().nullable(),
    }),
  ),
  /** All about each child, its evenings and marks and what belongs to its family. */
  records: z.array(childRecord),
});

/** See {@link classExport}. */
export type ClassExport = z.infer<typeof classExport>;
