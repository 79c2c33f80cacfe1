import type { Transformer } from 'grammy';
import { z } from 'zod';
import { addDataUsed, problemOf } from '../../db/index.ts';
import type { ChatDeps } from './chat.ts';

const file = z.object({ file_size: z.number().optional() });

/** What of a message tells how large its file is. A photo comes in several sizes, the largest last. */
const message = z.object({
  photo: z.array(file).optional(),
  video: file.optional(),
  document: file.optional(),
  voice: file.optional(),
});

/** What of a call says to whom it goes and what it says. */
const said = z.object({
  chat_id: z.number(),
  text: z.string().optional(),
  caption: z.string().optional(),
});

/**
 * Counts what goes to a helper's phone, by helper and month: the bytes of the words and, of a new or changed file, the size the
 * service says it has. An estimate, because the phone decides what it loads, in which size, and what it has already. Counting
 * never fails a call.
 */
export function countData({ store, clock, log }: Pick<ChatDeps, 'store' | 'clock' | 'log'>) {
  const counted: Transformer = async (previous, method, payload, signal) => {
    const answer = await previous(method, payload, signal);
    if (!answer.ok) return answer;
    const call = said.safeParse(payload);
    const bytes = call.success ? bytesOf(method, call.data, answer.result) : 0;
    if (!call.success || bytes === 0) return answer;
    try {
      await addDataUsed(store, { chatId: call.data.chat_id, bytes, now: clock.now() });
    } catch (error) {
      log.warn({ problem: problemOf(error) }, 'data_not_counted');
    }
    return answer;
  };
  return counted;
}

/**
 * The bytes of one call that was carried out: 0 for calls that put nothing before anybody.
 *
 * @example
 * bytesOf('sendMessage', { chat_id: 1, text: 'Ä' }, {}); // 2
 */
export function bytesOf(method: string, call: z.infer<typeof said>, result: unknown): number {
  const isSend = method.startsWith('send') && method !== 'sendChatAction';
  if (!isSend && !method.startsWith('editMessage')) return 0;
  const words = Buffer.byteLength(call.text ?? call.caption ?? '');
  const hasNewFile = isSend || method === 'editMessageMedia';
  const shown = hasNewFile ? message.safeParse(result) : undefined;
  if (!shown?.success) return words;
  const { photo, video, document, voice } = shown.data;
  const sent = photo?.at(-1) ?? video ?? document ?? voice;
  return words + (sent?.file_size ?? 0);
}
