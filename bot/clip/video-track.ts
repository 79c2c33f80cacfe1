import { heldPicture } from './h264/held-picture.ts';
import { constrained, readSliceSyntax } from './h264/parameter-sets.ts';
import type { CodedStills } from './h264/stills.ts';
import { u32 } from './mp4/box.ts';
import { MOVIE_TIMESCALE } from './mp4/movie.ts';
import { videoEntry } from './mp4/sample-entries.ts';
import type { Sample, Track } from './mp4/track.ts';

/** How long each still stays, in seconds, the pictures a second, and the size in pixels. */
export interface Timing {
  readonly seconds: readonly number[];
  readonly picturesPerSecond: number;
  readonly size: number;
}

/**
 * The pictures of a clip: each still once, as a picture a player can begin at, then held for the rest of its time. One
 * chunk a still.
 *
 * @throws {RangeError} when stills and times differ in number, or the stream cannot be held.
 */
export function videoTrack(stills: CodedStills, timing: Timing): Track {
  const { seconds, picturesPerSecond, size } = timing;
  if (stills.pictures.length !== seconds.length) {
    throw new RangeError(`Got ${stills.pictures.length} stills for ${seconds.length} times.`);
  }
  const sps = constrained(stills.sps);
  const syntax = readSliceSyntax(sps, stills.pps);
  const duration = MOVIE_TIMESCALE / picturesPerSecond;
  const sample = (unit: Uint8Array, sync: boolean): Sample => ({
    data: Buffer.concat([u32(unit.length), unit]),
    duration,
    sync,
  });
  return {
    kind: 'video',
    timescale: MOVIE_TIMESCALE,
    entry: videoEntry({ sps, pps: stills.pps, size }),
    size,
    chunks: stills.pictures.map((picture, i) => {
      const held = Math.round((seconds[i] ?? 0) * picturesPerSecond) - 1;
      const again = Array.from({ length: held }, (_, n) => heldPicture(syntax, n + 1));
      return [sample(picture, true), ...again.map((unit) => sample(unit, false))];
    }),
  };
}
