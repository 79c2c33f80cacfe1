import { describe, expect, it } from 'vitest';
import { checkClip } from '../../../bot/clip/check-clip.ts';
import { type ClipFrame, usualMaxBytes } from '../../../bot/clip/clip.ts';
import { drawingOf } from '../../../bot/media/drawing.ts';
import { flat, partClip } from './support/frames.ts';

const frame = (change: Partial<ClipFrame> = {}): ClipFrame => ({
  picture: flat(0),
  seconds: 3,
  ...change,
});
const check = (frames: readonly ClipFrame[], maxBytes?: number) => () =>
  checkClip({ frames, sound: 'tick', ...(maxBytes === undefined ? {} : { maxBytes }) });

describe('a clip that cannot be made is refused', () => {
  it.each<[string, () => void, string]>([
    ['no frames', check([]), 'Got 0 frames: a clip has 1 to 44.'],
    ['45 frames', check(Array(45).fill(frame())), 'Got 45 frames: a clip has 1 to 44.'],
    ['a limit of nought', check([frame()], 0), 'Got a limit of 0 bytes: give a number above 0'],
    ['a limit that is no number', check([frame()], Number.NaN), 'Got a limit of NaN bytes'],
    [
      'a wide drawing',
      check([frame(), frame({ picture: drawingOf(480, 360, '') })]),
      'Got 480 x 360 for frame 2: a drawing in a clip is square.',
    ],
    [
      'pixels of another size',
      check([frame({ picture: flat(0, 360) })]),
      'Got 360 x 360 pixels in 518400 bytes for frame 1: pixels in a clip are 480 x 480 in 921600 bytes.',
    ],
    [
      'pixels that do not fill the picture',
      check([frame({ picture: { ...flat(0), pixels: new Uint8Array(4) } })]),
      'Got 480 x 480 pixels in 4 bytes for frame 1',
    ],
  ])('%s', (_, refused, message) => {
    expect(refused).toThrow(RangeError);
    expect(refused).toThrow(message);
  });

  it.each([1.5, 0, -3, 15.5, 2.25, Number.NaN, Number.POSITIVE_INFINITY])(
    'a frame that stays %d seconds',
    (seconds) => {
      const refused = check([frame(), frame({ seconds })]);
      expect(refused).toThrow(RangeError);
      expect(refused).toThrow(
        `Got ${seconds} seconds for frame 2: a frame stays 2 to 15 seconds, in whole or half seconds.`,
      );
    },
  );
});

it('two, two and a half and fifteen seconds are taken, and so are 44 frames', () => {
  expect(check([2, 2.5, 15].map((seconds) => frame({ seconds })))).not.toThrow();
  expect(check(Array(44).fill(frame()), 1)).not.toThrow();
  expect(() => checkClip(partClip('mixed', 20))).not.toThrow();
});

describe('the bytes a clip stays under', () => {
  it('are 50 kB for ten cards and the frames around them', () =>
    expect(usualMaxBytes(12)).toBe(50_000));
  it('are 75 kB for fifteen cards', () => expect(usualMaxBytes(17)).toBe(75_000));
  it('are no fewer than 40 kB', () => expect(usualMaxBytes(1)).toBe(40_000));
  it('are no more than 100 kB', () => expect(usualMaxBytes(44)).toBe(100_000));
});
