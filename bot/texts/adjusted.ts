import type { Adjustment } from '../../drills/index.ts';
import { say } from '../language/index.ts';

/**
 * What a family reads of an adjusted evening: kind words for what is different, and no word for why. Null where nothing is.
 *
 * @example
 * adjustedLine({ steps: -1, fewer: true, untimed: false }, 'Wren'); // 'Picked for Wren: a little shorter today.'
 */
export function adjustedLine(adjusted: Adjustment | undefined, child: string): string | null {
  if (!adjusted) return null;
  const { steps, fewer, untimed } = adjusted;
  const kind = [
    ...(fewer ? [say('adjusted-shorter', { child })] : []),
    ...(steps !== 0 && !fewer ? [say('adjusted-picked', { child })] : []),
    ...(untimed ? [say('adjusted-untimed')] : []),
  ];
  return kind.length === 0 ? null : kind.join(' ');
}
