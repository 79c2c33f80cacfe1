import { and, eq, isNull, ne } from 'drizzle-orm';
import type { GreetingTimes } from '../../drills/index.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { note } from '../schema/index.ts';

/** Allowed ranges of a greeting: characters of a text; seconds and megabytes of a voice note or video. */
export const GREETING_LIMITS = { textLength: 500, seconds: 60, megabytes: 10 } as const;

/**
 * What a teacher says to the families: a text, or the chat service's id of a file, which only the bot it was sent to can send
 * on.
 */
export type GreetingWords =
  | { readonly kind: 'text'; readonly body: string; readonly botId: null }
  | { readonly kind: 'voice' | 'video'; readonly body: string; readonly botId: number };

/** A greeting in use, and when it goes out. One whose last day is over stays in use until it is replaced or removed. */
export interface Greeting extends GreetingTimes {
  readonly id: string;
  readonly words: GreetingWords;
  readonly createdAt: Date;
}

/** The class's greeting, for its teachers; null when it has none. */
export async function getGreeting(store: Store, scope: TeacherScope): Promise<Greeting | null> {
  await getClass(store, scope);
  return greetingOf(store, scope.classId);
}

/** The class's greeting, for the engine. */
export async function greetingOf(store: Store, classId: string): Promise<Greeting | null> {
  const [row] = await store.db
    .select()
    .from(note)
    .where(and(eq(note.classId, classId), isNull(note.removedAt), ne(note.body, '')));
  return row ? toGreeting(row) : null;
}

function toGreeting(row: typeof note.$inferSelect): Greeting {
  return {
    id: row.id,
    words: toWords(row),
    evenings: row.evenings,
    first: storedDay(row.firstDay),
    last: storedDay(row.lastDay),
    createdAt: row.createdAt,
  };
}

function toWords({ kind, body, botId }: typeof note.$inferSelect): GreetingWords {
  if (kind === 'text') return { kind, body, botId: null };
  if (botId === null) throw new TypeError('a stored recording does not say whose file it is');
  return { kind, body, botId };
}
