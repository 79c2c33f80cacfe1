import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { imageSize } from './image-size.ts';
import type { FileClass, FileRecord, State } from './state.ts';

const FOLDERS: Readonly<Record<FileClass, string>> = {
  Photo: 'photos',
  Document: 'documents',
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
}

export interface FileStore {
  /** Keeps the bytes; the same bytes of the same class and name are kept once. */
  put(file: NewFile): Promise<FileRecord>;
  find(uniqueId: string): FileRecord | undefined;
  findByPath(path: string): FileRecord | undefined;
  read(record: FileRecord): Promise<Uint8Array>;
}

function describe(file: NewFile, uniqueId: string, number: number): FileRecord {
  const image = imageSize(file.bytes);
  const extension = extname(file.fileName ?? '').toLowerCase();
  const isPicture = file.fileClass === 'Photo';
  const mimeType =
    file.mimeType ?? MIME_TYPES[extension] ?? image?.mimeType ?? 'application/octet-stream';
  const suffix = isPicture ? (image?.mimeType === 'image/jpeg' ? '.jpg' : '.png') : extension;
  return {
    uniqueId,
    fileClass: file.fileClass,
    path: `${FOLDERS[file.fileClass]}/file_${number}${suffix}`,
    ...(isPicture || file.fileName === undefined ? {} : { fileName: file.fileName }),
    mimeType: isPicture ? (image?.mimeType ?? mimeType) : mimeType,
    size: file.bytes.length,
    ...(isPicture && image !== undefined ? { width: image.width, height: image.height } : {}),
  };
}

/** Keeps uploaded files: in memory, and below `folder` when one is given. */
export function createFileStore(
  state: State,
  folder: string | undefined,
  changed: () => void,
): FileStore {
  const held = new Map<string, Uint8Array>();
  const records = new Map(state.files.map((record) => [record.uniqueId, record]));
  const diskPath = (record: FileRecord): string => join(folder ?? '', record.uniqueId);
  return {
    put: async (file) => {
      const hash = createHash('sha256')
        .update(`${file.fileClass}\0${file.fileName ?? ''}\0`)
        .update(file.bytes);
      const uniqueId = hash.digest('base64url').slice(0, 15);
      const known = records.get(uniqueId);
      if (known !== undefined) return known;
      const record = describe(file, uniqueId, state.nextFileNumber++);
      if (folder === undefined) {
        held.set(uniqueId, file.bytes);
      } else {
        await mkdir(folder, { recursive: true });
        await writeFile(diskPath(record), file.bytes);
      }
      records.set(uniqueId, record);
      state.files.push(record);
      changed();
      return record;
    },
    find: (uniqueId) => records.get(uniqueId),
    findByPath: (path) => state.files.find((record) => record.path === path),
    read: async (record) =>
      held.get(record.uniqueId) ?? new Uint8Array(await readFile(diskPath(record))),
  };
}
