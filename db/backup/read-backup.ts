import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { createGunzip } from 'node:zlib';
import { BackupError } from './backup-error.ts';
import { anyBackup, BACKUP_FORMAT, type BackupHeader, backupHeader } from './header.ts';

/** A row of a backup: its table, and the row as JSON text. */
export interface BackupRow {
  readonly table: string;
  readonly json: string;
}

/**
 * Reads a backup to its end and says what is in it.
 *
 * @throws {BackupError} when there is no such file, it is no backup, its format is newer, or it is not whole.
 */
export async function checkBackup(file: string): Promise<BackupHeader> {
  const lines = linesOf(file);
  const header = await headerOf(lines, file);
  const hash = createHash('sha256');
  for await (const text of lines) hash.update(`${text}\n`);
  if (hash.digest('hex') !== header.sha256) throw notWhole(file);
  return header;
}

/** The rows of a backup in their order. Check the backup first: here only their number is seen to. */
export async function* rowsIn(file: string): AsyncGenerator<BackupRow> {
  const lines = linesOf(file);
  const { tables } = await headerOf(lines, file);
  for (const { name, rows } of tables) {
    for (let row = 0; row < rows; row += 1) {
      const { value, done } = await lines.next();
      if (done) throw notWhole(file);
      yield { table: name, json: value };
    }
  }
  if (!(await lines.next()).done) throw notWhole(file);
}

async function headerOf(lines: AsyncGenerator<string, void>, file: string): Promise<BackupHeader> {
  const noBackup = new BackupError(`${file} is no backup of Suppersums. Give the name of one.`);
  const { value } = await lines.next();
  const known = anyBackup.safeParse(parsed(value ?? ''));
  if (!known.success) throw noBackup;
  const { version } = known.data;
  if (version > BACKUP_FORMAT) {
    throw new BackupError(
      `${file} has format ${version}; this release reads formats up to ${BACKUP_FORMAT}. Restore it with a newer release.`,
    );
  }
  const header = backupHeader.safeParse(parsed(value ?? ''));
  if (!header.success) throw notWhole(file);
  return header.data;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function notWhole(file: string): BackupError {
  return new BackupError(
    `${file} is not whole: it was cut off or changed since it was made. Use another backup.`,
  );
}

async function* linesOf(file: string): AsyncGenerator<string, void> {
  const packed = createReadStream(file);
  const text = createGunzip();
  packed.on('error', (error) => text.destroy(error));
  packed.pipe(text);
  text.setEncoding('utf8');
  let rest = '';
  try {
    for await (const chunk of text) {
      const lines = (rest + String(chunk)).split('\n');
      rest = lines.pop() ?? '';
      yield* lines;
    }
  } catch (error) {
    throw unreadable(error, file);
  } finally {
    packed.destroy();
  }
  if (rest !== '') throw notWhole(file);
}

/** What the reading of a file stumbled over, as the operator can mend it. */
function unreadable(error: unknown, file: string): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOENT') return new BackupError(`There is no file ${file}.`);
  if (code === 'EISDIR') return new BackupError(`${file} is a folder. Give the name of a backup.`);
  if (code === 'EACCES') return new BackupError(`${file} may not be read by this user.`);
  const isPlain = error instanceof Error && error.message.includes('incorrect header check');
  if (isPlain) return new BackupError(`${file} is no backup of Suppersums. Give the name of one.`);
  return code.startsWith('Z_') ? notWhole(file) : error;
}
