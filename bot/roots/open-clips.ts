import { type Log, type Meter, noMeter, problemOf } from '../../db/index.ts';
import {
  type Clips,
  createCachedClipMaker,
  createClipMaker,
  createClipStore,
  createClips,
} from '../clip/index.ts';
import { timedMaker } from './timed.ts';

/** About five thousand clips; the oldest go first. An evening of a thousand children with different cards fills it. */
const MOST_BYTES = 250_000_000;

/** What is not the usual: `ffmpeg` is a program to use instead of the encoder that we bring. */
export interface ClipsOptions {
  readonly ffmpeg?: string | undefined;
  readonly meter?: Meter;
}

/** Clips kept in a folder; the encoder starts with the first one that is not there. */
export function openClips(
  folder: string,
  log: Log,
  { ffmpeg, meter = noMeter }: ClipsOptions = {},
): Clips {
  const store = createClipStore({ folder, maxBytes: MOST_BYTES });
  const onProblem = (error: unknown) =>
    log.warn({ problem: problemOf(error) }, 'clip_store_failed');
  const maker = createCachedClipMaker({
    maker: timedMaker(createClipMaker(ffmpeg === undefined ? {} : { ffmpeg }), meter),
    store,
    onProblem,
  });
  return createClips({ maker, store, log });
}
