import { BUTTONS } from '../texts/buttons.ts';
import { rosterAdded } from '../texts/roster.ts';
import { back } from './class-screens.ts';
import { button, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/**
 * After children were added: two ways to have their families join, and a first plan while there is none. Both ways ask once more,
 * so that nothing here makes a link: links made later end those made before, also those of children added earlier.
 */
export function addedScreen(input: {
  readonly classId: string;
  readonly nicknames: readonly string[];
  /** The act that added them, to be taken back. */
  readonly actId: string;
  readonly hasPlan: boolean;
}): Screen {
  const { classId, nicknames, actId, hasPlan } = input;
  const first = button(BUTTONS.firstPlan, { kind: 'firstPlan', classId, curriculum: 'guess' });
  return {
    text: rosterAdded(nicknames),
    buttons: [
      [button(BUTTONS.slipsToPrint, { kind: 'print', classId, paper: 0 })],
      [button(BUTTONS.missingLinks, { kind: 'askLinks', classId })],
      ...(hasPlan ? [] : [[first]]),
      [undoButton(actId), back(classId)],
    ],
  };
}
