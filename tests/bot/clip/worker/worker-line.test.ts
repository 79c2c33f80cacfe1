import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ClipError } from '../../../../bot/clip/clip.ts';
import {
  createWorkerLine,
  type LineOptions,
  type WorkerLine,
} from '../../../../bot/clip/worker/worker-line.ts';

const entry = new URL('../support/obedient-worker.mjs', import.meta.url);
const usual: LineOptions = { entry, data: 42, longestMs: 30_000, recycleAfter: 100 };

let line: WorkerLine<string>;
beforeEach(() => {
  line = createWorkerLine(usual);
});
afterEach(() => line.close());

const thread = async () => (await line.run('thread'))[0];
const problemOf = (running: Promise<unknown>) =>
  running.then(
    () => 'none',
    (error: unknown) => (error instanceof ClipError ? error.problem : error),
  );

describe('a line before one worker', () => {
  it('gives each job the answer to it, from one thread', async () => {
    const answers = await Promise.all([line.run('thread'), line.run('data'), line.run('thread')]);
    expect(answers[1]).toEqual(Uint8Array.of(42));
    expect(answers[0]).toEqual(answers[2]);
  });

  it('rejects a job the worker could not do and keeps the worker', async () => {
    const first = await thread();
    const failed = line.run('fail');
    await expect(failed).rejects.toMatchObject({
      problem: 'not_drawn',
      cause: { message: 'told to' },
    });
    expect(await thread()).toBe(first);
  });

  it.each(['exit', 'throw', 'reject'])(
    'loses only the job a worker died of (%s)',
    async (death) => {
      const before = await thread();
      const [lost, next] = await Promise.all([problemOf(line.run(death)), thread()]);
      expect(lost).toBe('worker_lost');
      expect(next).not.toBe(before);
    },
  );

  it('loses each job that kills its worker, and no other', async () => {
    const all = await Promise.all(
      ['exit', 'thread', 'throw', 'exit', 'thread'].map((job) => problemOf(line.run(job))),
    );
    expect(all).toEqual(['worker_lost', 'none', 'worker_lost', 'worker_lost', 'none']);
  });

  it('takes nothing but a reply for an answer', async () => {
    await thread();
    expect((await line.run('babble')).length).toBe(1);
  });

  it('rejects when there is no such worker', async () => {
    const nowhere = createWorkerLine({ ...usual, entry: new URL('nowhere.mjs', entry) });
    expect(await problemOf(nowhere.run('thread'))).toBe('worker_lost');
    expect(await problemOf(nowhere.run('thread'))).toBe('worker_lost');
    await nowhere.close();
  });

  it('rejects a job that a worker cannot be told, and goes on', async () => {
    const untold = createWorkerLine<unknown>(usual);
    await expect(untold.run(() => 'a function')).rejects.toMatchObject({ problem: 'not_drawn' });
    expect((await untold.run('thread')).length).toBe(1);
    await untold.close();
  });
});

it('a job without end is given up, and the jobs after it are done', async () => {
  const impatient = createWorkerLine<string>({ ...usual, longestMs: 4_000 });
  const [first, second] = await Promise.all([
    problemOf(impatient.run('never answer')),
    problemOf(impatient.run('thread')),
  ]);
  expect([first, second]).toEqual(['too_slow', 'none']);
  await impatient.close();
});

describe('a worker that has done its share', () => {
  it('is replaced', async () => {
    const fresh = createWorkerLine<string>({ ...usual, recycleAfter: 2 });
    const threads: unknown[] = [];
    for (let i = 0; i < 4; i += 1) threads.push((await fresh.run('thread'))[0]);
    await fresh.close();
    expect(threads[0]).toBe(threads[1]);
    expect(threads[2]).toBe(threads[3]);
    expect(threads[1]).not.toBe(threads[2]);
  });
});

describe('a closed line', () => {
  it('rejects what was under way, what waited and what comes later', async () => {
    const outstanding = ['never answer', 'thread'].map((job) => problemOf(line.run(job)));
    await line.close();
    expect(await Promise.all(outstanding)).toEqual(['closed', 'closed']);
    expect(await problemOf(line.run('thread'))).toBe('closed');
  });

  it('may be closed again, or before any job', async () => {
    await line.close();
    await expect(line.close()).resolves.toBeUndefined();
  });
});
