import type { Message } from 'grammy/types';
import { GREETING_LIMITS } from '../../db/index.ts';

/** A voice note or short video that somebody sent: the chat service's id of the file, and the message it came in. */
export interface Recording {
  readonly kind: 'voice' | 'video';
  readonly fileId: string;
  readonly messageId: number;
}

/** Why a recording cannot be a greeting: what it is, its seconds, or its megabytes rounded up. */
export type RecordingProblem =
  | { readonly kind: 'form' }
  | { readonly kind: 'seconds' | 'megabytes'; readonly value: number };

const MEGABYTE = 1_000_000;

/**
 * Reads a voice note or video off a message; null when the message is neither. A round video and a music file can be sent on
 * by their own methods only and are `form`.
 *
 * @example
 * readRecording(message); // { kind: 'seconds', value: 95 } for a voice note of 95 seconds
 */
export function readRecording(
  message: Pick<Message, 'message_id' | 'voice' | 'video' | 'video_note' | 'audio'>,
): Recording | RecordingProblem | null {
  const { voice, video } = message;
  const file = voice ?? video;
  if (!file) return message.video_note || message.audio ? { kind: 'form' } : null;
  if (file.duration > GREETING_LIMITS.seconds) return { kind: 'seconds', value: file.duration };
  const megabytes = (file.file_size ?? 0) / MEGABYTE;
  if (megabytes > GREETING_LIMITS.megabytes) {
    return { kind: 'megabytes', value: Math.ceil(megabytes) };
  }
  const kind = voice ? 'voice' : 'video';
  return { kind, fileId: file.file_id, messageId: message.message_id };
}
