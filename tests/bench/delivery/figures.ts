export { median, percentile, say } from '../flood/figures.ts';

/** Milliseconds that some work takes, by the machine's clock. */
export async function timed<T>(work: () => Promise<T>): Promise<{ ms: number; result: T }> {
  const start = performance.now();
  const result = await work();
  return { ms: performance.now() - start, result };
}

/** Waits for so many milliseconds. */
export function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}

/** A figure of a report, with so many places. */
export function fixed(value: number, places = 1): string {
  return value.toFixed(places);
}
