import type { Service } from '../service.ts';
import { writableChat } from './access.ts';
import { type Addressed, checkAddress, deliver } from './deliver.ts';
import { badRequest } from './envelope.ts';
import { captionText, messageText } from './formatted-text.ts';
import { type MediaSource, mediaFile } from './media.ts';
import { method } from './method.ts';
import type { Params } from './schemas.ts';
import { givenShape } from './video-file.ts';

const sendMessage = method('sendMessage', (service, params) => {
  const content = messageText({
    text: params.text,
    parseMode: params.parse_mode,
    entities: params.entities,
  });
  return deliver(service, params, content);
});

type CaptionedCall = Addressed &
  Pick<Params<'sendPhoto'>, 'caption' | 'parse_mode' | 'caption_entities'>;

async function sendFile(
  service: Service,
  params: CaptionedCall,
  file: MediaSource,
): Promise<Record<string, unknown>> {
  checkAddress(service, params);
  const caption = captionText({
    text: params.caption ?? '',
    parseMode: params.parse_mode,
    entities: params.caption_entities,
  });
  const record = await mediaFile(service, file);
  return deliver(service, params, { ...caption, file: record.uniqueId });
}

const sendPhoto = method('sendPhoto', (service, params, { uploads }) =>
  sendFile(service, params, { value: params.photo, fileClass: 'Photo', uploads }),
);

const sendDocument = method('sendDocument', (service, params, { uploads }) =>
  sendFile(service, params, { value: params.document, fileClass: 'Document', uploads }),
);

const sendVideo = method('sendVideo', (service, params, { uploads }) =>
  sendFile(service, params, {
    value: params.video,
    fileClass: 'Video',
    uploads,
    shape: givenShape(params),
  }),
);

const sendVoice = method('sendVoice', (service, params, { uploads }) =>
  sendFile(service, params, {
    value: params.voice,
    fileClass: 'Voice',
    uploads,
    shape: givenShape({ duration: params.duration }),
  }),
);

/** SPEC sendChatAction. */
const ACTIONS = [
  'typing',
  'upload_photo',
  'record_video',
  'upload_video',
  'record_voice',
  'upload_voice',
  'upload_document',
  'choose_sticker',
  'find_location',
  'record_video_note',
  'upload_video_note',
];

const sendChatAction = method('sendChatAction', (service, params) => {
  writableChat(service, params.chat_id);
  if (!ACTIONS.includes(params.action)) throw badRequest('wrong parameter action in request');
  return true;
});

/** Methods that bring something new into a chat. */
export const sendMethods = {
  sendMessage,
  sendPhoto,
  sendVideo,
  sendDocument,
  sendVoice,
  sendChatAction,
};
