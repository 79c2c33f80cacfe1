import type { BackupReport, RestoreReport } from '../roots/backups.ts';

/**
 * What is in a backup, in one line.
 *
 * @example
 * backupLine(report); // '1,204 rows of 31 tables, 86 kB, made at 2026-09-14T09:00:00.000Z by release 0.1.0'
 */
export function backupLine({ rows, tables, bytes, madeAt, release }: BackupReport): string {
  const kilobytes = Math.max(1, Math.round(bytes / 1000));
  return `${grouped(rows)} rows of ${tables.length} tables, ${grouped(kilobytes)} kB, made at ${madeAt} by release ${release}`;
}

/** What a restore or a move came to. */
export function restoredText({ backup, upgraded, erased, unknown }: RestoreReport): string {
  return [
    `${grouped(backup.rows)} rows are in their new place${upgraded ? ', brought up to this release' : ''}.`,
    unknown === 0
      ? null
      : `${unknown} messages may or may not have left before: they are not sent again.`,
    erased === 0 ? null : `${erased} children that were erased since were erased again.`,
  ]
    .filter((line) => line !== null)
    .join('\n');
}

function grouped(value: number): string {
  return value.toLocaleString('en');
}
