import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describeFile, type NewFile } from './file-record.ts';
import type { FileRecord, State } from './state.ts';

export interface FileStore {
  /** Keeps the bytes; the same bytes of the same class, name and given shape are kept once. */
  put(file: NewFile): Promise<FileRecord>;
  find(uniqueId: string): FileRecord | undefined;
  findByPath(path: string): FileRecord | undefined;
  read(record: FileRecord): Promise<Uint8Array>;
}

function uniqueIdOf({ fileClass, fileName = '', shape = {}, bytes }: NewFile): string {
  const { width = '', height = '', duration = '' } = shape;
  const given = ['Video', 'Voice'].includes(fileClass) ? `${width}x${height}x${duration}\0` : '';
  const hash = createHash('sha256').update(`${fileClass}\0${fileName}\0${given}`).update(bytes);
  return hash.digest('base64url').slice(0, 15);
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
      const uniqueId = uniqueIdOf(file);
      const known = records.get(uniqueId);
      if (known !== undefined) return known;
      const record = describeFile(file, uniqueId, state.nextFileNumber++);
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
