import type { Log } from '../../db/index.ts';
import { ClipError, type ClipInput, type ClipMaker } from './clip.ts';
import { clipHash } from './store/clip-hash.ts';
import type { ClipStore } from './store/clip-store.ts';

/** Clips as the screens use them: a clip that is not there soon is none, and the family sees the picture sheet instead. */
export interface Clips {
  /** The clip, or null when too many are waiting before it or it cannot be made. Never rejects. */
  readonly soon: (input: ClipInput) => Promise<Uint8Array | null>;
  /** Makes a clip before it is wanted and says whether it is there. Never rejects. */
  readonly ahead: (input: ClipInput) => Promise<boolean>;
  /** Ends the encoder's thread. */
  readonly close: () => Promise<void>;
}

/** What clips are made of. `maker` looks in `store` first. `mostWaiting` is 2 when left out. */
export interface ClipsDeps {
  readonly maker: ClipMaker;
  readonly store: ClipStore;
  readonly log: Log;
  readonly mostWaiting?: number;
}

/** A clip takes about half a second: with more than this before it, a family would notice the wait. */
const MOST_WAITING = 2;

/**
 * Puts maker and store together for the screens. A clip that failed is logged once each time, by its problem only.
 *
 * @example
 * const clips = createClips({ maker: createCachedClipMaker({ maker, store }), store, log });
 * await clips.soon(tenCards); // an MP4 file
 */
export function createClips(deps: ClipsDeps): Clips {
  const { maker, store, log, mostWaiting = MOST_WAITING } = deps;
  let waiting = 0;
  const make = async (input: ClipInput): Promise<Uint8Array | null> => {
    waiting += 1;
    try {
      return await maker.make(input);
    } catch (error) {
      log.warn({ problem: error instanceof ClipError ? error.problem : 'failed' }, 'clip_not_made');
      return null;
    } finally {
      waiting -= 1;
    }
  };
  return {
    soon: async (input) => {
      const kept = await store.get(clipHash(input)).catch(() => null);
      if (kept) return kept;
      return waiting < mostWaiting ? make(input) : null;
    },
    ahead: async (input) => (await make(input)) !== null,
    close: maker.close,
  };
}
