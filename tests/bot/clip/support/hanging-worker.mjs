/** The encoder's thread, but that it never answers, as an encoder caught in a loop would not. */
import { parentPort } from 'node:worker_threads';

parentPort?.on('message', () => undefined);
