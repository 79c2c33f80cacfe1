/** One coded picture or one packet of sound. `duration` is in units of its track's timescale. */
export interface Sample {
  readonly data: Uint8Array;
  readonly duration: number;
  /** Whether a player can begin here. Sound can begin anywhere. */
  readonly sync: boolean;
}

/** One track of a movie. `chunks` lie in the file in turn with those of the other tracks. */
export interface Track {
  readonly kind: 'video' | 'audio';
  /** Units a second. */
  readonly timescale: number;
  /** What a decoder needs to know: the one entry of the sample description box. */
  readonly entry: Uint8Array;
  /** Width and height in pixels; nought for sound. */
  readonly size: number;
  readonly chunks: readonly (readonly Sample[])[];
}

/** All samples of a track, in order. */
export function samplesOf(track: Track): Sample[] {
  return track.chunks.flat();
}

/** Bytes of one chunk. */
export function bytesOf(chunk: readonly Sample[]): number {
  return chunk.reduce((sum, { data }) => sum + data.length, 0);
}
