import { readFileId } from '../file-ids.ts';
import { imageSize } from '../image-size.ts';
import type { Service } from '../service.ts';
import type { FileClass, FileRecord } from '../state.ts';
import type { VideoShape } from '../video-shape.ts';
import { isVoice } from '../voice-file.ts';
import type { Upload } from './body.ts';
import { badRequest } from './envelope.ts';
import { checkVideo } from './video-file.ts';

/** Bytes (SPEC sendPhoto). */
const PHOTO_LIMIT = 10_485_760;
/** Pixels, width and height together (SPEC sendPhoto). */
const PHOTO_SIDES = 10_000;
const PHOTO_RATIO = 20;

function checkPhoto({ bytes }: Upload): void {
  if (bytes.length > PHOTO_LIMIT) {
    throw badRequest(
      `file of size ${bytes.length} bytes is too big for a photo; the maximum size is ${PHOTO_LIMIT} bytes`,
    );
  }
  const size = imageSize(bytes);
  if (size === undefined) throw badRequest('IMAGE_PROCESS_FAILED');
  const { width, height } = size;
  // Without width or height the ratio is beyond all limits.
  const ratio = Math.max(width, height, 1) / Math.min(width, height);
  if (width + height > PHOTO_SIDES || ratio > PHOTO_RATIO)
    throw badRequest('PHOTO_INVALID_DIMENSIONS');
}

/** Where a parameter takes its file from, and what it is to be. */
export interface MediaSource {
  /** `attach://` a part of this call, or the id of an earlier file. */
  readonly value: string;
  readonly fileClass: FileClass;
  readonly uploads: ReadonlyMap<string, Upload>;
  /** What the sender says of a new video. */
  readonly shape?: Partial<VideoShape>;
}

async function store(service: Service, upload: Upload, source: MediaSource): Promise<FileRecord> {
  const { fileClass, shape } = source;
  if (upload.bytes.length === 0) throw badRequest('file must be non-empty');
  if (fileClass === 'Photo') checkPhoto(upload);
  if (fileClass === 'Video') checkVideo(upload.bytes);
  // The service keeps what is no voice note as a document (SPEC sendVoice).
  const kept = fileClass === 'Voice' && !isVoice(upload.bytes) ? 'Document' : fileClass;
  return service.files.put({ ...upload, fileClass: kept, shape });
}

/** The service takes ids of documents and videos for each other, and shows the file as what it is. */
const GENERAL: readonly FileClass[] = ['Document', 'Video'];

/** The service's words for the classes; that of a recording is from memory, and that it fits nowhere else. */
const CLASS_NAMES: Readonly<Record<FileClass, string>> = {
  Photo: 'Photo',
  Document: 'Document',
  Video: 'Video',
  Voice: 'VoiceNote',
};

function fits(kept: FileClass, wanted: FileClass): boolean {
  return kept === wanted || (GENERAL.includes(kept) && GENERAL.includes(wanted));
}

/** Finds the file behind a file id of this bot. Throws a 400 for ids that are malformed or another bot's. */
export function fileById(
  service: Service,
  id: string,
): { record: FileRecord; variant: 'full' | 'small' } {
  if (!/^[\w-]+$/.test(id))
    throw badRequest('wrong remote file identifier specified: Wrong character in the string');
  // Base64 never has a length of four times something and one.
  if (id.length % 4 === 1)
    throw badRequest('wrong remote file identifier specified: Wrong string length');
  const parts = readFileId(id);
  if (parts === undefined)
    throw badRequest("wrong remote file identifier specified: can't unserialize it");
  const record = parts.botTag === service.botTag ? service.files.find(parts.uniqueId) : undefined;
  if (record === undefined) throw badRequest('wrong file identifier/HTTP URL specified');
  return { record, variant: parts.variant };
}

/**
 * The file a parameter means: a part of this call, or one sent earlier.
 * Addresses on the web are refused, because the rehearsal fetches nothing.
 */
export async function mediaFile(service: Service, source: MediaSource): Promise<FileRecord> {
  const { value, fileClass, uploads } = source;
  if (value.startsWith('attach://')) {
    const upload = uploads.get(value.slice('attach://'.length));
    if (upload === undefined) throw badRequest('wrong file identifier/HTTP URL specified');
    return store(service, upload, source);
  }
  if (/^https?:/i.test(value)) throw badRequest('failed to get HTTP URL content');
  const { record } = fileById(service, value);
  if (!fits(record.fileClass, fileClass)) {
    const [kept, wanted] = [CLASS_NAMES[record.fileClass], CLASS_NAMES[fileClass]];
    throw badRequest(`can't use file of type ${kept} as ${wanted}`);
  }
  return record;
}
