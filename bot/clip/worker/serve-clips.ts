import { parentPort, workerData } from 'node:worker_threads';
import type { ClipInput } from '../clip.ts';
import { encodeStills } from '../h264/encode-stills.ts';
import { ffmpegEncoder } from '../h264/ffmpeg-encoder.ts';
import type { StillEncoder } from '../h264/stills.ts';
import { type RenderOptions, renderClip } from '../render-clip.ts';
import type { Reply } from './reply.ts';

/** What a worker is told when it starts. `ffmpeg` is the path of an installed program to encode with instead of our own. */
export interface ClipWorkerData extends RenderOptions {
  readonly ffmpeg?: string;
}

const { ffmpeg, ...options }: ClipWorkerData = workerData;
const encoder: StillEncoder = ffmpeg === undefined ? encodeStills : ffmpegEncoder(ffmpeg);

async function answer(input: ClipInput): Promise<Reply> {
  try {
    return { bytes: await renderClip(input, encoder, options) };
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }
}

parentPort?.on('message', async (input: ClipInput) => {
  parentPort?.postMessage(await answer(input));
});
