import type { FactId } from '../facts/fact-id.ts';
import { keepTwinsApart } from './keep-twins-apart.ts';
import type { Random } from './random.ts';

/**
 * The same cards in another order, near twins apart where that can be. One card alone has no other order.
 *
 * @example
 * repeatCards(['double:1', 'double:2'], random); // ['double:2', 'double:1']
 */
export function repeatCards(cards: readonly FactId[], random: Random): FactId[] {
  const order = keepTwinsApart(random.shuffle(cards));
  if (order.some((card, at) => card !== cards[at])) return order;
  // Backwards is another order of any two cards or more, and parts twins as well as forwards does.
  return order.toReversed();
}
