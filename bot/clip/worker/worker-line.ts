import { Worker } from 'node:worker_threads';
import { ClipError } from '../clip.ts';
import { isReply } from './reply.ts';

/** One worker thread and the jobs that wait for it. */
export interface WorkerLine<Job> {
  /**
   * The worker's answer to a job. Jobs are done one at a time, in order.
   *
   * @throws {ClipError} `not_drawn`, `worker_lost`, `too_slow` or `closed`.
   */
  readonly run: (job: Job) => Promise<Uint8Array>;
  readonly close: () => Promise<void>;
}

/** What the worker runs and how far it is trusted. */
export interface LineOptions {
  readonly entry: URL;
  readonly data?: unknown;
  /** Milliseconds after which a job's worker is stopped. */
  readonly longestMs: number;
  /** Jobs after which a worker is replaced, so that what it holds is given back. */
  readonly recycleAfter: number;
}

interface Waiting<Job> {
  readonly job: Job;
  readonly resolve: (bytes: Uint8Array) => void;
  readonly reject: (error: ClipError) => void;
}

/**
 * A line in front of one worker. The worker starts with the first job. While it is idle it does not keep the process
 * alive. When it dies, only the job it was at is lost; the next job gets a new worker.
 */
export function createWorkerLine<Job>(options: LineOptions): WorkerLine<Job> {
  return new Line<Job>(options);
}

class Line<Job> implements WorkerLine<Job> {
  readonly #options: LineOptions;
  readonly #queue: Waiting<Job>[] = [];
  #current: Waiting<Job> | null = null;
  #worker: Worker | null = null;
  #timer: NodeJS.Timeout | undefined;
  #served = 0;
  #closed = false;

  constructor(options: LineOptions) {
    this.#options = options;
  }

  readonly run = (job: Job): Promise<Uint8Array> =>
    new Promise((resolve, reject) => {
      if (this.#closed) return reject(new ClipError('closed', 'The clip maker is closed.'));
      this.#queue.push({ job, resolve, reject });
      this.#next();
    });

  readonly close = async (): Promise<void> => {
    this.#closed = true;
    const outstanding = this.#queue.splice(0);
    this.#lose(new ClipError('closed', 'The clip maker was closed before the clip was done.'));
    for (const { reject } of outstanding) {
      reject(new ClipError('closed', 'The clip maker was closed before the clip was begun.'));
    }
    await this.#stopWorker();
  };

  #next(): void {
    if (this.#current) return;
    const next = this.#queue.shift();
    if (!next) {
      this.#worker?.unref();
      return;
    }
    this.#current = next;
    this.#worker ??= this.#start();
    this.#worker.ref();
    this.#timer = setTimeout(() => this.#tooSlow(), this.#options.longestMs);
    try {
      this.#worker.postMessage(next.job);
    } catch (cause) {
      this.#lose(new ClipError('not_drawn', 'The clip could not be handed on.', { cause }));
      this.#next();
    }
  }

  #start(): Worker {
    const { entry, data } = this.#options;
    // The entry brings its own loader, so no flag of this process may add a second one.
    const worker = new Worker(entry, { execArgv: [], workerData: data });
    this.#served = 0;
    worker.on('message', (reply: unknown) => this.#answered(worker, reply));
    worker.on('error', (cause) => this.#died(worker, cause));
    worker.on('messageerror', (cause) => this.#died(worker, cause));
    worker.on('exit', (code) => this.#died(worker, new Error(`exit code ${code}`)));
    return worker;
  }

  #answered(worker: Worker, reply: unknown): void {
    const waiting = this.#current;
    if (worker !== this.#worker || !waiting || !isReply(reply)) return;
    clearTimeout(this.#timer);
    this.#current = null;
    this.#served += 1;
    if ('bytes' in reply) waiting.resolve(reply.bytes);
    else {
      const cause = new Error(reply.failed);
      waiting.reject(new ClipError('not_drawn', 'The clip could not be made.', { cause }));
    }
    if (this.#served >= this.#options.recycleAfter) void this.#stopWorker();
    this.#next();
  }

  #died(worker: Worker, cause: unknown): void {
    if (worker !== this.#worker) return;
    void this.#stopWorker();
    this.#lose(new ClipError('worker_lost', 'The encoder stopped at this clip.', { cause }));
    this.#next();
  }

  #tooSlow(): void {
    const { longestMs } = this.#options;
    void this.#stopWorker();
    this.#lose(new ClipError('too_slow', `The clip took more than ${longestMs} ms.`));
    this.#next();
  }

  #lose(error: ClipError): void {
    clearTimeout(this.#timer);
    this.#current?.reject(error);
    this.#current = null;
  }

  async #stopWorker(): Promise<void> {
    const worker = this.#worker;
    this.#worker = null;
    await worker?.terminate();
  }
}
