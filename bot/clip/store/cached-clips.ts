import { checkClip } from '../check-clip.ts';
import type { ClipInput, ClipMaker } from '../clip.ts';
import { clipHash } from './clip-hash.ts';
import type { ClipStore } from './clip-store.ts';

/** A maker, and where its clips are kept. `onProblem` hears when the store fails; the clip is made and given all the same. */
export interface CachedClipsOptions {
  readonly maker: ClipMaker;
  readonly store: ClipStore;
  readonly onProblem?: (error: unknown) => void;
}

/**
 * A maker that makes each clip once: it looks in the store first, and a clip asked for while it is being made is waited
 * for. A clip that could not be made is not remembered, so the next request tries again.
 *
 * @example
 * const clips = createCachedClipMaker({ maker, store });
 * await Promise.all([clips.make(tenCards), clips.make(tenCards)]); // made once
 */
export function createCachedClipMaker(options: CachedClipsOptions): ClipMaker {
  const { maker, store, onProblem = () => undefined } = options;
  const underWay = new Map<string, Promise<Uint8Array>>();
  const guarded = async <T>(work: Promise<T>, otherwise: T): Promise<T> => {
    try {
      return await work;
    } catch (error) {
      onProblem(error);
      return otherwise;
    }
  };
  const obtain = async (hash: string, input: ClipInput): Promise<Uint8Array> => {
    const kept = await guarded(store.get(hash), null);
    if (kept) return kept;
    const clip = await maker.make(input);
    await guarded(store.put(hash, clip), undefined);
    return clip;
  };
  return {
    make: async (input) => {
      checkClip(input);
      const hash = clipHash(input);
      const running = underWay.get(hash);
      if (running) return running;
      const started = obtain(hash, input).finally(() => underWay.delete(hash));
      underWay.set(hash, started);
      return started;
    },
    close: maker.close,
  };
}
