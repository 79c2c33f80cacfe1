import { localTimeAt, type SchoolClass } from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { pictureFile, tableFile } from '../digest/digest-files.ts';
import { readDigest } from '../digest/read-digest.ts';
import { digest } from '../texts/digest.ts';

/** Sends the digest of the last seven days, as it stands now. A picture that fails never holds back the text. */
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
  try {
    const picture = pictureFile(deps.painter, schoolClass.title, day, summary);
    await deps.api.sendDocument(chatId, picture);
  } catch {
    deps.log.warn({ classId: schoolClass.id }, 'digest_picture_failed');
  }
  await deps.api.sendDocument(chatId, tableFile(day, summary));
}
