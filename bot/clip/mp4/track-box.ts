import { ascii, box, fullBox, u16, u32, zeros } from './box.ts';
import { sampleTable } from './sample-table.ts';
import { samplesOf, type Track } from './track.ts';

/** Nothing turned and nothing scaled: the unit matrix of track and movie header. */
export const UNIT_MATRIX: Buffer = u32(0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000);

const UNDETERMINED_LANGUAGE = 0x55c4;
const ENABLED_AND_IN_MOVIE = 3;
const SELF_CONTAINED = 1;
const FULL_VOLUME = 0x100;

/** How a track stands in its movie. `duration` is the movie's, in units of the movie's timescale. */
export interface Place {
  readonly id: number;
  readonly duration: number;
  /** Where each chunk of the track begins in the file. */
  readonly offsets: readonly number[];
}

/**
 * The track box. Its edit list plays the track from its first sample for exactly the movie's duration, so the last packet
 * of sound, which runs past the last picture, does not make the movie longer. Source: ISO/IEC 14496-12, 8.3, 8.4 and 8.6.6.
 */
export function trackBox(track: Track, { id, duration, offsets }: Place): Buffer {
  const video = track.kind === 'video';
  const header = fullBox(
    'tkhd',
    { flags: ENABLED_AND_IN_MOVIE },
    u32(0, 0, id, 0, duration),
    zeros(8),
    u16(0, 0, video ? 0 : FULL_VOLUME, 0),
    UNIT_MATRIX,
    u16(track.size, 0, track.size, 0),
  );
  const edit = box('edts', fullBox('elst', {}, u32(1, duration, 0), u16(1, 0)));
  return box('trak', header, edit, mediaBox(track, offsets));
}

function mediaBox(track: Track, offsets: readonly number[]): Buffer {
  const length = samplesOf(track).reduce((sum, { duration }) => sum + duration, 0);
  const video = track.kind === 'video';
  return box(
    'mdia',
    fullBox('mdhd', {}, u32(0, 0, track.timescale, length), u16(UNDETERMINED_LANGUAGE, 0)),
    fullBox(
      'hdlr',
      {},
      zeros(4),
      ascii(video ? 'vide' : 'soun'),
      zeros(12),
      ascii(`${track.kind}\0`),
    ),
    box(
      'minf',
      video ? fullBox('vmhd', { flags: 1 }, zeros(8)) : fullBox('smhd', {}, zeros(4)),
      box('dinf', fullBox('dref', {}, u32(1), fullBox('url ', { flags: SELF_CONTAINED }))),
      sampleTable(track, offsets),
    ),
  );
}
