import type { SchoolClass } from '../../db/index.ts';
import type { ParsedRoster } from '../input/roster.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/class-file.ts';
import { name } from '../texts/words.ts';
import { toChildren } from './children-screens.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { button, type Screen } from './screen.ts';
import { cancelButton } from './set-up-screens.ts';

/** Classes or columns on one page, one in a row. */
const ROWS_A_PAGE = 7;

/** A list as read off a file, for one class. */
export interface FileList {
  readonly schoolClass: SchoolClass;
  /** How many children the class has. */
  readonly present: number;
  readonly roster: ParsedRoster;
  readonly from: texts.ColumnName;
  /** Stands for the nicknames on the Add button. */
  readonly stamp: string;
  /** Whether the class has room for them. */
  readonly fits: boolean;
}

/** Which class is a list for? */
export function fileClassesScreen(classes: readonly SchoolClass[], at: number): Screen {
  const { shown, ...pages } = pageOf(classes, at, ROWS_A_PAGE);
  return {
    text: texts.whichClassList(),
    buttons: [
      ...shown.map((each) => [button(name(each.title), { kind: 'fileClass', classId: each.id })]),
      ...pageRow(pages, (page) => ({ kind: 'fileClasses', page })),
      [cancelButton()],
    ],
  };
}

/** What a file would add, or what is in the way. */
export function fileListScreen(list: FileList): Screen {
  const { schoolClass, roster, from, stamp } = list;
  const { id: classId } = schoolClass;
  const { column } = from;
  const hasHeading = from.heading !== null;
  const add = button(texts.addAllButton(roster.nicknames.length), {
    kind: 'fileAdd',
    classId,
    stamp,
  });
  return {
    text: listText(list),
    buttons: [
      ...(isReady(list) ? [[add]] : []),
      [
        button(BUTTONS.otherColumn, { kind: 'fileColumns', classId, page: 0 }),
        hasHeading
          ? button(BUTTONS.noHeading, { kind: 'fileColumn', classId, column, heading: 0 })
          : button(BUTTONS.heading, { kind: 'fileColumn', classId, column, heading: 1 }),
      ],
      [toChildren(classId)],
    ],
  };
}

/** Whether everything on the list can be added. */
export function isReady({ roster, fits }: FileList): boolean {
  return roster.problems.length === 0 && roster.nicknames.length > 0 && fits;
}

function listText(list: FileList): Screen['text'] {
  const { schoolClass, present, roster, from, fits } = list;
  const { nicknames, problems } = roster;
  if (problems.length > 0) return texts.listProblems(problems, from);
  if (nicknames.length === 0) return texts.listEmpty(from);
  if (!fits) return texts.listTooMany(nicknames.length, present);
  return texts.listPreview({ title: name(schoolClass.title), nicknames, from });
}

/** Which column has the nicknames? `heading` is 1 when the first row is no child. */
export function fileColumnsScreen(
  classId: string,
  columns: readonly texts.ColumnName[],
  heading: number,
  at: number,
): Screen {
  const { shown, ...pages } = pageOf(columns, at, ROWS_A_PAGE);
  return {
    text: texts.whichColumn(),
    buttons: [
      ...shown.map((each) => [
        button(texts.columnLabel(each), {
          kind: 'fileColumn',
          classId,
          column: each.column,
          heading,
        }),
      ]),
      ...pageRow(pages, (page) => ({ kind: 'fileColumns', classId, page })),
      [toChildren(classId)],
    ],
  };
}
