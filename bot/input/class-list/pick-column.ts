import { cleanNickname, lengthOf, NICKNAME_LENGTH } from '../nickname.ts';
import type { Table } from './table.ts';

/** Where a table's nicknames are thought to be. Places count from 0; `heading` is the row of headings, null without one. */
export interface PickedColumn {
  readonly column: number;
  readonly heading: number | null;
}

/**
 * Headings over nicknames, the likeliest first, as letters alone. Common practice, no source. A full name comes last: a
 * nickname beside it is what is wanted.
 */
const NICKNAME_HEADINGS = [
  'nickname nicknames nick',
  'knownas calledby preferredname',
  'firstname firstnames forename forenames givenname givennames first',
  'child children pupil pupils student students learner learners',
  'name names',
  'childsname childname pupilname studentname learnername fullname',
].map((words) => words.split(' '));

/** Headings over everything else that class lists have. */
const OTHER_HEADINGS = new Set(
  `surname surnames lastname familyname last number no nr id class grade year group set dob dateofbirth birthday birthdate born
  age gender sex email phone telephone mobile address postcode parent parents guardian mother father carer notes comments house
  table teacher admissionnumber language`.split(/\s+/u),
);

/** Titles and blank lines may come before the headings. */
const ROWS_LOOKED_AT = 10;

/**
 * Guesses which column has the nicknames and whether headings stand over them: by the headings' words, and where these say
 * nothing by the cells. It is shown before anything is stored, and can be changed.
 *
 * @example
 * pickColumn([['No', 'First name'], ['1', 'Wren']]); // { column: 1, heading: 0 }
 */
export function pickColumn(table: Table): PickedColumn {
  const top = table.slice(0, ROWS_LOOKED_AT);
  const named = top.findIndex((row) => row.some((cell) => rankOf(cell) >= 0));
  if (named >= 0) {
    const ranks = (table[named] ?? []).map(rankOf);
    const best = Math.min(...ranks.filter((rank) => rank >= 0));
    return { column: ranks.indexOf(best), heading: named };
  }
  const first = firstRow(table);
  const headings = table[first] ?? [];
  if (!headings.some(isOther)) return { column: bestColumn(table, () => true), heading: null };
  const isFree = (column: number) => !isOther(headings[column] ?? '');
  return { column: bestColumn(table.slice(first + 1), isFree), heading: first };
}

/** The first row that is not blank; 0 when all are. */
export function firstRow(table: Table): number {
  return Math.max(
    0,
    table.findIndex((row) => row.some((cell) => cell.trim() !== '')),
  );
}

/** How many columns a table has. */
export function widthOf(table: Table): number {
  return Math.max(0, ...table.map((row) => row.length));
}

function rankOf(cell: string): number {
  const word = lettersOf(cell);
  return NICKNAME_HEADINGS.findIndex((words) => words.includes(word));
}

function isOther(cell: string): boolean {
  return OTHER_HEADINGS.has(lettersOf(cell));
}

function lettersOf(cell: string): string {
  return cell.toLowerCase().replace(/[^\p{L}]/gu, '');
}

/** The column with the most cells that could be nicknames; the leftmost of several. */
function bestColumn(table: Table, isFree: (column: number) => boolean): number {
  const counts = Array.from({ length: widthOf(table) }, (_, column) =>
    isFree(column) ? table.filter((row) => couldBeNickname(row[column] ?? '')).length : -1,
  );
  return Math.max(0, counts.indexOf(Math.max(...counts)));
}

function couldBeNickname(cell: string): boolean {
  const text = cleanNickname(cell);
  return /^\p{L}[^@/]*$/u.test(text) && !/\d{3}/u.test(text) && lengthOf(text) <= NICKNAME_LENGTH;
}
