import type { Slower } from './summary.ts';
import type { WeekInput } from './week.ts';

/**
 * The families to which the drill comes less often than every school day, in the order of the class list. One that a teacher
 * keeps at every school day is none of them.
 *
 * @example
 * listSlower({ children: [] }); // []
 */
export function listSlower({ children }: Pick<WeekInput, 'children'>): Slower[] {
  return children
    .flatMap(({ childId, number, nickname, joined, pace }) =>
      joined && pace && pace.kind !== 'kept' ? [{ childId, number, nickname, stand: pace }] : [],
    )
    .sort((one, other) => one.number - other.number);
}
