/** Writes a line of a report. */
export function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

/** The value below which a share of the values lies; NaN when there are none. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** The value in the middle. */
export function median(values: readonly number[]): number {
  return percentile(values, 0.5);
}
