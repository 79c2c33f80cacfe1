import type { Log } from '../../db/index.ts';
import {
  type Clips,
  createCachedClipMaker,
  createClipMaker,
  createClipStore,
  createClips,
} from '../clip/index.ts';

/** About five thousand clips: a school's term of evenings, as far as they differ. */
const MOST_BYTES = 250_000_000;

/** Clips kept in a folder; the encoder starts with the first one that is not there. */
export function openClips(folder: string, log: Log): Clips {
  const store = createClipStore({ folder, maxBytes: MOST_BYTES });
  const onProblem = () => log.warn({}, 'clip_store_failed');
  const maker = createCachedClipMaker({ maker: createClipMaker(), store, onProblem });
  return createClips({ maker, store, log });
}
