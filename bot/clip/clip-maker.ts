import { checkClip } from './check-clip.ts';
import type { ClipInput, ClipMaker } from './clip.ts';
import type { ClipWorkerData } from './worker/serve-clips.ts';
import { createWorkerLine } from './worker/worker-line.ts';

/** How clips are made. Everything has a default. */
export interface ClipMakerOptions extends ClipWorkerData {
  /** Milliseconds after which a clip is given up. */
  readonly longestMs?: number;
  /** Clips after which the encoder's thread is replaced. */
  readonly recycleAfter?: number;
  /** Where the encoder's thread begins. */
  readonly entry?: URL;
}

const ENTRY = new URL('./worker/clip-worker.mjs', import.meta.url);
/** A clip takes well under a second, and some seconds on a machine that has ten other things to do. */
const LONGEST_MS = 60_000;
const RECYCLE_AFTER = 500;

/**
 * Makes clips in a thread of its own, so that the bot goes on answering. Nothing is started before the first clip.
 *
 * @example
 * const maker = createClipMaker();
 * const clip = await maker.make({ frames: [{ picture: drawing, seconds: 3 }], sound: 'tick' }); // an MP4 file of 3 seconds
 * await maker.close();
 */
export function createClipMaker(options: ClipMakerOptions = {}): ClipMaker {
  const { entry = ENTRY, longestMs = LONGEST_MS, recycleAfter = RECYCLE_AFTER, ...data } = options;
  const line = createWorkerLine<ClipInput>({ entry, data, longestMs, recycleAfter });
  return {
    make: async (input) => {
      checkClip(input);
      return line.run(input);
    },
    close: line.close,
  };
}
