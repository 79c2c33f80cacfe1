import {
  mkdir,
  mkdtemp,
  readdir,
  readFile,
  rm,
  truncate,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createClipStore } from '../../../../bot/clip/index.ts';
import { seal } from '../../../../bot/clip/store/sealed-file.ts';

const SEAL = seal(new Uint8Array()).length;
const name = (digit: number) => digit.toString(16).repeat(64).slice(0, 64);
const clip = (value: number, length = 100) => new Uint8Array(length).fill(value);
const A = name(0xa);
const B = name(0xb);
const C = name(0xc);

let folder: string;
beforeEach(async () => {
  folder = join(await mkdtemp(join(tmpdir(), 'clips-')), 'made', 'when', 'needed');
});
afterEach(() => rm(join(folder, '..', '..', '..'), { recursive: true }));

const open = (maxBytes = 10_000) => createClipStore({ folder, maxBytes });
const bytesOf = async (hash: string, store = open()) => {
  const kept = await store.get(hash);
  return kept && [...kept];
};

describe('a store of clips', () => {
  it('gives back what was put in, also after a restart', async () => {
    const store = open();
    await store.put(A, clip(1));
    expect(await bytesOf(A, store)).toEqual([...clip(1)]);
    expect(await bytesOf(A, open())).toEqual([...clip(1)]);
  });

  it('has nothing under a name that was never used, and leaves the disk alone', async () => {
    expect(await open().get(A)).toBeNull();
    await expect(readdir(folder)).rejects.toThrow('ENOENT');
  });

  it('gives the newer clip when a name is used again', async () => {
    const store = open();
    await store.put(A, clip(1));
    await store.put(A, clip(2));
    expect(await bytesOf(A, store)).toEqual([...clip(2)]);
  });

  it('leaves no unfinished file behind', async () => {
    const store = open();
    await Promise.all([A, B, A, C].map((hash) => store.put(hash, clip(1))));
    expect((await readdir(folder)).sort()).toEqual([A, B, C]);
  });

  it.each(['', '../../etc/passwd', `${A}/..`, A.toUpperCase(), A.slice(1)])(
    'refuses the name "%s"',
    async (hash) => {
      await expect(open().get(hash)).rejects.toThrow(RangeError);
      await expect(open().put(hash, clip(1))).rejects.toThrow(RangeError);
    },
  );

  it.each([0, -1, Number.NaN])('refuses a limit of %d bytes', (maxBytes) => {
    expect(() => open(maxBytes)).toThrow(`Got a limit of ${maxBytes} bytes: give one above 0.`);
  });
});

describe('a spoilt file', () => {
  it.each<[string, (path: string) => Promise<void>]>([
    ['cut short', (path) => truncate(path, SEAL + 50)],
    ['emptied', (path) => truncate(path, 0)],
    ['written over', (path) => writeFile(path, Buffer.alloc(SEAL + 100, 7))],
    [
      'changed in one place',
      async (path) => {
        const file = await readFile(path);
        file[SEAL + 40] = 99;
        await writeFile(path, file);
      },
    ],
  ])('that was %s is not served, is removed, and can be put anew', async (_, spoil) => {
    const store = open();
    await store.put(A, clip(1));
    await spoil(join(folder, A));
    expect(await store.get(A)).toBeNull();
    expect(await readdir(folder)).toEqual([]);
    await store.put(A, clip(2));
    expect(await bytesOf(A, store)).toEqual([...clip(2)]);
  });

  it('that was left unfinished by a crash is removed at the next start', async () => {
    await open().put(A, clip(1));
    await writeFile(join(folder, `${B}.1.1.part`), 'half');
    await open().put(C, clip(1));
    expect((await readdir(folder)).sort()).toEqual([A, C]);
  });

  it('of somebody else is left alone', async () => {
    await open().put(A, clip(1));
    await writeFile(join(folder, 'notes.txt'), 'mine');
    await open(2 * (SEAL + 100)).put(B, clip(1));
    expect(await readdir(folder)).toContain('notes.txt');
  });
});

describe('a disk that takes nothing', () => {
  it('leaves no half of a clip behind', async () => {
    // A folder in the place of the file stands for a write that fails on its way.
    await mkdir(join(folder, A), { recursive: true });
    await expect(open().put(A, clip(1))).rejects.toThrow();
    expect(await readdir(folder)).toEqual([A]);
  });

  it('is used again once it is mended', async () => {
    const store = open();
    await mkdir(dirname(folder), { recursive: true });
    await writeFile(folder, 'a file where the folder should be');
    await expect(store.put(A, clip(1))).rejects.toThrow();
    await rm(folder);
    await store.put(A, clip(1));
    expect(await bytesOf(A, store)).toEqual([...clip(1)]);
  });

  it('that lost its folder gets a new one with the next clip but one', async () => {
    const store = open();
    await store.put(A, clip(1));
    await rm(folder, { recursive: true });
    await expect(store.put(B, clip(1))).rejects.toThrow('ENOENT');
    await store.put(C, clip(1));
    expect(await readdir(folder)).toEqual([C]);
  });
});

describe('a full store', () => {
  const room = 2 * (SEAL + 100);

  it('lets the oldest clip go', async () => {
    const store = open(room);
    for (const hash of [B, A, C]) await store.put(hash, clip(1));
    expect((await readdir(folder)).sort()).toEqual([A, C]);
    expect(await store.get(B)).toBeNull();
  });

  it('lets as many go as one larger clip needs', async () => {
    const store = open(room);
    for (const hash of [B, A]) await store.put(hash, clip(1));
    await store.put(C, clip(1, SEAL + 150));
    expect(await readdir(folder)).toEqual([C]);
  });

  it('knows after a restart which clip is the oldest', async () => {
    const store = open();
    for (const hash of [A, B]) await store.put(hash, clip(1));
    await utimes(join(folder, A), 2_000, 2_000);
    await utimes(join(folder, B), 1_000, 1_000);
    await open(room).put(C, clip(1));
    expect((await readdir(folder)).sort()).toEqual([A, C]);
  });

  it('counts a clip put twice as the newer one, and once', async () => {
    const store = open(room);
    for (const hash of [A, B, A]) await store.put(hash, clip(1));
    expect((await readdir(folder)).sort()).toEqual([A, B]);
    await store.put(C, clip(1));
    expect((await readdir(folder)).sort()).toEqual([A, C]);
  });

  it('does not keep a clip larger than itself, nor let others go for it', async () => {
    const store = open(room);
    await store.put(A, clip(1));
    await store.put(B, clip(1, room));
    expect(await readdir(folder)).toEqual([A]);
  });
});
