import { and, asc, desc, eq, inArray, isNull, lt } from 'drizzle-orm';
import { blueprintOf, type SchoolDay } from '../../drills/index.ts';
import { nextPages } from '../books/next-pages.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { storedLanguage } from '../languages/stored-language.ts';
import { pacesOf } from '../pace/read-pace.ts';
import {
  book,
  child,
  evening,
  helperChild,
  mark,
  marking,
  pageLog,
  partScore,
  schoolClass,
} from '../schema/index.ts';
import { storedDrill } from './drill-json.ts';
import type { EveningPages, EveningView, PartResult } from './evening-view.ts';
import { isOwn } from './own-evening.ts';

/** Names an evening and the helper who asks. Every family-side verb takes it. */
export interface HelperScope {
  readonly helperId: string;
  readonly eveningId: string;
}

/** The evening, if it belongs to a child this helper sits beside now; `not_found` otherwise. */
export async function getEvening(store: Store, scope: HelperScope): Promise<EveningView> {
  const [own] = await store.db
    .select({ id: evening.id })
    .from(evening)
    .innerJoin(helperChild, eq(helperChild.childId, evening.childId))
    .where(isOwn(scope));
  if (!own) throw new AppError('not_found', 'evening');
  return readEvening(store, own.id);
}

/** The evening of a child on a day; null when there is none or this helper may not see it. */
export async function findEvening(
  store: Store,
  input: { helperId: string; childId: string; day: SchoolDay },
): Promise<EveningView | null> {
  const [row] = await store.db
    .select({ id: evening.id })
    .from(evening)
    .innerJoin(helperChild, eq(helperChild.childId, evening.childId))
    .where(
      and(
        eq(evening.childId, input.childId),
        eq(evening.day, input.day),
        eq(helperChild.helperId, input.helperId),
        isNull(helperChild.leftAt),
      ),
    );
  return row ? readEvening(store, row.id) : null;
}

/** Any evening, for the engine's own messages. */
export async function readEvening(store: Store, eveningId: string): Promise<EveningView> {
  const [row] = await store.db
    .select({
      evening,
      nickname: child.nickname,
      zone: schoolClass.zone,
      language: schoolClass.language,
      book,
    })
    .from(evening)
    .innerJoin(child, eq(child.id, evening.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, evening.classId))
    .leftJoin(book, eq(book.id, evening.bookId))
    .where(eq(evening.id, eveningId));
  if (!row) throw new AppError('not_found', 'evening');
  const drill = storedDrill(row.evening.drill);
  const pages = await readPages(store, eveningId);
  return {
    id: row.evening.id,
    childId: row.evening.childId,
    classId: row.evening.classId,
    nickname: row.nickname,
    zone: row.zone,
    language: storedLanguage(row.language),
    day: storedDay(row.evening.day),
    drill,
    book: row.book ? await toPages(store, row.evening, row.book, pages) : null,
    started: row.evening.startedAt !== null,
    declined: row.evening.declinedAt !== null,
    stopped: row.evening.stoppedAt !== null,
    remindAt: row.evening.remindAt,
    ...(await readFewer(store, row.evening)),
    results: await readResults(store, row.evening, drill.parts.map(blueprintOf)),
    marking: await readMarking(store, eveningId),
    pages,
  };
}

async function toPages(
  store: Store,
  { childId, classId, pageFrom, pageTo }: typeof evening.$inferSelect,
  { id: bookId, title, lastPage }: typeof book.$inferSelect,
  done: number | null,
): Promise<EveningPages | null> {
  if (pageFrom === null || pageTo === null) return null;
  const target = { title, from: pageFrom, to: pageTo, last: lastPage };
  if (done === null || pageFrom + done <= lastPage) return { ...target, next: null };
  const next = await nextPages(store, { childId, classId });
  // The teacher may have sent the child back into the same book since.
  if (!next || next.book.id === bookId) return { ...target, next: null };
  return { ...target, next: { title: next.book.title, from: next.from } };
}

async function readFewer(
  store: Store,
  { childId, startedAt }: typeof evening.$inferSelect,
): Promise<Pick<EveningView, 'fewer'>> {
  if (startedAt) return {};
  const { rate } = (await pacesOf(store, [childId]))(childId).pace;
  return rate === 'daily' ? {} : { fewer: rate };
}

async function readResults(
  store: Store,
  row: typeof evening.$inferSelect,
  blueprints: readonly string[],
): Promise<(PartResult | null)[]> {
  const scores = await store.db.select().from(partScore).where(eq(partScore.eveningId, row.id));
  const missed = await store.db
    .select({ part: mark.part, card: mark.card, revision: mark.revision })
    .from(mark)
    .where(and(eq(mark.eveningId, row.id), eq(mark.right, false)))
    .orderBy(asc(mark.card));
  const earlier = await readEarlier(store, row, blueprints);
  return blueprints.map((blueprint, part) => {
    const score = scores.find((candidate) => candidate.part === part);
    if (!score) return null;
    return {
      right: score.right,
      asked: score.asked,
      revision: score.revision,
      missed: missed
        .filter((m) => m.part === part && m.revision === score.revision)
        .map((m) => m.card),
      earlier: earlier.filter((e) => e.blueprint === blueprint).map((e) => e.right),
    };
  });
}

async function readEarlier(
  store: Store,
  row: typeof evening.$inferSelect,
  blueprints: readonly string[],
): Promise<{ blueprint: string; right: number }[]> {
  if (blueprints.length === 0) return [];
  return store.db
    .select({ blueprint: partScore.blueprint, right: partScore.right })
    .from(partScore)
    .innerJoin(evening, eq(evening.id, partScore.eveningId))
    .where(
      and(
        eq(partScore.childId, row.childId),
        inArray(partScore.blueprint, [...blueprints]),
        lt(evening.day, row.day),
      ),
    );
}

async function readMarking(store: Store, eveningId: string): Promise<EveningView['marking']> {
  const [row] = await store.db
    .select({
      part: marking.part,
      missed: marking.missed,
      card: marking.card,
      shown: marking.shown,
    })
    .from(marking)
    .where(eq(marking.eveningId, eveningId));
  if (!row) return null;
  const { card, shown, ...tapped } = row;
  return card === null ? tapped : { ...tapped, single: { card, shown } };
}

async function readPages(store: Store, eveningId: string): Promise<number | null> {
  const [row] = await store.db
    .select({ pages: pageLog.pages })
    .from(pageLog)
    .where(eq(pageLog.eveningId, eveningId))
    .orderBy(desc(pageLog.revision))
    .limit(1);
  return row?.pages ?? null;
}
