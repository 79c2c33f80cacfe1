import type { Adjustment } from '../../drills/index.ts';

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
    ...(fewer ? [`Picked for ${child}: a little shorter today.`] : []),
    ...(steps !== 0 && !fewer ? [`Picked for ${child}.`] : []),
    ...(untimed ? ['No timing: as long as it takes.'] : []),
  ];
  return kind.length === 0 ? null : kind.join(' ');
}
