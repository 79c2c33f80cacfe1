import { expect, it } from 'vitest';
import { LONGEST_STOP_MS, stopInTime } from '../../../bot/roots/stop-in-time.ts';

const never = () => new Promise<never>(() => {});

it('a stop that ends by itself is not cut short, and nothing goes on waiting for it', async () => {
  let waiting: AbortSignal | undefined;
  const sleep = (_ms: number, signal?: AbortSignal) => {
    waiting = signal;
    return never();
  };
  expect(await stopInTime(async () => {}, { sleep })).toBe(true);
  expect(waiting?.aborted).toBe(true);
});

it('a stop that hangs is cut short within ten seconds', async () => {
  const waits: number[] = [];
  const sleep = async (ms: number) => void waits.push(ms);
  expect(await stopInTime(never, { sleep })).toBe(false);
  expect(waits).toEqual([LONGEST_STOP_MS]);
  expect(LONGEST_STOP_MS).toBeLessThan(10_000);
});

it('a stop that fails says so', async () => {
  const fails = () => Promise.reject(new Error('no connection'));
  await expect(stopInTime(fails, { sleep: never })).rejects.toThrow('no connection');
});
