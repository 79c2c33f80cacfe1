import { sql } from 'drizzle-orm';
import { readMigrationFiles } from 'drizzle-orm/migrator';
import { z } from 'zod';
import type { Db } from '../connection/db.ts';
import { BackupError } from './backup-error.ts';
import type { BackupHeader } from './header.ts';
import { rawRows } from './raw-rows.ts';

/** Which migrations some rows fit: how many, and the hash of the last one. */
export type SchemaVersion = BackupHeader['schema'];

const applied = z.object({ hash: z.string() });

/** The version of an open database. */
export async function schemaVersionOf(db: Db): Promise<SchemaVersion> {
  const rows = await rawRows(
    db,
    sql`select hash from drizzle.__drizzle_migrations order by created_at`,
    applied,
  );
  return { migrations: rows.length, hash: rows.at(-1)?.hash ?? '' };
}

/**
 * Whether rows of a version can be put in as they are, or have to be brought up to this release's schema first.
 *
 * @throws {BackupError} when they are newer than this release, or fit no release before it.
 */
export function fitOf(
  { schema, release }: Pick<BackupHeader, 'schema' | 'release'>,
  migrationsFolder: string,
): 'same' | 'older' {
  const known = readMigrationFiles({ migrationsFolder });
  if (schema.migrations > known.length) {
    throw new BackupError(
      `The backup was made by Suppersums ${release}, whose database has ${schema.migrations} steps; this release knows ${known.length}. Restore it with release ${release} or a newer one.`,
    );
  }
  if (known[schema.migrations - 1]?.hash !== schema.hash) {
    throw new BackupError(
      `The backup was made by a build of Suppersums ${release} whose database is not one of this release’s earlier ones. Restore it with the very build that made it.`,
    );
  }
  return schema.migrations === known.length ? 'same' : 'older';
}
