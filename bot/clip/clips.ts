import type { Log } from '../../db/index.ts';
import { ClipError, type ClipInput, type ClipMaker } from './clip.ts';
import { clipHash } from './store/clip-hash.ts';
import type { ClipStore } from './store/clip-store.ts';

/** Clips as the screens use them: a clip that is not there soon is none, and the family sees the picture sheet instead. */
export interface Clips {
  /** The clip, or null when too many are waiting before it, it cannot be made, or it takes too long. Never rejects. */
  readonly soon: (input: ClipInput) => Promise<Uint8Array | null>;
  /** Makes a clip before it is wanted, however long it takes, and says whether it is there. Never rejects. */
  readonly ahead: (input: ClipInput) => Promise<boolean>;
  /** Ends the encoder's thread. */
  readonly close: () => Promise<void>;
}

/** What clips are made of. `maker` looks in `store` first. Left out, `mostWaiting` is 2 clips and `soonMs` 4,000. */
export interface ClipsDeps {
  readonly maker: ClipMaker;
  readonly store: ClipStore;
  readonly log: Log;
  readonly mostWaiting?: number;
  /** Milliseconds a family waits for a clip that is being made. */
  readonly soonMs?: number;
}

/** A clip takes about half a second: with more than this before it, a family would notice the wait. */
const MOST_WAITING = 2;
/** Several clips' time. A tap that waits longer, at an encoder that hangs, would hold up the taps of other families. */
const SOON_MS = 4_000;

/**
 * Puts maker and store together for the screens. A clip wanted by many at once counts as one. What was not there soon is made to
 * its end all the same, for the next who asks. A clip that failed is logged once each time, by its problem only.
 *
 * @example
 * const clips = createClips({ maker: createCachedClipMaker({ maker, store }), store, log });
 * await clips.soon(tenCards); // an MP4 file
 */
export function createClips(deps: ClipsDeps): Clips {
  const { maker, store, log, mostWaiting = MOST_WAITING, soonMs = SOON_MS } = deps;
  const underWay = new Map<string, Promise<Uint8Array | null>>();
  const tryToMake = async (input: ClipInput): Promise<Uint8Array | null> => {
    try {
      return await maker.make(input);
    } catch (error) {
      const problem = error instanceof ClipError ? error.problem : 'failed';
      if (problem !== 'closed') log.warn({ problem }, 'clip_not_made');
      return null;
    }
  };
  const make = (hash: string, input: ClipInput): Promise<Uint8Array | null> => {
    const running = underWay.get(hash);
    if (running) return running;
    const started = tryToMake(input).finally(() => underWay.delete(hash));
    underWay.set(hash, started);
    return started;
  };
  return {
    soon: async (input) => {
      const hash = clipHash(input);
      const kept = await store.get(hash).catch(() => null);
      if (kept) return kept;
      if (underWay.size >= mostWaiting && !underWay.has(hash)) return null;
      const clip = await within(soonMs, make(hash, input));
      if (clip !== 'too late') return clip;
      log.warn({ problem: 'too_late' }, 'clip_not_made');
      return null;
    },
    ahead: async (input) => (await make(clipHash(input), input)) !== null,
    close: maker.close,
  };
}

async function within<T>(milliseconds: number, work: Promise<T>): Promise<T | 'too late'> {
  let timer: NodeJS.Timeout | undefined;
  const end = new Promise<'too late'>((resolve) => {
    timer = setTimeout(() => resolve('too late'), milliseconds);
  });
  try {
    return await Promise.race([work, end]);
  } finally {
    clearTimeout(timer);
  }
}
