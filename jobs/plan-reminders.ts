import { CLASS_LIMITS, instantAt, listDueReminders, oweAgain, storedTime } from '../db/index.ts';
import type { PlanDeps } from './ports.ts';

/** Plans the reminders that families asked for with "Later", never in quiet hours. Returns how many messages are owed. */
export async function planReminders(deps: PlanDeps): Promise<number> {
  const now = deps.clock.now();
  let owed = 0;
  for (const { zone, ...reminder } of await listDueReminders(deps.store, now)) {
    const quietAt = instantAt(reminder.day, storedTime(CLASS_LIMITS.quietFrom), zone);
    if (now >= quietAt) continue;
    owed += await oweAgain(deps.store, { ...reminder, kind: 'reminder', expiresAt: quietAt, now });
  }
  return owed;
}
