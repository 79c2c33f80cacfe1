/** Milliseconds of one core that some work took, in all threads of this process: other programs on the machine do not count. */
export async function coreMs(work: () => Promise<unknown>): Promise<number> {
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** The middle of some figures. */
export function median(figures: readonly number[]): number {
  const sorted = figures.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Memory of this process with all its threads, in MB. */
export function residentMb(): number {
  return process.memoryUsage().rss / 1e6;
}

/** Writes a line. */
export function say(line = ''): void {
  process.stdout.write(`${line}\n`);
}

/** Writes rows in columns, the first to the left and the others to the right. */
export function table(rows: readonly (readonly (string | number)[])[]): void {
  const texts = rows.map((row) => row.map(String));
  const widths = (texts[0] ?? []).map((_, i) =>
    Math.max(...texts.map((row) => row[i]?.length ?? 0)),
  );
  for (const row of texts) {
    const cells = row.map((cell, i) =>
      i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0),
    );
    say(`  ${cells.join('  ')}`);
  }
  say();
}
