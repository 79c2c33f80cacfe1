import { describe, expect, it } from 'vitest';
import {
  ClipError,
  type ClipInput,
  type ClipMaker,
  type ClipStore,
  createClips,
} from '../../../bot/clip/index.ts';
import type { Log } from '../../../db/index.ts';
import { flatClip } from './support/frames.ts';

const FILE = Uint8Array.of(1, 2, 3);
const LONG_MS = 60_000;
const empty: ClipStore = { get: async () => null, put: async () => undefined };

/** Clips of a maker that ends nothing until it is told to, and what was asked of it and logged. */
function held({ store = empty, soonMs = LONG_MS } = {}) {
  const begun: { input: ClipInput; end: (file: Uint8Array | Error) => void }[] = [];
  const problems: unknown[] = [];
  const warn: Log['warn'] = ({ problem }) => problems.push(problem);
  const maker: ClipMaker = {
    make: (input) =>
      new Promise((resolve, reject) => {
        const end = (file: Uint8Array | Error) =>
          file instanceof Error ? reject(file) : resolve(file);
        begun.push({ input, end });
      }),
    close: async () => undefined,
  };
  const log: Log = { info: () => undefined, warn, error: warn };
  return { clips: createClips({ maker, store, log, soonMs }), begun, problems };
}

/** Lets everything happen that waits for nothing but its turn. */
const turn = () => new Promise((resolve) => setImmediate(resolve));

describe('a clip wanted soon', () => {
  it('is given when it is made', async () => {
    const { clips, begun } = held();
    const clip = clips.soon(flatClip(1));
    await turn();
    begun[0]?.end(FILE);
    expect(await clip).toBe(FILE);
  });

  it('comes from the store without the maker', async () => {
    const { clips, begun } = held({ store: { ...empty, get: async () => FILE } });
    expect(await clips.soon(flatClip(1))).toBe(FILE);
    expect(begun).toEqual([]);
  });

  it('is none when the encoder hangs, and nobody waits for its end', async () => {
    const { clips, problems } = held({ soonMs: 1 });
    expect(await clips.soon(flatClip(1))).toBeNull();
    expect(problems).toEqual(['too_late']);
  });

  it('that came too late is not begun a second time', async () => {
    const { clips, begun } = held({ soonMs: 1 });
    await clips.soon(flatClip(1));
    await clips.soon(flatClip(1));
    expect(begun).toHaveLength(1);
  });

  it('is none at once when two others are before it', async () => {
    const { clips, begun } = held();
    void clips.ahead(flatClip(1));
    void clips.soon(flatClip(2));
    await turn();
    expect(await clips.soon(flatClip(3))).toBeNull();
    expect(begun).toHaveLength(2);
  });

  it('by many at once is one clip, and all of them get it', async () => {
    const { clips, begun } = held();
    const all = Array.from({ length: 30 }, () => clips.soon(flatClip(1)));
    await turn();
    begun[0]?.end(FILE);
    expect(new Set(await Promise.all(all))).toEqual(new Set([FILE]));
    expect(begun).toHaveLength(1);
  });

  it('is none when it fails, which is logged once however many waited, and is tried again', async () => {
    const { clips, begun, problems } = held();
    const both = Promise.all([clips.soon(flatClip(1)), clips.soon(flatClip(1))]);
    await turn();
    begun[0]?.end(new ClipError('worker_lost', 'told to'));
    expect(await both).toEqual([null, null]);
    expect(problems).toEqual(['worker_lost']);
    void clips.soon(flatClip(1));
    await turn();
    expect(begun).toHaveLength(2);
  });

  it('is made all the same when the store cannot be read', async () => {
    const get = () => Promise.reject(new Error('no disk'));
    const { clips, begun } = held({ store: { ...empty, get } });
    const clip = clips.soon(flatClip(1));
    await turn();
    begun[0]?.end(FILE);
    expect(await clip).toBe(FILE);
  });
});

describe('a clip made ahead', () => {
  it.each([
    ['is there', FILE, true, []],
    ['is not there when it fails', new ClipError('not_drawn', 'told to'), false, ['not_drawn']],
    ['cut off by the end of the bot is no problem to log', new ClipError('closed', ''), false, []],
  ])('%s', async (_, file, there, logged) => {
    const { clips, begun, problems } = held();
    const ahead = clips.ahead(flatClip(1));
    await turn();
    begun[0]?.end(file);
    expect(await ahead).toBe(there);
    expect(problems).toEqual(logged);
  });
});
