/** Cards right and cards asked in one strand over a stretch of time. */
export interface StrandScore {
  readonly right: number;
  readonly asked: number;
}

/**
 * Refuses a score that cannot be.
 *
 * @throws {RangeError} when `right` is below 0 or over `asked`.
 */
export function requireScore({ right, asked }: StrandScore): void {
  if (!(right >= 0 && right <= asked)) {
    throw new RangeError(`Got ${right} right of ${asked}: right is from 0 to asked.`);
  }
}
