import { eq } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { helper, ledger, teacher } from '../schema/index.ts';
import type { LedgerKind } from './owe.ts';

/** A message owed, with the chat it goes to. */
export interface Delivery {
  readonly id: string;
  readonly kind: LedgerKind;
  /** The child or the class the message is about. */
  readonly subjectId: string;
  readonly classId: string;
  /** The bot that sends it. */
  readonly botId: number;
  readonly day: SchoolDay;
  readonly eveningId: string | null;
  readonly to: 'helper' | 'teacher';
  readonly chatId: number;
  readonly expiresAt: Date;
  readonly notBefore: Date;
}

/** The message owed under this id if it is still waiting; null when it was sent, failed or is on its way. */
export async function readDelivery(store: Store, ledgerId: string): Promise<Delivery | null> {
  const [row] = await store.db
    .select({ ledger, helperChat: helper.chatId, teacherChat: teacher.chatId })
    .from(ledger)
    .leftJoin(helper, eq(helper.id, ledger.recipientId))
    .leftJoin(teacher, eq(teacher.id, ledger.recipientId))
    .where(eq(ledger.id, ledgerId));
  const chatId = row?.helperChat ?? row?.teacherChat;
  if (row?.ledger.status !== 'planned' || !chatId) return null;
  const { id, kind, subjectId, classId, botId, eveningId, expiresAt, notBefore } = row.ledger;
  return {
    id,
    kind,
    subjectId,
    classId,
    botId,
    eveningId,
    to: row.ledger.recipientKind,
    chatId,
    expiresAt,
    notBefore,
    day: storedDay(row.ledger.day),
  };
}
