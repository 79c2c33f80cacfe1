import { WAYS, type Way } from '../../db/index.ts';
import { choiceButton } from '../texts/buttons.ts';
import { chooseWay, wayLabel } from '../texts/way.ts';
import { button, type Screen } from './screen.ts';

/**
 * The ways an evening can be shown, one button each; the chosen one is ticked. `untimed` are the helper's children whose cards
 * come without timing.
 */
export function wayScreen(chosen: Way, untimed: readonly string[] = []): Screen {
  return {
    text: chooseWay(untimed),
    buttons: WAYS.map((way) => [
      button(choiceButton(wayLabel(way), way === chosen), { kind: 'chooseWay', way }),
    ]),
  };
}
