/** A worker that does what it is told: a stand-in for the encoder's thread in tests of the line before it. */
import { parentPort, threadId, workerData } from 'node:worker_threads';

parentPort?.on('message', (job) => {
  if (job === 'exit') process.exit(7);
  if (job === 'throw') throw new TypeError('told to');
  if (job === 'reject') void Promise.reject(new TypeError('told to'));
  if (job === 'fail') parentPort?.postMessage({ failed: 'told to' });
  if (job === 'babble') parentPort?.postMessage('nonsense');
  if (job === 'thread' || job === 'babble')
    parentPort?.postMessage({ bytes: Uint8Array.of(threadId) });
  if (job === 'data') parentPort?.postMessage({ bytes: Uint8Array.of(workerData) });
});
