import { spawnSync } from 'node:child_process';
import { afterAll, describe, expect, it } from 'vitest';
import { createClipMaker } from '../../../../bot/clip/index.ts';
import { flatClip, partClip } from '../support/frames.ts';

const PROGRAM = 'ffmpeg';
const IS_HERE =
  spawnSync(PROGRAM, ['-v', 'error', '-encoders']).stdout?.toString().includes('libx264') ?? false;

describe('an installed ffmpeg', () => {
  const maker = createClipMaker({ ffmpeg: PROGRAM });
  const own = createClipMaker();
  afterAll(() => Promise.all([maker.close(), own.close()]));

  it.skipIf(!IS_HERE)(
    'makes a clip of the same length in no more bytes (skipped without ffmpeg with libx264)',
    async () => {
      const input = { ...partClip('doubles', 5), maxBytes: 1_000_000 };
      const [theirs, ours] = await Promise.all([maker.make(input), own.make(input)]);
      expect(theirs.length).toBeLessThan(ours.length);
      expect(theirs.length).toBeGreaterThan(ours.length / 3);
    },
  );
});

describe('a program that is no encoder', () => {
  it.each(['/nowhere/ffmpeg', 'false', 'true'])('rejects and ends nothing: %s', async (ffmpeg) => {
    const maker = createClipMaker({ ffmpeg });
    await expect(maker.make(flatClip(0))).rejects.toMatchObject({ problem: 'not_drawn' });
    await expect(maker.make(flatClip(0))).rejects.toMatchObject({ problem: 'not_drawn' });
    await maker.close();
  });
});
