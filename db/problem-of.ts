/**
 * What an error is called, for a log: its kind only, since a message may quote data. An error whose kind has no name of its
 * own is called by its class.
 *
 * @example
 * problemOf(new TypeError('Wren is missing')); // 'TypeError'
 */
export function problemOf(error: unknown): string {
  if (!(error instanceof Error)) return typeof error;
  return error.name === 'Error' ? error.constructor.name : error.name;
}
