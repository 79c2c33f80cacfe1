/** The encoder's thread, but that it dies of a clip with a single frame, as it would of a fault in the encoder. */
import { parentPort } from 'node:worker_threads';

await import('../../../../bot/clip/worker/clip-worker.mjs');
parentPort?.on('message', ({ frames }) => {
  if (frames.length === 1) process.exit(1);
});
