import { like } from 'drizzle-orm';
import { ledger } from '../schema/index.ts';

/** How the problem of a message begins that failed by a fault of ours, whenever it was tried. */
const CRASHED = 'crashed ';

/** What the ledger says of such a message; `problem` is the name of the error. */
export function crashedBy(problem: string): string {
  return CRASHED + problem;
}

/** Inside a query: that a message failed so. */
export const HAS_CRASHED = like(ledger.problem, `${CRASHED}%`);
