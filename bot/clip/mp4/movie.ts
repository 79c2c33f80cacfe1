import { ascii, box, fullBox, u16, u32, zeros } from './box.ts';
import { bytesOf, type Track } from './track.ts';
import { trackBox, UNIT_MATRIX } from './track-box.ts';

/** Units a second of a movie's own times. */
export const MOVIE_TIMESCALE = 1000;

/** Tracks of one length. All have the same number of chunks. `duration` is in thousandths of a second. */
export interface Movie {
  readonly duration: number;
  readonly tracks: readonly Track[];
}

const NORMAL_RATE = 0x10000;
const FULL_VOLUME = 0x100;

/**
 * Writes an MP4 file: type, movie box, then the media, so that a player can begin before it has the whole file. All times
 * of making are nought: equal movies are equal bytes. Source: ISO/IEC 14496-12; ISO/IEC 14496-14 for the brand `mp41`.
 *
 * @throws {RangeError} when the tracks differ in their number of chunks.
 */
export function writeMovie({ duration, tracks }: Movie): Uint8Array {
  const turns = tracks[0]?.chunks.length ?? 0;
  if (tracks.some(({ chunks }) => chunks.length !== turns)) {
    throw new RangeError('The tracks of a movie need the same number of chunks.');
  }
  const type = box('ftyp', ascii('isom'), u32(0x200), ascii('isomiso2avc1mp41'));
  const movieBox = (mediaAt: number) => {
    const offsets = offsetsFrom(mediaAt, tracks, turns);
    const boxes = tracks.map((track, i) =>
      trackBox(track, { id: i + 1, duration, offsets: offsets[i] ?? [] }),
    );
    return box('moov', movieHeader(duration, tracks.length + 1), ...boxes);
  };
  // The offsets have a fixed width, so a first draft tells how long the movie box will be.
  const mediaAt = type.length + movieBox(0).length + 8;
  return Buffer.concat([type, movieBox(mediaAt), box('mdat', ...mediaOf(tracks, turns))]);
}

function movieHeader(duration: number, nextTrack: number): Buffer {
  return fullBox(
    'mvhd',
    {},
    u32(0, 0, MOVIE_TIMESCALE, duration, NORMAL_RATE),
    u16(FULL_VOLUME),
    zeros(10),
    UNIT_MATRIX,
    zeros(24),
    u32(nextTrack),
  );
}

/** Offsets of each track's chunks when all chunks lie in turn from `mediaAt`. */
function offsetsFrom(mediaAt: number, tracks: readonly Track[], turns: number): number[][] {
  const offsets: number[][] = tracks.map(() => []);
  let at = mediaAt;
  for (let turn = 0; turn < turns; turn += 1) {
    for (const [i, { chunks }] of tracks.entries()) {
      offsets[i]?.push(at);
      at += bytesOf(chunks[turn] ?? []);
    }
  }
  return offsets;
}

function mediaOf(tracks: readonly Track[], turns: number): Uint8Array[] {
  const inTurn = Array.from({ length: turns }, (_, turn) =>
    tracks.flatMap(({ chunks }) => (chunks[turn] ?? []).map(({ data }) => data)),
  );
  return inTurn.flat();
}
