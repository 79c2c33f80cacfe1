import { createHash } from 'node:crypto';
import {
  AppError,
  findTeacherByChat,
  getClass,
  listChildren,
  listClasses,
  MAX_CHILDREN,
  type TeacherScope,
} from '../../db/index.ts';
import type { BotDeps } from '../deps.ts';
import {
  firstRow,
  type PickedColumn,
  pickColumn,
  widthOf,
} from '../input/class-list/pick-column.ts';
import { readTable } from '../input/class-list/read-table.ts';
import { TABLE_LIMITS, type Table, type TableProblem } from '../input/class-list/table.ts';
import { readRoster } from '../input/roster.ts';
import { toChildren } from '../screens/children-screens.ts';
import { type FileList, fileClassesScreen, fileListScreen } from '../screens/class-file-screens.ts';
import { badFile, type ColumnName } from '../texts/class-file.ts';
import { noFiles } from '../texts/general.ts';
import { noClass } from '../texts/teacher.ts';
import { expect, expected, type Wish } from './expectations.ts';
import type { Typed } from './say.ts';

/** What is looked at of a document as it was sent. The service does not always say how large it is. */
export interface SentFile {
  readonly file_id: string;
  readonly file_size?: number;
}

/**
 * Takes a class list that a teacher sent as a file. With several classes it asks which one, unless the children of one were
 * asked for; then it shows what would be added. Only the nicknames shown wait to be confirmed: the file itself, which may hold
 * more than we want to know, is kept nowhere and is fetched anew when another column is wanted.
 */
export async function classFile(message: Typed, file: SentFile): Promise<void> {
  const { deps, userId, reply } = message;
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) return reply(noFiles());
  const { file_id: fileId, file_size: bytes = 0 } = file;
  if (bytes > TABLE_LIMITS.bytes) return reply(badFile('big'));
  const classes = await listClasses(deps.store, teacher.id);
  const [only] = classes;
  if (!only) return reply(noClass());
  const wish = await expected(deps, userId);
  const asked = askedFor(wish);
  const chosen = classes.find(({ id }) => id === asked) ?? (classes.length === 1 ? only : null);
  if (chosen) {
    const scope = { teacherId: teacher.id, classId: chosen.id };
    return showFile(message, scope, fileId);
  }
  await expect(deps, userId, { kind: 'file', data: { fileId } });
  const { text, buttons } = fileClassesScreen(classes, 0);
  await reply(text, buttons);
}

/** The class whose children are being asked for, or whose list waits: a mended file comes after one with problems. */
function askedFor(wish: Wish | null): string | null {
  if (wish?.kind === 'file_list') return wish.data.classId;
  return wish?.kind === 'class' && wish.data.question === 'roster' ? wish.data.classId : null;
}

/** Reads a file for a class and shows what it would add. */
export async function showFile(
  message: Omit<Typed, 'text'>,
  scope: TeacherScope,
  fileId: string,
): Promise<void> {
  const { deps, userId, reply } = message;
  const read = await fetchTable(deps, fileId);
  if ('problem' in read) {
    const { problem } = read;
    return reply(badFile(problem.kind, rowOf(problem)), [[toChildren(scope.classId)]]);
  }
  const list = await listFor(deps, scope, read.table, pickColumn(read.table));
  await keepList(deps, userId, fileId, list);
  const { text, buttons } = fileListScreen(list);
  await reply(text, buttons);
}

/** Keeps what is shown until it is confirmed: the nicknames, and where the others can be found. */
export async function keepList(
  deps: BotDeps,
  userId: number,
  fileId: string,
  { schoolClass, roster, from, stamp }: FileList,
): Promise<void> {
  await expect(deps, userId, {
    kind: 'file_list',
    data: {
      fileId,
      classId: schoolClass.id,
      heading: from.heading === null ? 0 : 1,
      stamp,
      nicknames: [...roster.nicknames],
    },
  });
}

/** Fetches a file and reads it as a table. */
export async function fetchTable(deps: BotDeps, fileId: string) {
  const bytes = await deps.download(fileId, TABLE_LIMITS.bytes);
  const read = bytes === null ? tooBig : await readTable(bytes);
  if ('problem' in read) deps.log.info({ problem: read.problem.kind }, 'file_not_read');
  return read;
}

const tooBig = { problem: { kind: 'big' } } as const satisfies { problem: TableProblem };

/** What a column of a table would add to a class. A column that the table has not is `not_found`. */
export async function listFor(
  deps: BotDeps,
  scope: TeacherScope,
  table: Table,
  { column, heading }: PickedColumn,
): Promise<FileList> {
  const from = columnsOf(table, heading)[column];
  if (!from) throw new AppError('not_found', 'column');
  const first = heading === null ? 0 : heading + 1;
  const entries = table
    .map((row, index) => ({ line: index + 1, raw: row[column] ?? '' }))
    .slice(first);
  const present = await listChildren(deps.store, scope);
  const roster = readRoster(
    entries,
    present.map((child) => child.nickname),
  );
  return {
    schoolClass: await getClass(deps.store, scope),
    present: present.length,
    roster,
    from,
    stamp: stampOf(roster.nicknames),
    fits: present.length + roster.nicknames.length <= MAX_CHILDREN,
  };
}

/** A table's columns as they are named. `heading` is the row of headings, null without one. */
export function columnsOf(table: Table, heading: number | null): ColumnName[] {
  const below = table.slice(heading === null ? 0 : heading + 1);
  return Array.from({ length: widthOf(table) }, (_, column) => ({
    column,
    heading: heading === null ? null : (table[heading]?.[column]?.trim() ?? ''),
    sample: below.map((row) => row[column]?.trim() ?? '').find((cell) => cell !== '') ?? '',
  }));
}

/** The row of headings when the teacher says that there is one: the guessed one, or the first that is not blank. */
export function headingRow(table: Table, isThere: boolean): number | null {
  return isThere ? (pickColumn(table).heading ?? firstRow(table)) : null;
}

function stampOf(nicknames: readonly string[]): string {
  return createHash('sha256').update(nicknames.join('\n')).digest('base64url').slice(0, 12);
}

/** The row a problem is in; 0 for one that is in none. */
export function rowOf(problem: TableProblem): number {
  return problem.kind === 'quote' ? problem.row : 0;
}
