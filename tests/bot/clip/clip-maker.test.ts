import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { ClipError, createClipMaker } from '../../../bot/clip/index.ts';
import { flat, flatClip, partClip, partFrames } from './support/frames.ts';

const maker = createClipMaker();
afterAll(() => maker.close());

const HOOKED = ['uncaughtException', 'unhandledRejection'] as const;
const listeners = () => HOOKED.map((event) => process.listenerCount(event));

describe('a clip', () => {
  it('has the same bytes from the same and from another maker', async () => {
    const other = createClipMaker();
    const input = partClip('mixed', 5);
    const [first, second, third] = await Promise.all([
      maker.make(input),
      maker.make(input),
      other.make(structuredClone(input)),
    ]);
    expect(Buffer.from(first).equals(second)).toBe(true);
    expect(Buffer.from(first).equals(third)).toBe(true);
    await other.close();
  });

  it('of a drawing and of its pixels alike is an MP4 file', async () => {
    const [drawing] = partFrames('sums', 3);
    const frames = [{ picture: flat(200), seconds: 2 }, ...(drawing ? [drawing] : [])];
    const clip = await maker.make({ frames, sound: 'tick' });
    expect(Buffer.from(clip.subarray(4, 12)).toString()).toBe('ftypisom');
  });

  it('leaves the process-wide handlers of this process as they were', async () => {
    const before = listeners();
    await maker.make(flatClip(0, 255));
    expect(listeners()).toEqual(before);
  });

  it('is made while this thread goes on', async () => {
    let turns = 0;
    let made = false;
    const making = maker.make(partClip('clocks', 10)).finally(() => {
      made = true;
    });
    while (!made) {
      await new Promise(setImmediate);
      turns += 1;
    }
    await making;
    expect(turns).toBeGreaterThan(20);
  });

  it('that is out of range is refused before a thread is troubled', async () => {
    const nowhere = createClipMaker({ entry: new URL('file:///nowhere.mjs') });
    await expect(nowhere.make({ frames: [], sound: 'tick' })).rejects.toThrow(RangeError);
    await nowhere.close();
  });

  it('that cannot be drawn rejects without saying what is on it, and the next one is made', async () => {
    const broken = { svg: '<svg>double 7', width: 480, height: 480 };
    const failed = maker.make({ frames: [{ picture: broken, seconds: 2 }], sound: 'tick' });
    await expect(failed).rejects.toThrow(ClipError);
    await expect(failed).rejects.toMatchObject({
      problem: 'not_drawn',
      message: 'The clip could not be made.',
    });
    expect((await maker.make(flatClip(9))).length).toBeGreaterThan(500);
  });

  it('rejects when the thread dies at it', async () => {
    const entry = new URL('./support/dying-worker.mjs', import.meta.url);
    const dying = createClipMaker({ entry });
    await expect(dying.make(flatClip(0))).rejects.toMatchObject({ problem: 'worker_lost' });
    expect((await dying.make(flatClip(0, 0))).length).toBeGreaterThan(500);
    await dying.close();
  });
});

describe('the bytes of a clip', () => {
  it.each(['doubles', 'clocks'] as const)(
    'stay under 50 kB for ten cards, 75 kB for fifteen and 100 kB for twenty: %s',
    async (kind) => {
      const clips = [10, 15, 20].map((cards) => maker.make(partClip(kind, cards)));
      const [ten, fifteen, twenty] = (await Promise.all(clips)).map(({ length }) => length);
      expect(ten).toBeLessThanOrEqual(50_000);
      expect(fifteen).toBeLessThanOrEqual(75_000);
      expect(twenty).toBeLessThanOrEqual(100_000);
    },
  );

  it('are as few as asked, and more is spent when more is allowed', async () => {
    const input = partClip('doubles', 10);
    const [few, many] = await Promise.all(
      [45_000, 1_000_000].map((maxBytes) => maker.make({ ...input, maxBytes })),
    );
    expect(few?.length).toBeLessThanOrEqual(45_000);
    expect(many?.length).toBeGreaterThan(50_000);
  });

  it('are what the coarsest picture takes when nothing is small enough', async () => {
    const [one, two] = await Promise.all(
      [1, 2].map((maxBytes) => maker.make({ ...partClip('sums', 3), maxBytes })),
    );
    expect(one?.length).toBeGreaterThan(2);
    expect(one).toEqual(two);
  });
});

it('an idle maker that was never closed lets its process end', async () => {
  const script = new URL('./support/make-one.ts', import.meta.url).pathname;
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', script]);
  expect(Number(stdout)).toBeGreaterThan(500);
});
