import { extname } from 'node:path';
import { imageSize } from './image-size.ts';
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
  '.mp4': 'video/mp4',
  '.ogg': 'audio/ogg',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain',
  '.zip': 'application/zip',
};

export interface NewFile {
  readonly fileClass: FileClass;
  readonly bytes: Uint8Array;
  readonly fileName?: string | undefined;
  readonly mimeType?: string | undefined;
  /** What the sender says of a video; it wins over what the file says. */
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

function describeVideo({ bytes, fileName, shape }: NewFile): Described {
  const none: VideoShape = { width: 0, height: 0, duration: 0 };
  const name = fileName === undefined ? {} : { fileName };
  return {
    ...name,
    mimeType: 'video/mp4',
    suffix: '.mp4',
    ...none,
    ...videoShape(bytes),
    ...shape,
  };
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
  Voice: describeOther,
};

/** What is known of a new file: its kind and measures, read from its bytes where it is a picture or a video. */
export function describeFile(file: NewFile, uniqueId: string, number: number): FileRecord {
  const { fileClass, bytes } = file;
  const { suffix, ...description } = DESCRIBERS[fileClass](file);
  const path = `${FOLDERS[fileClass]}/file_${number}${suffix}`;
  return { uniqueId, fileClass, path, size: bytes.length, ...description };
}
