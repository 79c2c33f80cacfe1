import { and, asc, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { listDataUsed } from '../helpers/data-used.ts';
import {
  adjustment,
  book,
  child,
  consent,
  factMemory,
  helper,
  helperChild,
  ledger,
  pace,
  pagePlace,
  schoolClass,
  slip,
} from '../schema/index.ts';
import { type HeldData, heldData } from './held-data.ts';
import { readHeldEvenings } from './read-held-evenings.ts';

/**
 * Reads everything kept about a child for one of its helpers, archived and being erased or not. A child that is not the
 * helper's own is `not_found`.
 */
export async function readHeldData(
  store: Store,
  { helperId, childId, now }: { helperId: string; childId: string; now: Date },
): Promise<HeldData> {
  return inTransaction(store, async (inner) => {
    const own = await ownRow(inner, helperId, childId);
    const data: HeldData = {
      format: 'suppersums-child',
      version: 1,
      madeAt: now.toISOString(),
      ...(await readAboutChild(inner, own)),
      you: await readAboutHelper(inner, own, childId),
    };
    return heldData.parse(data);
  });
}

async function ownRow({ db }: Store, helperId: string, childId: string) {
  const [row] = await db
    .select({ tie: helperChild, helper, child, schoolClass })
    .from(helperChild)
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .innerJoin(child, eq(child.id, helperChild.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(
      and(
        eq(helperChild.helperId, helperId),
        eq(helperChild.childId, childId),
        isNull(helperChild.leftAt),
      ),
    );
  if (!row) throw new AppError('not_found', 'child');
  return row;
}

/** What is kept about a child itself. Inside the caller's transaction, and after its check of who asks. */
export async function readAboutChild(
  inner: Store,
  row: ChildOfClass,
): Promise<Omit<HeldData, 'format' | 'version' | 'madeAt' | 'you'>> {
  const childId = row.child.id;
  return {
    child: {
      ...describe(row),
      adjustment: await readAdjustment(inner, childId),
      pace: await readPaces(inner, childId),
    },
    ...(await readBelongings(inner, childId)),
    evenings: await readHeldEvenings(inner, childId),
    memory: await readFacts(inner, childId),
  };
}

/** What is kept about one helper of a child. Inside the caller's transaction, and after its check of who asks. */
export async function readAboutHelper(
  inner: Store,
  own: {
    readonly helper: typeof helper.$inferSelect;
    readonly tie: typeof helperChild.$inferSelect;
  },
  childId: string,
): Promise<HeldData['you']> {
  const { id, chatId, language, way } = own.helper;
  return {
    chatId,
    language,
    way,
    display: displayOf(own.helper),
    relation: own.tie.relation,
    pictureMonth: own.tie.pictureMonth,
    dataUsed: await listDataUsed(inner, id),
    joinedAt: own.tie.joinedAt.toISOString(),
    agreements: await readAgreements(inner, id, childId),
    messages: await readMessages(inner, id, childId),
  };
}

interface ChildOfClass {
  readonly child: typeof child.$inferSelect;
  readonly schoolClass: typeof schoolClass.$inferSelect;
}

function describe({ child: row, schoolClass: own }: ChildOfClass) {
  return {
    nickname: row.nickname,
    number: row.number,
    classTitle: own.title,
    zone: own.zone,
    eveningTime: row.eveningTime ?? own.eveningTime,
    addedAt: row.createdAt.toISOString(),
    archivedAt: iso(row.archivedAt),
    erasingSince: iso(row.erasingSince),
  };
}

function displayOf({ bigger, noTiming, quiet, clockAid, monthly }: typeof helper.$inferSelect) {
  return { bigger, noTiming, quiet, clockAid, monthly };
}

async function readAdjustment({ db }: Store, childId: string) {
  const [row] = await db.select().from(adjustment).where(eq(adjustment.childId, childId));
  if (!row) return null;
  const { steps, fewer, untimed, since } = row;
  return { steps, fewer, untimed, since: since.toISOString() };
}

async function readPaces({ db }: Store, childId: string) {
  const rows = await db.select().from(pace).where(eq(pace.childId, childId)).orderBy(pace.step);
  return rows.map(({ day, rate, announcedFrom, kept, pausedUntil, days }) => ({
    day,
    rate,
    announcedFrom,
    keptByTeacher: kept,
    pausedUntil,
    weekdays: days,
  }));
}

async function readAgreements({ db }: Store, helperId: string, childId: string) {
  const rows = await db
    .select()
    .from(consent)
    .where(and(eq(consent.helperId, helperId), eq(consent.childId, childId)))
    .orderBy(asc(consent.agreedAt));
  return rows.map(({ textVersion, language, agreedAt, withdrawnAt }) => ({
    textVersion,
    language,
    agreedAt: agreedAt.toISOString(),
    withdrawnAt: iso(withdrawnAt),
  }));
}

async function readMessages({ db }: Store, helperId: string, childId: string) {
  const rows = await db
    .select()
    .from(ledger)
    .where(and(eq(ledger.recipientId, helperId), eq(ledger.subjectId, childId)))
    .orderBy(asc(ledger.day), asc(ledger.id));
  return rows.map(({ kind, day, status, settledAt }) => ({
    kind,
    day,
    status,
    sentAt: status === 'sent' ? iso(settledAt) : null,
  }));
}

async function readBelongings({ db }: Store, childId: string) {
  const slips = await db.select().from(slip).where(eq(slip.childId, childId));
  const books = await db.select().from(book).where(eq(book.childId, childId));
  const places = await db
    .select({ book: book.title, page: pagePlace.page, saidAt: pagePlace.saidAt })
    .from(pagePlace)
    .innerJoin(book, eq(book.id, pagePlace.bookId))
    .where(and(eq(pagePlace.childId, childId), isNull(pagePlace.takenBackAt)))
    .orderBy(asc(pagePlace.saidAt));
  return {
    slips: slips.map(({ createdAt, expiresAt, usesLeft, usedAt, sharedBy }) => ({
      issuedAt: createdAt.toISOString(),
      expiresAt: expiresAt.toISOString(),
      usesLeft,
      usedAt: iso(usedAt),
      shared: sharedBy !== null,
    })),
    books: books.map(({ title, firstPage, lastPage, pagesADay }) => ({
      title,
      firstPage,
      lastPage,
      pagesADay,
    })),
    places: places.map((row) => ({ ...row, saidAt: row.saidAt.toISOString() })),
  };
}

async function readFacts({ db }: Store, childId: string) {
  const rows = await db
    .select()
    .from(factMemory)
    .where(eq(factMemory.childId, childId))
    .orderBy(asc(factMemory.fact));
  return rows.map(({ childId: _, ...row }) => row);
}

function iso(instant: Date | null): string | null {
  return instant === null ? null : instant.toISOString();
}
