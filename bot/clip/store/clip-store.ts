import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { seal, unseal } from './sealed-file.ts';

/** Clips on disk, by name. Names are SHA-256 in hexadecimal, as `clipHash` gives them. */
export interface ClipStore {
  /** The clip kept under a name, or null when there is none that is whole. */
  readonly get: (hash: string) => Promise<Uint8Array | null>;
  /** Keeps a clip, and removes the oldest ones while there is too much. */
  readonly put: (hash: string, clip: Uint8Array) => Promise<void>;
}

/** Where clips are kept, and how many bytes they may take together. */
export interface ClipStoreOptions {
  readonly folder: string;
  readonly maxBytes: number;
}

const NAME = /^[0-9a-f]{64}$/;
const UNFINISHED = '.part';

/**
 * Clips kept in a folder of their own. A file appears whole or not at all, and one that was spoilt later is removed and not
 * served. A clip larger than the whole store is not kept.
 *
 * @throws {RangeError} when `maxBytes` is not above 0, or a name is no SHA-256.
 * @example
 * const store = createClipStore({ folder: 'data/clips', maxBytes: 500_000_000 });
 */
export function createClipStore({ folder, maxBytes }: ClipStoreOptions): ClipStore {
  if (!(maxBytes > 0)) throw new RangeError(`Got a limit of ${maxBytes} bytes: give one above 0.`);
  let opening: Promise<Map<string, number>> | undefined;
  const open = () => {
    // A folder that cannot be opened now may be mended later, without a restart.
    opening ??= openFolder(folder).catch((error) => {
      opening = undefined;
      throw error;
    });
    return opening;
  };
  const drop = async (sizes: Map<string, number>, name: string) => {
    sizes.delete(name);
    await rm(join(folder, name), { force: true });
  };
  let writes = 0;
  return {
    get: async (hash) => {
      const path = join(folder, checked(hash));
      const file = await readFile(path).catch(() => null);
      const clip = file && unseal(file);
      if (file && !clip) await drop(await open(), hash);
      return clip;
    },
    put: async (hash, clip) => {
      const path = join(folder, checked(hash));
      const file = seal(clip);
      if (file.length > maxBytes) return;
      const sizes = await open();
      writes += 1;
      const unfinished = `${path}.${process.pid}.${writes}${UNFINISHED}`;
      await writeWhole(path, unfinished, file).catch((error) => {
        // The folder may have been taken away: the next clip makes it anew.
        opening = undefined;
        throw error;
      });
      sizes.delete(hash);
      sizes.set(hash, file.length);
      for (const name of surplus(sizes, maxBytes)) await drop(sizes, name);
    },
  };
}

/** Writes a file under another name first. What a full disk cut short is removed, since it would keep the disk full. */
async function writeWhole(path: string, unfinished: string, file: Buffer): Promise<void> {
  try {
    await writeFile(unfinished, file);
    await rename(unfinished, path);
  } catch (error) {
    await rm(unfinished, { force: true }).catch(() => undefined);
    throw error;
  }
}

function checked(hash: string): string {
  if (NAME.test(hash)) return hash;
  throw new RangeError('Got a name that is no SHA-256: 64 digits from 0 to f.');
}

/** The sizes of the clips in a folder, oldest first. What an interrupted write left is removed. */
async function openFolder(folder: string): Promise<Map<string, number>> {
  await mkdir(folder, { recursive: true });
  const names = await readdir(folder);
  for (const name of names.filter((each) => each.endsWith(UNFINISHED))) {
    await rm(join(folder, name), { force: true });
  }
  const clips = [];
  for (const name of names.filter((each) => NAME.test(each))) {
    const { size, mtimeMs } = await stat(join(folder, name));
    clips.push({ name, size, mtimeMs });
  }
  clips.sort((a, b) => a.mtimeMs - b.mtimeMs || (a.name < b.name ? -1 : 1));
  return new Map(clips.map(({ name, size }) => [name, size]));
}

/** The oldest clips that have to go for the rest to fit. */
function surplus(sizes: ReadonlyMap<string, number>, maxBytes: number): string[] {
  let total = 0;
  for (const size of sizes.values()) total += size;
  const names: string[] = [];
  for (const [name, size] of sizes) {
    if (total <= maxBytes) break;
    names.push(name);
    total -= size;
  }
  return names;
}
