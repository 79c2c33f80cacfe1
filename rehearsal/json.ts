/** Objects and lists inside each other, at most; the service's own reader stops at a hundred (from memory). */
const DEEPEST = 100;

function isDeep(value: unknown, left: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return left === 0 || Object.values(value).some((inner) => isDeep(inner, left - 1));
}

/**
 * Reads JSON text; undefined when it is none, or when its parts lie more than a hundred deep: what came in could be read, but
 * not written out again for the log and the data file.
 *
 * @example
 * readJson('[1]'); // => [1]
 */
export function readJson(text: string): unknown {
  try {
    const value: unknown = JSON.parse(text);
    return isDeep(value, DEEPEST) ? undefined : value;
  } catch {
    return undefined;
  }
}
