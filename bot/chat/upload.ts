import { InputFile } from 'grammy';
import type { Message } from 'grammy/types';
import { findFile, forgetFile, problemOf, saveFile } from '../../db/index.ts';
import { apiProblem } from './api-error.ts';
import type { ChatDeps } from './chat.ts';
import type { Visual } from './visual.ts';

/** A call that shows a picture or clip. */
export type VisualCall = (media: string | InputFile) => Promise<Message | true>;

/**
 * Makes a call with a picture or clip: by the id of an earlier upload when there is one, else with the bytes, and remembers
 * what the service calls it. An id the service has forgotten is dropped and the file is uploaded again. An id that cannot be
 * remembered costs another upload next time, nothing else: the message is there. Null, and no call, when the file is not ready.
 *
 * @throws {PaintError} when a picture cannot be drawn.
 */
export async function callWithVisual(
  deps: ChatDeps,
  visual: Pick<Visual, 'hash' | 'fileName' | 'bytes'>,
  call: VisualCall,
): Promise<Message | true | null> {
  const key = { hash: visual.hash, botId: deps.botId };
  const known = await findFile(deps.store, key);
  if (known) {
    try {
      return await call(known.fileId);
    } catch (error) {
      if (apiProblem(error).kind !== 'bad_file') throw error;
      await forgetFile(deps.store, key);
    }
  }
  const bytes = await visual.bytes();
  if (bytes === null) return null;
  const message = await call(new InputFile(bytes, visual.fileName));
  const file = message === true ? undefined : (message.photo?.at(-1) ?? message.video);
  if (!file) return message;
  try {
    await saveFile(deps.store, key, {
      fileId: file.file_id,
      uniqueId: file.file_unique_id,
      bytes: bytes.length,
      now: deps.clock.now(),
    });
  } catch (error) {
    deps.log.warn({ problem: problemOf(error) }, 'upload_not_remembered');
  }
  return message;
}
