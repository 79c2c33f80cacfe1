import { z } from 'zod';

/** The format that this release writes, and the newest one that it reads. */
export const BACKUP_FORMAT = 1;

/** What every format, of today or to come, says of itself. */
export const anyBackup = z.object({ format: z.literal('suppersums-backup'), version: z.int() });

/**
 * The first line of a backup. A backup is a gzip file (RFC 1952) of lines of JSON: this one, then the rows of each table in
 * the order and number given here, each as PostgreSQL's `to_jsonb` spells it. A table comes after those it refers to.
 *
 * `schema` names the migrations the rows fit: how many, and the hash of the last one. `sha256` is of everything after the
 * first line. `madeAt` is when the snapshot was taken. The shape of a version never changes.
 */
export const backupHeader = anyBackup.extend({
  version: z.literal(BACKUP_FORMAT),
  release: z.string(),
  schema: z.object({ migrations: z.int().positive(), hash: z.string() }),
  madeAt: z.iso.datetime(),
  tables: z.array(z.object({ name: z.string(), rows: z.int().nonnegative() })),
  sha256: z.string(),
});

/** See {@link backupHeader}. */
export type BackupHeader = z.infer<typeof backupHeader>;

/** How many rows a backup has in all. */
export function countRows({ tables }: Pick<BackupHeader, 'tables'>): number {
  return tables.reduce((sum, { rows }) => sum + rows, 0);
}
