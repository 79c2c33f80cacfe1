import { z } from 'zod';

const day = z.iso.date();
const at = z.iso.datetime();

const drillMarks = {
  /** Marked cards; a correction is a further revision, and the highest of a part counts. */
  marks: z.array(
    z.strictObject({
      part: z.int(),
      card: z.int(),
      fact: z.string(),
      right: z.boolean(),
      way: z.string(),
      revision: z.int(),
      at,
    }),
  ),
  /** How far each counting run got: `said` of `length` numbers. */
  runs: z.array(
    z.strictObject({
      part: z.int(),
      rung: z.string(),
      start: z.int(),
      step: z.int(),
      length: z.int(),
      said: z.int(),
      revision: z.int(),
      at,
    }),
  ),
  /** The score of each part that counts. */
  scores: z.array(
    z.strictObject({ part: z.int(), rung: z.string(), right: z.int(), asked: z.int(), at }),
  ),
  pagesDone: z.array(z.strictObject({ pages: z.int(), revision: z.int(), at })),
};

/**
 * Everything that is kept about one child, as one of its helpers may have it: days are `YYYY-MM-DD` in the class's zone,
 * instants ISO 8601 in UTC. Other helpers and other children are not in it; what another helper marked is, without who it was.
 * The shape of a version never changes.
 */
export const heldData = z.strictObject({
  format: z.literal('suppersums-child'),
  version: z.literal(1),
  madeAt: at,
  child: z.strictObject({
    nickname: z.string(),
    number: z.int(),
    classTitle: z.string(),
    zone: z.string(),
    eveningTime: z.string(),
    addedAt: at,
    archivedAt: at.nullable(),
    erasingSince: at.nullable(),
    /** How its drills differ from the class's, by the teacher's choice. */
    adjustment: z
      .strictObject({ steps: z.int(), fewer: z.boolean(), untimed: z.boolean(), since: at })
      .nullable(),
    /** How often the drill comes, and came: each time somebody said something, or nobody had answered for long. */
    pace: z.array(
      z.strictObject({
        day,
        rate: z.string(),
        announcedFrom: day.nullable(),
        keptByTeacher: z.boolean(),
        pausedUntil: day.nullable(),
        /** ISO 8601 weekdays, 1 is Monday; null for every school day. */
        weekdays: z.array(z.int()).nullable(),
      }),
    ),
  }),
  /** The helper who asked: never another one. */
  you: z.strictObject({
    chatId: z.int(),
    /** Which language the bot speaks with you. */
    language: z.string(),
    way: z.string(),
    /** Switches of how things are shown and sent. */
    display: z.strictObject({
      bigger: z.boolean(),
      noTiming: z.boolean(),
      quiet: z.boolean(),
      clockAid: z.boolean(),
      monthly: z.boolean(),
    }),
    /** Who you are to the child, as you said. */
    relation: z.string().nullable(),
    /** The latest month (`YYYY-MM`) whose picture you were given. */
    pictureMonth: z.string().nullable(),
    /** About how many bytes were sent to you in a month, whichever child it was about. */
    dataUsed: z.array(z.strictObject({ month: z.string(), bytes: z.int() })),
    joinedAt: at,
    agreements: z.array(
      z.strictObject({
        textVersion: z.string(),
        language: z.string(),
        agreedAt: at,
        withdrawnAt: at.nullable(),
      }),
    ),
    /** What the bot sent by itself about this child, and how that ended. */
    messages: z.array(
      z.strictObject({ kind: z.string(), day, status: z.string(), sentAt: at.nullable() }),
    ),
  }),
  /** Join links: `shared` ones were passed on by a helper. */
  slips: z.array(
    z.strictObject({
      issuedAt: at,
      expiresAt: at,
      usesLeft: z.int(),
      usedAt: at.nullable(),
      shared: z.boolean(),
    }),
  ),
  /** The child's own workbooks; those of the class are not about the child. */
  books: z.array(
    z.strictObject({
      title: z.string(),
      firstPage: z.int(),
      lastPage: z.int(),
      pagesADay: z.int(),
    }),
  ),
  /** Where the child is in a workbook, as the teacher said. */
  places: z.array(z.strictObject({ book: z.string(), page: z.int(), saidAt: at })),
  evenings: z.array(
    z.strictObject({
      day,
      /** The drill as it was composed: parts, cards, seconds. */
      drill: z.unknown(),
      pages: z.strictObject({ from: z.int(), to: z.int() }).nullable(),
      startedAt: at.nullable(),
      declinedAt: at.nullable(),
      stoppedAt: at.nullable(),
      ...drillMarks,
    }),
  ),
  /** What follows from the marks for each fact, and `state`, the belief of the model that chooses cards. */
  memory: z.array(
    z.strictObject({
      fact: z.string(),
      asked: z.int(),
      right: z.int(),
      streak: z.int(),
      lastDay: day.nullable(),
      lastRight: z.boolean(),
      model: z.string(),
      state: z.array(z.number()),
    }),
  ),
});

/** See {@link heldData}. */
export type HeldData = z.infer<typeof heldData>;
