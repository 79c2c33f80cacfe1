import type { LedgerKind } from './owe.ts';

/** What a teacher reads when there is time: it waits for what families wait for. */
const DIGESTS: ReadonlySet<LedgerKind> = new Set(['digest', 'digest_picture', 'digest_table']);

/**
 * Which of two messages that wait for the same bot goes first: the one with the higher number. What goes to a family's evening
 * goes before a digest; of equals the one owed first.
 *
 * @example
 * priorityOf('evening') > priorityOf('digest'); // true
 */
export function priorityOf(kind: LedgerKind): number {
  return DIGESTS.has(kind) ? 0 : 10;
}
