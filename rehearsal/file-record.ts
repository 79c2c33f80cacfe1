import { extname } from 'node:path';
import { imageSize } from './image-size.ts';
import { oggLength } from './ogg-length.ts';
import type { FileClass, FileRecord } from './state.ts';
import { type VideoShape, videoShape } from './video-shape.ts';

const FOLDERS: Readonly<Record<FileClass, string>> = {
  Photo: 'photos',
  Document: 'documents',
  Video: 'videos',
  Voice: 'voice',
};

const MIME_TYPES: Readonly<Record<string, string>> = {
  '.csv': 'text/csv',
  '.gif': 'image/gif',
  '.jpeg': 'image/jpeg',
  '.jpg': 'image/jpeg',
  '.json': 'application/json',
  '.m4a': 'audio/mp4',
  '.mov': 'video/quicktime',
  '.mp3': 'audio/mpeg',
  '.mp4': 'video/mp4',
  '.oga': 'audio/ogg',
  '.ogg': 'audio/ogg',
  '.opus': 'audio/ogg',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain',
  '.webm': 'video/webm',
  '.xls': 'application/vnd.ms-excel',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.zip': 'application/zip',
};

export interface NewFile {
  readonly fileClass: FileClass;
  readonly bytes: Uint8Array;
  readonly fileName?: string | undefined;
  readonly mimeType?: string | undefined;
  /** What the sender says of a video or a recording; it wins over what the file says. */
  readonly shape?: Partial<VideoShape> | undefined;
}

type Description = Omit<FileRecord, 'uniqueId' | 'fileClass' | 'path' | 'size'>;

interface Described extends Description {
  /** How the stored file's name ends. */
  readonly suffix: string;
}

function describePhoto({ bytes }: NewFile): Described {
  const { mimeType = 'image/png', ...size } = imageSize(bytes) ?? {};
  return { mimeType, ...size, suffix: mimeType === 'image/jpeg' ? '.jpg' : '.png' };
}

/** The type given or told by the name, when it is of the kind wanted; otherwise the usual one. */
function typeOf({ fileName, mimeType }: NewFile, kind: string, usual: string): string {
  const types = [mimeType, MIME_TYPES[extname(fileName ?? '').toLowerCase()]];
  return types.find((type) => type?.startsWith(`${kind}/`)) ?? usual;
}

function describeVideo(file: NewFile): Described {
  const { bytes, fileName, shape } = file;
  const none: VideoShape = { width: 0, height: 0, duration: 0 };
  return {
    ...(fileName === undefined ? {} : { fileName }),
    mimeType: typeOf(file, 'video', 'video/mp4'),
    suffix: extname(fileName ?? '').toLowerCase() || '.mp4',
    ...none,
    ...videoShape(bytes),
    ...shape,
  };
}

function describeVoice(file: NewFile): Described {
  const mimeType = typeOf(file, 'audio', 'audio/ogg');
  const duration = file.shape?.duration ?? oggLength(file.bytes) ?? 0;
  return { mimeType, duration, suffix: mimeType === 'audio/ogg' ? '.oga' : '' };
}

function describeOther({ bytes, fileName, mimeType }: NewFile): Described {
  const suffix = extname(fileName ?? '').toLowerCase();
  const { mimeType: measured, ...size } = imageSize(bytes) ?? {};
  return {
    ...(fileName === undefined ? {} : { fileName }),
    mimeType: mimeType ?? MIME_TYPES[suffix] ?? measured ?? 'application/octet-stream',
    ...size,
    suffix,
  };
}

const DESCRIBERS: Readonly<Record<FileClass, (file: NewFile) => Described>> = {
  Photo: describePhoto,
  Document: describeOther,
  Video: describeVideo,
  Voice: describeVoice,
};

/** What is known of a new file: its kind and measures, read from its bytes where it is a picture or a video. */
export function describeFile(file: NewFile, uniqueId: string, number: number): FileRecord {
  const { fileClass, bytes } = file;
  const { suffix, ...description } = DESCRIBERS[fileClass](file);
  const path = `${FOLDERS[fileClass]}/file_${number}${suffix}`;
  return { uniqueId, fileClass, path, size: bytes.length, ...description };
}
