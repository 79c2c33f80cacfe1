import { WAYS, type Way } from '../../db/index.ts';
import { choiceButton } from '../texts/buttons.ts';
import { chooseWay, wayLabel } from '../texts/way.ts';
import { button, type Screen } from './screen.ts';

/** The ways an evening can be shown, one button each; the chosen one is ticked. */
export function wayScreen(chosen: Way): Screen {
  return {
    text: chooseWay(),
    buttons: WAYS.map((way) => [
      button(choiceButton(wayLabel(way), way === chosen), { kind: 'chooseWay', way }),
    ]),
  };
}
