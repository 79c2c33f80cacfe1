import type { InputFile } from 'grammy';
import { localTimeAt, type SchoolClass } from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { pictureFile, tableFile } from '../digest/digest-files.ts';
import { readDigest } from '../digest/read-digest.ts';
import { digest } from '../texts/digest.ts';

/**
 * Sends the digest of the last seven days, as it stands now. A picture or table that fails once the text has gone out is
 * logged and left out: the tap, handled again, would send the text again.
 */
export async function sendDigest(
  deps: BotDeps,
  chatId: number,
  schoolClass: SchoolClass,
): Promise<void> {
  const now = deps.clock.now();
  const { day } = localTimeAt(now, schoolClass.zone);
  const summary = await readDigest(deps.store, schoolClass, day, now, 'with_today');
  await sendScreen(deps, chatId, { text: digest(schoolClass.title, summary), buttons: [] });
  if (summary.children.length === 0) return;
  await sendFile(deps, { chatId, schoolClass, event: 'digest_picture_failed' }, () =>
    pictureFile(deps.painter, schoolClass, day, summary),
  );
  await sendFile(deps, { chatId, schoolClass, event: 'digest_table_failed' }, () =>
    tableFile(schoolClass, day, summary),
  );
}

async function sendFile(
  deps: BotDeps,
  to: { chatId: number; schoolClass: SchoolClass; event: string },
  make: () => InputFile,
): Promise<void> {
  try {
    await deps.api.sendDocument(to.chatId, make());
  } catch {
    deps.log.warn({ classId: to.schoolClass.id }, to.event);
  }
}
