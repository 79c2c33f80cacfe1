import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { emptyState, type State } from './state.ts';

const COALESCE_MS = 200;
const FORMAT = 1;

/** Writes the state to one JSON file, several changes in one go. */
export interface Saver {
  /** Notes that something changed; the write follows shortly. */
  changed(): void;
  /** Writes now, for the last time, and waits until the file is in place. Throws the write's error. */
  close(): Promise<void>;
}

/** Reads the state, or an empty one when the file is absent. Throws on a file of another kind. */
export async function loadState(dataFile: string | undefined): Promise<State> {
  if (dataFile === undefined) return emptyState();
  const raw = await readFile(dataFile, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
  if (raw === undefined) return emptyState();
  const saved = readSaved(raw);
  if (saved === undefined) {
    throw new Error(
      `${dataFile} is not a rehearsal file of format ${FORMAT}. Move it away to start afresh.`,
    );
  }
  return { ...emptyState(), ...saved };
}

/** The state in a data file; undefined when it is cut short or of another kind. */
function readSaved(raw: string): State | undefined {
  try {
    const saved: { format?: number; state?: State } | null = JSON.parse(raw);
    return saved?.format === FORMAT ? saved.state : undefined;
  } catch {
    return undefined;
  }
}

async function replaceFile(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const temporary = `${path}.writing`;
  await writeFile(temporary, text);
  await rename(temporary, path);
}

/** A saver for `dataFile`; one that does nothing when there is no file. */
export function createSaver(dataFile: string | undefined, state: State): Saver {
  if (dataFile === undefined) return { changed: () => {}, close: async () => {} };
  let timer: NodeJS.Timeout | undefined;
  let isClosed = false;
  let writing: Promise<void> = Promise.resolve();
  const write = (): Promise<void> => {
    clearTimeout(timer);
    timer = undefined;
    const attempt = writing
      .catch(() => {})
      .then(() => replaceFile(dataFile, JSON.stringify({ format: FORMAT, state })));
    writing = attempt;
    return attempt;
  };
  // A failed background write is reported by the one on close, which writes everything again.
  const later = (): void => void write().catch(() => {});
  return {
    changed: () => {
      if (!isClosed) timer ??= setTimeout(later, COALESCE_MS);
    },
    close: () => {
      isClosed = true;
      return write();
    },
  };
}
