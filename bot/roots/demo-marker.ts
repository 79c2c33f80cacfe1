import { access, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

const MARKER = 'demo-loaded';

/**
 * Throws away a rehearsal whose demo class was never loaded to the end (stopped in its first seconds): half a class would be
 * all there ever was. Call it with the folder locked.
 */
export async function clearHalfLoaded(folder: string): Promise<void> {
  if (await exists(join(folder, MARKER))) return;
  for (const name of ['database', 'chats.json', 'chats.json.files', 'clock.json']) {
    await rm(join(folder, name), { recursive: true, force: true });
  }
}

/** Notes that the demo class is complete. */
export async function noteDemoLoaded(folder: string): Promise<void> {
  await writeFile(join(folder, MARKER), '');
}

async function exists(file: string): Promise<boolean> {
  try {
    await access(file);
    return true;
  } catch {
    return false;
  }
}
