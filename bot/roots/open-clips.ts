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

/** Clips kept in a folder; the encoder starts with the first one that is not there. `ffmpeg` is a program to use instead of it. */
export function openClips(folder: string, log: Log, ffmpeg?: string): Clips {
  const store = createClipStore({ folder, maxBytes: MOST_BYTES });
  const onProblem = (error: unknown) =>
    log.warn({ problem: problemOf(error) }, 'clip_store_failed');
  const maker = createCachedClipMaker({
    maker: createClipMaker(ffmpeg === undefined ? {} : { ffmpeg }),
    store,
    onProblem,
  });
  return createClips({ maker, store, log });
}
