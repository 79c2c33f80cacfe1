/**
 * The word at a place of a table. Throws RangeError past its ends, so that a wrong table is loud.
 *
 * @example
 * entry(['nought', 'one'], 1); // 'one'
 */
export function entry(table: readonly string[], place: number): string {
  const word = table[place];
  if (word === undefined) throw new RangeError(`no word at ${place} of ${table.length}`);
  return word;
}
