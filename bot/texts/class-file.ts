import { MAX_CHILDREN } from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import type { RosterProblem } from '../input/roster.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { someOf } from './children.ts';
import { quote, shorten } from './quote.ts';
import { fullNameCaution, moreProblems, rosterProblem } from './roster.ts';
import { bold, lines, type Text } from './words.ts';

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
  const because =
    problem === 'rows'
      ? say('class-file-rows', { most: MAX_CHILDREN })
      : problem === 'quote'
        ? say('class-file-quote', { row })
        : say(`class-file-${problem}`);
  return lines(because, say('class-file-send'));
}

/** Which class is the list for? */
export function whichClassList(): Text {
  return lines(bold(say('class-file-which-class')), say('class-file-see-first'));
}

/** What would be added. Nothing has been stored. */
export function listPreview(input: {
  readonly title: string;
  readonly nicknames: readonly string[];
  readonly from: ColumnName;
}): Text {
  const { nicknames } = input;
  return lines(
    bold(say('class-file-nicknames', { count: nicknames.length, class: input.title })),
    say('class-file-preview', {
      column: columnPhrase(input.from),
      names: someOf(
        nicknames.map((nickname) => ({ nickname })),
        FIRST_SHOWN,
      ),
    }),
    fullNameCaution(nicknames),
    say('class-file-until-tap'),
  );
}

/** What keeps a list from being added. */
export function listProblems(problems: readonly RosterProblem[], from: ColumnName): Text {
  const shown = problems.slice(0, PROBLEMS_SHOWN);
  return lines(
    bold(say('class-file-problems')),
    say('class-file-problems-in', { column: columnPhrase(from) }),
    ...shown.map((problem) => rosterProblem(problem, 'Row')),
    moreProblems(problems.length - shown.length),
    say('class-file-mend', { button: BUTTONS.otherColumn }),
  );
}

/** A column without nicknames. */
export function listEmpty(from: ColumnName): Text {
  return lines(
    say('class-file-no-names', { column: columnPhrase(from) }),
    say('class-file-no-names-do', { button: BUTTONS.otherColumn }),
  );
}

/** More nicknames than the class has room for. */
export function listTooMany(sent: number, present: number): Text {
  return lines(
    say('class-file-too-many', { sent, present, most: MAX_CHILDREN }),
    say('class-file-shorten'),
  );
}

/** Which column has the nicknames? */
export function whichColumn(): Text {
  return lines(
    bold(say('class-file-which-column')),
    say('class-file-names-only', { most: NICKNAME_LENGTH }),
  );
}

/** A column's button: its letter, its heading and its first cell. */
export function columnLabel({ column, heading, sample }: ColumnName): string {
  const shown = [heading, sample].flatMap((cell) => (cell ? [shorten(cell, CELL_LENGTH)] : []));
  const letter = letterOf(column);
  return shown.length > 0
    ? say('class-file-column-button', { letter, shown: shown.join(' · ') })
    : say('class-file-column-empty', { letter });
}

function columnPhrase({ column, heading }: ColumnName): string {
  const letter = letterOf(column);
  return heading
    ? say('class-file-column-headed', { letter, heading: quote(heading, CELL_LENGTH) })
    : say('class-file-column', { letter });
}

/** Letters of columns as spreadsheets have them. */
function letterOf(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : letterOf(Math.floor(column / 26) - 1) + last;
}

/** Adds everything that is shown. */
export function addAllButton(nicknames: number): string {
  return say('class-file-add', { count: nicknames });
}

/** For a tap on a button under a list that waits no longer. */
export function listGone(): string {
  return say('class-file-gone', { button: BUTTONS.children });
}
