import { Presets, SingleBar } from 'cli-progress';
import type { Cli } from './cli.ts';

/**
 * Runs long work with a bar on the error output that says how much is done of what. No bar is drawn for a script: with --json,
 * or where the error output is no terminal.
 *
 * @example
 * await withProgress(cli, { json: false, what: 'children' }, (done) => rebuildAll(store, done));
 */
export async function withProgress<T>(
  { terminal }: Pick<Cli, 'terminal'>,
  { json, what }: { json: boolean; what: string },
  work: (onProgress: (done: number, all: number) => void) => Promise<T>,
): Promise<T> {
  if (json || !terminal) return work(() => {});
  const bar = new SingleBar(
    { format: `[{bar}] {value} of {total} ${what}`, stream: terminal, clearOnComplete: true },
    Presets.legacy,
  );
  let begun = false;
  try {
    return await work((done, all) => {
      if (!begun) bar.start(all, done);
      begun = true;
      bar.setTotal(all);
      bar.update(done);
    });
  } finally {
    if (begun) bar.stop();
  }
}
