import { MAX_CHILDREN } from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import type { RosterProblem } from '../input/roster.ts';
import { BUTTONS } from './buttons.ts';
import { someOf } from './children.ts';
import { quote, shorten } from './quote.ts';
import { fullNameCaution, rosterProblem } from './roster.ts';
import { bold, count, lines, type Text } from './words.ts';

/** Characters of a heading or a cell that are shown. */
const CELL_LENGTH = 20;
const PROBLEMS_SHOWN = 4;
/** Nicknames shown before they are added. */
const FIRST_SHOWN = 6;

/** A column as it is named: by its heading where there is one, by its letter and first cell elsewhere. */
export interface ColumnName {
  /** Counts from 0. */
  readonly column: number;
  readonly heading: string | null;
  readonly sample: string;
}

/** Why a file was not read, and what to send instead. */
export function badFile(
  problem: 'big' | 'rows' | 'columns' | 'old' | 'unknown' | 'empty' | 'quote',
  row = 0,
): Text {
  const because = {
    big: 'That file is too large for a class list: at most 1 MB, and nothing else in it.',
    rows: `A class list has at most 500 rows here; a class has at most ${MAX_CHILDREN} children.`,
    columns: 'A class list has at most 40 columns here. Keep the column of nicknames.',
    old: 'That is a spreadsheet in an old format, or locked with a password.',
    unknown: 'I cannot read that file as a class list.',
    empty: 'There is nothing in that file.',
    quote: `Row ${row}: a quotation mark is out of place, or not closed.`,
  }[problem];
  return lines(
    because,
    'Nothing was added. Send an XLSX or CSV file with one nickname in each row, or paste the nicknames as text, one a line.',
  );
}

/** Which class is the list for? */
export function whichClassList(): Text {
  return lines(
    bold('For which class is this list?'),
    'You see the nicknames before any are added.',
  );
}

/** What would be added. Nothing has been stored. */
export function listPreview(input: {
  readonly title: string;
  readonly nicknames: readonly string[];
  readonly from: ColumnName;
}): Text {
  const { nicknames } = input;
  return lines(
    bold(`${count(nicknames.length, 'nickname', 'nicknames')} for ${input.title}`),
    `${columnPhrase(input.from)}: ${someOf(
      nicknames.map((nickname) => ({ nickname })),
      FIRST_SHOWN,
    )}`,
    fullNameCaution(nicknames),
    'Nothing is added until you tap the button.',
  );
}

/** What keeps a list from being added. */
export function listProblems(problems: readonly RosterProblem[], from: ColumnName): Text {
  const shown = problems.slice(0, PROBLEMS_SHOWN);
  return lines(
    bold('Nothing can be added yet.'),
    `${columnPhrase(from)}:`,
    ...shown.map((problem) => rosterProblem(problem, 'Row')),
    problems.length > shown.length ? `and ${problems.length - shown.length} more` : null,
    `Mend the file and send it again, or tap ${BUTTONS.otherColumn}.`,
  );
}

/** A column without nicknames. */
export function listEmpty(from: ColumnName): Text {
  return lines(
    `${columnPhrase(from)}: no nicknames there.`,
    `Tap ${BUTTONS.otherColumn}, or send another file.`,
  );
}

/** More nicknames than the class has room for. */
export function listTooMany(sent: number, present: number): Text {
  return lines(
    `That is ${count(sent, 'nickname', 'nicknames')}; with the ${present} already there it is more than ${MAX_CHILDREN}.`,
    'Nothing was added. Shorten the file and send it again, or make a second class.',
  );
}

/** Which column has the nicknames? */
export function whichColumn(): Text {
  return lines(
    bold('Which column has the nicknames?'),
    `At most ${NICKNAME_LENGTH} characters each, no surnames.`,
  );
}

/** A column's button: its letter, its heading and its first cell. */
export function columnLabel({ column, heading, sample }: ColumnName): string {
  const shown = [heading, sample].flatMap((cell) => (cell ? [shorten(cell, CELL_LENGTH)] : []));
  return `${letterOf(column)}: ${shown.length > 0 ? shown.join(' · ') : 'empty'}`;
}

function columnPhrase({ column, heading }: ColumnName): string {
  const named = heading ? ` ${quote(heading, CELL_LENGTH)}` : '';
  return `Column ${letterOf(column)}${named}`;
}

/** Letters of columns as spreadsheets have them. */
function letterOf(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : letterOf(Math.floor(column / 26) - 1) + last;
}

/** Adds everything that is shown. */
export function addAllButton(nicknames: number): string {
  return nicknames === 1 ? 'Add this child' : `Add all ${nicknames}`;
}

/** For a tap on a button under a list that waits no longer. */
export const LIST_GONE =
  'This list is not waiting any more: it was added, or something else came after it. Look under Children, or send the file again.';
