import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { REHEARSAL_BOT } from '../rate/claim-store.ts';
import { classTeacher, schoolClass } from '../schema/index.ts';
import { type ClassSettings, checkClassSettings } from './check-class.ts';
import type { SchoolClass } from './school-class.ts';

/**
 * Creates a class with its first teacher, for the bot in whose chat it is made; left out, the rehearsal's. Settings are checked
 * before anything is written.
 */
export async function createClass(
  store: Store,
  input: { teacherId: string; settings: ClassSettings; botId?: number; now: Date },
): Promise<SchoolClass> {
  const settings = checkClassSettings(input.settings);
  const id = newId(input.now);
  await inTransaction(store, async ({ db }) => {
    await db.insert(schoolClass).values({
      ...settings,
      id,
      botId: input.botId ?? REHEARSAL_BOT,
      weekdays: [...settings.weekdays],
      createdAt: input.now,
      timesSince: input.now,
      digestSince: input.now,
    });
    await db
      .insert(classTeacher)
      .values({ classId: id, teacherId: input.teacherId, createdAt: input.now });
  });
  return { ...settings, id, digestSince: input.now };
}
