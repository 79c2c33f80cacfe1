import { type FileVariant, writeFileId } from './file-ids.ts';
import { findAccount, findMessage, type Service } from './service.ts';
import type { Account, FileRecord, StoredMessage } from './state.ts';

/** Longest side of a photo's reduced size, in pixels. */
const SMALL_SIDE = 320;

/** A person as the service's User object. */
export function toUser(account: Account): Record<string, unknown> {
  return {
    id: account.id,
    is_bot: false,
    first_name: account.name,
    language_code: account.languageCode,
  };
}

/** A private chat as the service's Chat object. */
export function toChat(account: Account): Record<string, unknown> {
  return { id: account.id, first_name: account.name, type: 'private' };
}

function reference(
  service: Service,
  record: FileRecord,
  variant: FileVariant,
): Record<string, unknown> {
  const { fileClass, uniqueId } = record;
  return {
    file_id: writeFileId({ fileClass, uniqueId, variant, botTag: service.botTag }),
    file_unique_id: variant === 'full' ? uniqueId : `${uniqueId}s`,
  };
}

function toPhotoSizes(service: Service, record: FileRecord): Record<string, unknown>[] {
  const { width = 0, height = 0, size } = record;
  const full = { ...reference(service, record, 'full'), width, height, file_size: size };
  const scale = SMALL_SIDE / Math.max(width, height);
  if (scale >= 1) return [full];
  const small = {
    ...reference(service, record, 'small'),
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
  return [small, full];
}

/** A document as the service's Document object. */
function toDocument(service: Service, record: FileRecord): Record<string, unknown> {
  return {
    ...reference(service, record, 'full'),
    ...(record.fileName === undefined ? {} : { file_name: record.fileName }),
    mime_type: record.mimeType,
    file_size: record.size,
  };
}

/** A video as the service's Video object; measures that are not known are 0. */
function toVideo(service: Service, record: FileRecord): Record<string, unknown> {
  const { width = 0, height = 0, duration = 0 } = record;
  return { ...toDocument(service, record), width, height, duration };
}

/** A recording as the service's Voice object; a length that is not known is 0. */
function toVoice(service: Service, record: FileRecord): Record<string, unknown> {
  const { mimeType, size, duration = 0 } = record;
  return {
    ...reference(service, record, 'full'),
    duration,
    mime_type: mimeType,
    file_size: size,
  };
}

function toMedia(service: Service, record: FileRecord): Record<string, unknown> {
  if (record.fileClass === 'Photo') return { photo: toPhotoSizes(service, record) };
  if (record.fileClass === 'Document') return { document: toDocument(service, record) };
  if (record.fileClass === 'Video') return { video: toVideo(service, record) };
  return { voice: toVoice(service, record) };
}

function toContent(service: Service, { content }: StoredMessage): Record<string, unknown> {
  const record = content.file === undefined ? undefined : service.files.find(content.file);
  const { text, entities } = content;
  if (record === undefined) return { text, ...(entities.length === 0 ? {} : { entities }) };
  const caption =
    text === ''
      ? {}
      : { caption: text, ...(entities.length === 0 ? {} : { caption_entities: entities }) };
  return { ...toMedia(service, record), ...caption };
}

/** The message replied to, while it is there; without what that one replied to (SPEC Message). */
function toReply(service: Service, { chatId, replyTo }: StoredMessage): Record<string, unknown> {
  const replied = replyTo === undefined ? undefined : findMessage(service, chatId, replyTo);
  if (replied === undefined) return {};
  const { replyTo: _, ...alone } = replied;
  return { reply_to_message: toMessage(service, alone) };
}

/** A stored message as the service's Message object. */
export function toMessage(service: Service, message: StoredMessage): Record<string, unknown> {
  const account = findAccount(service, message.chatId);
  if (account === undefined) throw new Error(`message ${message.messageId} has no account`);
  return {
    message_id: message.messageId,
    from: message.from === 'bot' ? service.bot : toUser(account),
    chat: toChat(account),
    date: message.date,
    ...(message.editDate === undefined ? {} : { edit_date: message.editDate }),
    ...toReply(service, message),
    ...toContent(service, message),
    ...(message.keyboard === undefined
      ? {}
      : { reply_markup: { inline_keyboard: message.keyboard } }),
  };
}

/** A stored file as the service's File object. */
export function toFile(
  service: Service,
  record: FileRecord,
  variant: FileVariant,
): Record<string, unknown> {
  return { ...reference(service, record, variant), file_size: record.size, file_path: record.path };
}
