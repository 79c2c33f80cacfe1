/** The cells of a number square to show: every `unit` from `first` to `last`, ten to a row. */
export interface SquareWindow {
  readonly unit: number;
  readonly first: number;
  readonly last: number;
  /** Whether nought stands above ten, one step before one. */
  readonly nought: boolean;
}

export const COLUMNS = 10;
/** More rows than three hundreds in ones cannot be read on a phone. */
const MOST_ROWS = 30;

/**
 * The window of a number square for one counting run, so wide that it does not tell where the run ends: the whole hundreds the
 * run crosses, up to the rung's limit. A run in larger steps that would take more than 30 rows is shown on a square of tens
 * or of fives (rows of a hundred or of fifty); one that fits neither keeps only the rows it crosses.
 *
 * @example
 * squareWindow([340, 350, 360], 1000); // => { unit: 1, first: 301, last: 400, nought: false }
 */
export function squareWindow(numbers: readonly number[], limit: number): SquareWindow {
  const lowest = Math.min(...numbers);
  const highest = Math.max(...numbers);
  const step = Math.abs((numbers[1] ?? lowest) - (numbers[0] ?? lowest));
  const nought = lowest === 0;
  const hundreds = blocks(100, 1, lowest, highest, limit);
  if (rowsOf(hundreds) <= MOST_ROWS) return { ...hundreds, nought };
  for (const unit of [10, 5]) {
    const onIt = step > unit && numbers.every((number) => number % unit === 0);
    const window = blocks(1000, unit, lowest, highest, limit);
    if (onIt && rowsOf(window) <= MOST_ROWS) return { ...window, nought };
  }
  return { ...blocks(COLUMNS, 1, lowest, highest, limit), nought };
}

/** The column, from 0, and the row of a number in its window; nought takes the end of the row before the first. */
export function placeOf(number: number, { unit, first }: SquareWindow) {
  const index = (number - first) / unit;
  const row = Math.floor(index / COLUMNS);
  return { column: index - row * COLUMNS, row };
}

/** Rows of ten in a window, nought's own left out. */
export function rowsOf({ unit, first, last }: Pick<SquareWindow, 'unit' | 'first' | 'last'>) {
  return Math.ceil((last - first + unit) / unit / COLUMNS);
}

/** Whole blocks of `size` numbers, counted from one, that hold every number from `lowest` to `highest`. */
function blocks(size: number, unit: number, lowest: number, highest: number, limit: number) {
  const before = Math.floor(Math.max(0, lowest - 1) / size) * size;
  const after = Math.ceil(Math.max(1, highest) / size) * size;
  return { unit, first: before + unit, last: Math.max(Math.min(after, limit), highest, unit) };
}
