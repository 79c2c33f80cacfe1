import type { RehearsalControl } from '../options.ts';
import { PhoneError } from './phone-error.ts';

const DAY_MS = 86_400_000;
/** An app may walk through every minute on its way, so a slip of the pen must not keep it busy for years. */
const LONGEST_MOVE_DAYS = 366;

/**
 * Moves the app's clock forward, one move after the other: two pages that move it at once must not lead the app through two
 * evenings at the same time. A move that another one has overtaken while it waited does nothing. Rejects with a 400 for an
 * instant that was past already, or more than 366 days ahead.
 */
export function createClockMover(control: RehearsalControl): (to: Date) => Promise<void> {
  let last: Promise<void> = Promise.resolve();
  return async (to) => {
    const latest = new Date(control.now().getTime() + LONGEST_MOVE_DAYS * DAY_MS);
    if (to < control.now()) throw new PhoneError(400, 'The clock only goes forward.');
    if (to > latest)
      throw new PhoneError(
        400,
        `The clock moves by up to ${LONGEST_MOVE_DAYS} days at once, here to ${latest.toISOString()}. Go there first.`,
      );
    const move = async (): Promise<void> => {
      if (to > control.now()) await control.moveTo(to);
    };
    // How the one before ended is told to whoever asked for it.
    last = last.then(move, move);
    await last;
  };
}
