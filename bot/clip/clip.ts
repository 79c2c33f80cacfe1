import type { Drawing } from '../media/drawing.ts';
import type { Raster } from '../media/painter.ts';

/** Width and height of every clip, in pixels: whole blocks of 16, and sharp on a phone held upright. */
export const CLIP_SIZE = 480;

/** How long one frame may stay, in seconds. Half seconds are allowed, since a clip has two pictures a second. */
export const SHORTEST_SECONDS = 2;
export const LONGEST_SECONDS = 15;

/** The most frames one clip may have: twenty cards, a frame before and one after, twice over. */
export const MOST_FRAMES = 44;

/**
 * Bytes a clip of so many frames stays under when nothing else is asked. Ten cards between two more frames get 50 kB, so that an
 * evening of five such parts takes 250 kB of a family's data. No clip gets less than 40 kB, so that a short part need not
 * be coarse, nor more than 100 kB, from where on the chat service slows uploads (as measured by others; the service promises nothing).
 *
 * @example
 * usualMaxBytes(12); // => 50000
 */
export function usualMaxBytes(frames: number): number {
  return Math.min(100_000, Math.max(40_000, 5_000 * frames - 10_000));
}

/** What is heard. There is always a sound track: without one, some clients loop the clip as an animation with no pause. */
export type ClipSound = 'none-but-silent' | 'tick';

/** One still of a clip: a square drawing, or 480 x 480 pixels, and how long it stays. Transparency is ignored. */
export interface ClipFrame {
  readonly picture: Drawing | Raster;
  readonly seconds: number;
}

/** A part's cards in order. `maxBytes` is what the clip should stay under (`usualMaxBytes` when left out); detail and at last the tick are given up to get there. */
export interface ClipInput {
  readonly frames: readonly ClipFrame[];
  readonly sound: ClipSound;
  readonly maxBytes?: number;
}

/** Makes clips. A clip that cannot be made rejects, and the caller sends the picture sheet instead. */
export interface ClipMaker {
  /**
   * The finished MP4 file. Equal input gives equal bytes.
   *
   * @throws {RangeError} when the input is out of range; nothing was tried then.
   * @throws {ClipError} when the clip could not be made.
   */
  readonly make: (input: ClipInput) => Promise<Uint8Array>;
  /** Ends the maker. What is still under way rejects as `closed`. */
  readonly close: () => Promise<void>;
}

/**
 * Why a clip was not made.
 *
 * - `not_drawn`: a frame could not be drawn or encoded; the same input will fail again
 * - `worker_lost`: the encoder stopped while it worked on this clip; another try may succeed
 * - `too_slow`: the encoder was stopped because this clip took too long
 * - `closed`: the maker was closed before the clip was done
 */
export type ClipProblem = 'not_drawn' | 'worker_lost' | 'too_slow' | 'closed';

/** A clip could not be made. The message never holds what is on a card; the `cause`, which no log should take, may. */
export class ClipError extends Error {
  override readonly name = 'ClipError';
  readonly problem: ClipProblem;

  constructor(problem: ClipProblem, message: string, options?: ErrorOptions) {
    super(message, options);
    this.problem = problem;
  }
}
