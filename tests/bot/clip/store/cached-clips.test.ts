import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  ClipError,
  type ClipMaker,
  clipHash,
  createCachedClipMaker,
  createClipMaker,
  createClipStore,
} from '../../../../bot/clip/index.ts';
import { flatClip } from '../support/frames.ts';

/** A maker whose work is counted, and fails as often as told. */
function counted(failures = 0) {
  const maker = createClipMaker();
  const counts = { made: 0, failed: 0 };
  const make: ClipMaker['make'] = async (input) => {
    if (counts.failed < failures) {
      counts.failed += 1;
      throw new ClipError('worker_lost', 'told to');
    }
    counts.made += 1;
    return maker.make(input);
  };
  return { counts, maker: { make, close: maker.close } };
}

let parent: string;
let folder: string;
beforeEach(async () => {
  parent = await mkdtemp(join(tmpdir(), 'cached-clips-'));
  folder = join(parent, 'clips');
});
afterEach(() => rm(parent, { recursive: true }));

const store = () => createClipStore({ folder, maxBytes: 1_000_000 });

describe('a cached maker', () => {
  it('makes a clip once that is asked for many times at once', async () => {
    const { counts, maker } = counted();
    const clips = createCachedClipMaker({ maker, store: store() });
    const all = await Promise.all(
      Array.from({ length: 50 }, (_, i) => clips.make(flatClip(i % 2))),
    );
    expect(counts.made).toBe(2);
    expect(new Set(all.map((clip) => Buffer.from(clip).toString('hex'))).size).toBe(2);
    await clips.close();
  });

  it('makes no clip that is kept from before, and gives the same bytes', async () => {
    const first = counted();
    const before = createCachedClipMaker({ maker: first.maker, store: store() });
    const made = await before.make(flatClip(7));
    await before.close();
    const second = counted();
    const after = createCachedClipMaker({ maker: second.maker, store: store() });
    expect([...(await after.make(flatClip(7)))]).toEqual([...made]);
    expect(second.counts.made).toBe(0);
    await after.close();
  });

  it('makes a clip anew whose file was spoilt', async () => {
    const { counts, maker } = counted();
    const clips = createCachedClipMaker({ maker, store: store() });
    const made = await clips.make(flatClip(7));
    await writeFile(join(folder, clipHash(flatClip(7))), 'spoilt');
    expect([...(await clips.make(flatClip(7)))]).toEqual([...made]);
    expect(counts.made).toBe(2);
    await clips.close();
  });

  it('fails everybody who waited when the clip fails, and tries again for the next', async () => {
    const { counts, maker } = counted(1);
    const clips = createCachedClipMaker({ maker, store: store() });
    const both = await Promise.allSettled([clips.make(flatClip(7)), clips.make(flatClip(7))]);
    expect(both.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    expect((await clips.make(flatClip(7))).length).toBeGreaterThan(500);
    expect(counts).toEqual({ made: 1, failed: 1 });
    await clips.close();
  });

  it('gives the clip all the same when it cannot be kept, and says so', async () => {
    await writeFile(folder, 'a file where the folder should be');
    const problems: unknown[] = [];
    const { maker } = counted();
    const clips = createCachedClipMaker({
      maker,
      store: store(),
      onProblem: (error) => problems.push(error),
    });
    expect((await clips.make(flatClip(7))).length).toBeGreaterThan(500);
    expect(problems.length).toBe(1);
    await clips.close();
  });

  it('refuses what is out of range and keeps nothing', async () => {
    const { maker } = counted();
    const clips = createCachedClipMaker({ maker, store: store() });
    await expect(clips.make({ frames: [], sound: 'tick' })).rejects.toThrow(RangeError);
    await expect(readdir(folder)).rejects.toThrow('ENOENT');
    await clips.close();
  });
});
