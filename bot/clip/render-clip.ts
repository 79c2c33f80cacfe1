import { rasterise } from '../media/painter.ts';
import { checkClip } from './check-clip.ts';
import { CLIP_SIZE, type ClipFrame, type ClipInput, usualMaxBytes } from './clip.ts';
import type { StillEncoder } from './h264/stills.ts';
import { MOVIE_TIMESCALE, writeMovie } from './mp4/movie.ts';
import { neutralise } from './neutral.ts';
import { soundTrack } from './sound/sound-track.ts';
import { videoTrack } from './video-track.ts';
import { toYuv420, type Yuv420 } from './yuv.ts';

/** How finely the pictures are coded, and whether the tick that was asked for is kept. */
interface Step {
  readonly qp: number;
  readonly keepsTick: boolean;
}

/**
 * The ways to make a clip, fine to coarse; each takes fewer bytes than the one before. At quantiser 33 digits are clean at their size on a phone; each
 * step saves about a tenth. The tick costs 400 bytes a card and goes before the minute marks of a clock blur. At 42 every card can
 * still be read; the encoder's bytes rise again from 43.
 */
const STEPS: readonly [Step, ...Step[]] = [
  { qp: 33, keepsTick: true },
  { qp: 35, keepsTick: true },
  { qp: 37, keepsTick: true },
  { qp: 39, keepsTick: true },
  { qp: 39, keepsTick: false },
  { qp: 41, keepsTick: false },
  { qp: 42, keepsTick: false },
];

/** Two pictures a second: players seek to half seconds, and a held picture costs about 14 bytes. */
export const PICTURES_PER_SECOND = 2;

/** What the bench changes to measure: everyone else leaves it. */
export interface RenderOptions {
  readonly picturesPerSecond?: number;
}

/**
 * Draws, encodes and packs a clip in the thread that calls it: at the finest step that keeps to `maxBytes`, or at the last one
 * when none does.
 *
 * @throws {RangeError} when the input is out of range.
 */
export async function renderClip(
  input: ClipInput,
  encode: StillEncoder,
  { picturesPerSecond = PICTURES_PER_SECOND }: RenderOptions = {},
): Promise<Uint8Array> {
  checkClip(input);
  const { frames, maxBytes = usualMaxBytes(frames.length) } = input;
  const seconds = frames.map((frame) => frame.seconds);
  const pictures = frames.map(planesOf);
  const duration = seconds.reduce((sum, each) => sum + each, 0) * MOVIE_TIMESCALE;
  const make = async ({ qp, keepsTick }: Step): Promise<Uint8Array> => {
    const stills = await encode(pictures, CLIP_SIZE, qp);
    const video = videoTrack(stills, { seconds, picturesPerSecond, size: CLIP_SIZE });
    const sound = soundTrack(seconds, keepsTick ? input.sound : 'none-but-silent');
    return writeMovie({ duration, tracks: [video, sound] });
  };
  return finestWithin(maxBytes, make);
}

/** The first step is tried first, since most clips fit; the others are halved again and again, so at most four are tried. */
async function finestWithin(
  maxBytes: number,
  make: (step: Step) => Promise<Uint8Array>,
): Promise<Uint8Array> {
  const [first, ...others] = STEPS;
  let clip = await make(first);
  if (clip.length <= maxBytes) return clip;
  let best: Uint8Array | undefined;
  let left: readonly Step[] = others;
  while (left.length > 0) {
    const middle = Math.floor(left.length / 2);
    const step = left[middle];
    if (!step) break;
    clip = await make(step);
    const fits = clip.length <= maxBytes;
    if (fits) best = clip;
    left = fits ? left.slice(0, middle) : left.slice(middle + 1);
  }
  return best ?? clip;
}

function planesOf({ picture }: ClipFrame): Yuv420 {
  return neutralise(toYuv420('svg' in picture ? rasterise(picture, CLIP_SIZE) : picture));
}
