import type { InputFile } from 'grammy';
import type { InlineKeyboardMarkup, InputMediaPhoto, InputMediaVideo, Message } from 'grammy/types';
import { CLIP_SIZE } from '../clip/index.ts';
import type { Clip, Picture, Screen } from '../screens/screen.ts';
import type { ChatDeps } from './chat.ts';

/** A picture could not be drawn: nothing was sent. The `cause` is what the drawing threw. */
export class PaintError extends Error {
  override readonly name = 'PaintError';
}

/** What stands under a picture or clip of a new message. */
export interface Under extends Pick<Screen['text'], 'caption' | 'caption_entities'> {
  readonly reply_markup: InlineKeyboardMarkup;
}

/** Something to see above a message's words: how it is made, sent, and put into a message that is there already. */
export interface Visual {
  readonly kind: 'clip' | 'picture';
  readonly hash: string;
  readonly fileName: string;
  /** The file, or null when it is not ready. Rejects with PaintError when it cannot be drawn. */
  bytes(): Promise<Uint8Array | null>;
  send(
    api: ChatDeps['api'],
    chatId: number,
    media: string | InputFile,
    under: Under,
  ): Promise<Message>;
  asMedia(
    media: string | InputFile,
    caption: Pick<Under, 'caption' | 'caption_entities'>,
  ): InputMediaPhoto | InputMediaVideo;
}

/** What a screen would like to show, the best first. */
export function visualsOf({ clip, picture }: Screen): readonly Visual[] {
  return [...(clip ? [clipVisual(clip)] : []), ...(picture ? [pictureVisual(picture)] : [])];
}

function clipVisual(clip: Clip): Visual {
  // Said in each call, since the service need not measure a video by itself.
  const shape = {
    width: CLIP_SIZE,
    height: CLIP_SIZE,
    duration: Math.round(clip.seconds),
    supports_streaming: true,
  } as const;
  return {
    kind: 'clip',
    hash: clip.hash,
    fileName: 'practice.mp4',
    bytes: () => clip.make(),
    send: (api, chatId, media, under) => api.sendVideo(chatId, media, { ...shape, ...under }),
    asMedia: (media, caption) => ({ type: 'video', media, ...shape, ...caption }),
  };
}

function pictureVisual(picture: Picture): Visual {
  return {
    kind: 'picture',
    hash: picture.hash,
    fileName: 'practice.png',
    bytes: async () => {
      try {
        return picture.paint();
      } catch (cause) {
        throw new PaintError('a picture could not be drawn', { cause });
      }
    },
    send: (api, chatId, media, under) => api.sendPhoto(chatId, media, under),
    asMedia: (media, caption) => ({ type: 'photo', media, ...caption }),
  };
}
