import { type Log, problemOf } from '../../db/index.ts';
import {
  type Clips,
  createCachedClipMaker,
  createClipMaker,
  createClipStore,
  createClips,
} from '../clip/index.ts';

/** About five thousand clips; the oldest go first. An evening of a thousand children with different cards fills it. */
const MOST_BYTES = 250_000_000;

/** Clips kept in a folder; the encoder starts with the first one that is not there. */
export function openClips(folder: string, log: Log): Clips {
  const store = createClipStore({ folder, maxBytes: MOST_BYTES });
  const onProblem = (error: unknown) =>
    log.warn({ problem: problemOf(error) }, 'clip_store_failed');
  const maker = createCachedClipMaker({ maker: createClipMaker(), store, onProblem });
  return createClips({ maker, store, log });
}
