import { AppError, findTeacherByChat, listClasses } from '../../db/index.ts';
import type { Table } from '../input/class-list/table.ts';
import { toChildren } from '../screens/children-screens.ts';
import {
  fileClassesScreen,
  fileColumnsScreen,
  fileListScreen,
} from '../screens/class-file-screens.ts';
import { badFile, listGone } from '../texts/class-file.ts';
import { addToClass } from './add-roster.ts';
import {
  columnsOf,
  fetchTable,
  headingRow,
  keepList,
  listFor,
  rowOf,
  showFile,
} from './class-file.ts';
import { expected, type WishOf } from './expectations.ts';
import { typed } from './say.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';

/** Everything that is tapped under a class list sent as a file. What waits is looked up: a late tap finds nothing. */
export const classFileTaps: TapHandlers<
  'fileClasses' | 'fileClass' | 'fileColumns' | 'fileColumn' | 'fileAdd'
> = {
  fileClasses: async (tap, { page }) => {
    const teacher = await findTeacherByChat(tap.deps.store, tap.userId);
    if (!teacher) throw new AppError('not_found', 'class');
    await tap.answer();
    await tap.show(fileClassesScreen(await listClasses(tap.deps.store, teacher.id), page));
  },
  fileClass: async (tap, { classId }) => {
    const scope = await teacherScope(tap.deps.store, tap.userId, classId);
    const wish = await expected(tap.deps, tap.userId);
    if (wish?.kind !== 'file') return tap.answer(listGone(), 'alert');
    await tap.answer();
    await showFile(talk(tap), scope, wish.data.fileId);
  },
  fileColumns: (tap, { classId, page }) =>
    withTable(tap, classId, async ({ heading }, table) => {
      const columns = columnsOf(table, headingRow(table, heading === 1));
      await tap.show(fileColumnsScreen(classId, columns, heading, page));
    }),
  fileColumn: (tap, { classId, column, heading }) =>
    withTable(tap, classId, async ({ fileId }, table) => {
      const { deps, userId } = tap;
      const scope = await teacherScope(deps.store, userId, classId);
      const row = headingRow(table, heading === 1);
      const list = await listFor(deps, scope, table, { column, heading: row });
      await keepList(deps, userId, fileId, list);
      await tap.show(fileListScreen(list));
    }),
  fileAdd: async (tap, { classId, stamp }) => {
    const scope = await teacherScope(tap.deps.store, tap.userId, classId);
    const waiting = await listWaiting(tap, classId);
    if (waiting?.stamp !== stamp) return tap.answer(listGone(), 'alert');
    await tap.answer();
    await addToClass(talk(tap), scope, waiting.nicknames);
  },
};

type Waiting = WishOf<'file_list'>['data'];

async function listWaiting(tap: Tap, classId: string): Promise<Waiting | null> {
  const wish = await expected(tap.deps, tap.userId);
  return wish?.kind === 'file_list' && wish.data.classId === classId ? wish.data : null;
}

/** Fetches the file of the list that waits and hands its table on. */
async function withTable(
  tap: Tap,
  classId: string,
  show: (waiting: Waiting, table: Table) => Promise<void>,
): Promise<void> {
  await teacherScope(tap.deps.store, tap.userId, classId);
  const waiting = await listWaiting(tap, classId);
  if (!waiting) return tap.answer(listGone(), 'alert');
  const read = await fetchTable(tap.deps, waiting.fileId);
  await tap.answer();
  if ('problem' in read) {
    const { problem } = read;
    const text = badFile(problem.kind, rowOf(problem));
    return tap.show({ text, buttons: [[toChildren(classId)]] });
  }
  await show(waiting, read.table);
}

function talk({ deps, userId }: Tap) {
  return typed(deps, userId, '');
}
