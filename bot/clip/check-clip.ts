import {
  CLIP_SIZE,
  type ClipFrame,
  type ClipInput,
  LONGEST_SECONDS,
  MOST_FRAMES,
  SHORTEST_SECONDS,
} from './clip.ts';

/**
 * Refuses a clip that cannot be made, before any work is done.
 *
 * @throws {RangeError} when there is no frame or too many, a time is out of range or no half second, or a picture has another size.
 * @example
 * checkClip({ frames: [], sound: 'tick' }); // throws 'Got 0 frames: a clip has 1 to 44.'
 */
export function checkClip({ frames, maxBytes }: ClipInput): void {
  if (frames.length < 1 || frames.length > MOST_FRAMES) {
    throw new RangeError(`Got ${frames.length} frames: a clip has 1 to ${MOST_FRAMES}.`);
  }
  if (maxBytes !== undefined && !(maxBytes > 0)) {
    throw new RangeError(`Got a limit of ${maxBytes} bytes: give a number above 0, or none.`);
  }
  for (const [index, frame] of frames.entries()) checkFrame(frame, index + 1);
}

function checkFrame({ picture, seconds }: ClipFrame, position: number): void {
  if (!(seconds >= SHORTEST_SECONDS && seconds <= LONGEST_SECONDS) || seconds % 0.5 !== 0) {
    throw new RangeError(
      `Got ${seconds} seconds for frame ${position}: a frame stays ${SHORTEST_SECONDS} to ${LONGEST_SECONDS} seconds, in whole or half seconds.`,
    );
  }
  const { width, height } = picture;
  if ('svg' in picture) {
    if (width === height && width > 0) return;
    throw new RangeError(
      `Got ${width} x ${height} for frame ${position}: a drawing in a clip is square.`,
    );
  }
  const bytes = CLIP_SIZE * CLIP_SIZE * 4;
  if (width === CLIP_SIZE && height === CLIP_SIZE && picture.pixels.length === bytes) return;
  throw new RangeError(
    `Got ${width} x ${height} pixels in ${picture.pixels.length} bytes for frame ${position}: pixels in a clip are ${CLIP_SIZE} x ${CLIP_SIZE} in ${bytes} bytes.`,
  );
}
