import { InputFile } from 'grammy';
import type { Message } from 'grammy/types';
import { findFile, forgetFile, problemOf, saveFile } from '../../db/index.ts';
import type { Picture } from '../screens/screen.ts';
import { apiProblem } from './api-error.ts';
import type { ChatDeps } from './chat.ts';

/** A picture could not be drawn: nothing was sent. The `cause` is what the drawing threw. */
export class PaintError extends Error {
  override readonly name = 'PaintError';
}

/** A picture as a call takes it: the id of an earlier upload, or the bytes. */
export interface Upload {
  readonly media: string | InputFile;
  readonly bytes: number;
}

/** A call that shows a picture. */
export type PictureCall = (media: string | InputFile) => Promise<Message | true>;

/**
 * Makes a call with a picture: by the id of an earlier upload when there is one, else with the bytes, and remembers what
 * the service calls it. An id the service has forgotten is dropped and the picture is uploaded again. An id that cannot be
 * remembered costs another upload next time, nothing else: the message is there.
 *
 * @throws {PaintError} when the picture cannot be drawn.
 */
export async function callWithPicture(
  deps: ChatDeps,
  picture: Picture,
  call: PictureCall,
): Promise<Message | true> {
  const key = { hash: picture.hash, botId: deps.botId };
  const known = await findFile(deps.store, key);
  if (known) {
    try {
      return await call(known.fileId);
    } catch (error) {
      if (apiProblem(error).kind !== 'bad_file') throw error;
      await forgetFile(deps.store, key);
    }
  }
  const bytes = paint(picture);
  const message = await call(new InputFile(bytes, 'practice.png'));
  const largest = message === true ? undefined : message.photo?.at(-1);
  if (!largest) return message;
  try {
    await saveFile(deps.store, key, {
      fileId: largest.file_id,
      uniqueId: largest.file_unique_id,
      bytes: bytes.length,
      now: deps.clock.now(),
    });
  } catch (error) {
    deps.log.warn({ problem: problemOf(error) }, 'upload_not_remembered');
  }
  return message;
}

function paint(picture: Picture): Uint8Array {
  try {
    return picture.paint();
  } catch (cause) {
    throw new PaintError('a picture could not be drawn', { cause });
  }
}
