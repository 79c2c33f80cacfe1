import { mkdir, readdir } from 'node:fs/promises';
import { OperatorError } from '../roots/failure.ts';

/**
 * Makes sure that a folder may be written to and holds nothing but what an earlier run of the same command left there: `own` are
 * the names. @throws {OperatorError} otherwise; somebody's files are never replaced.
 */
export async function useFolder(folder: string, own: readonly string[]): Promise<void> {
  const names = await listed(folder);
  const foreign = names.find((name) => !own.includes(name));
  if (foreign === undefined) return;
  throw new OperatorError(
    `${folder} holds something else already (${foreign}). Name an empty folder, or a new one.`,
  );
}

async function listed(folder: string): Promise<string[]> {
  try {
    await mkdir(folder, { recursive: true });
    return await readdir(folder);
  } catch {
    throw new OperatorError(`Cannot use ${folder} as a folder. Is it a file, or not yours?`);
  }
}
