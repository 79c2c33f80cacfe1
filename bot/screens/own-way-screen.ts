import type { AdjustedChild } from '../../db/index.ts';
import type { Adjustment, WeekPlan } from '../../drills/index.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import { ownWay } from '../texts/own-way.ts';
import { type Button, button, type Screen } from './screen.ts';

/** What a button sets, by the word it carries; each says what shall be, so that a tap that comes twice sets it once. */
export const OWN_WAYS: Readonly<Record<string, Partial<Adjustment>>> = {
  easier: { steps: -1 },
  class: { steps: 0 },
  harder: { steps: 1 },
  fewer: { fewer: true },
  all: { fewer: false },
  untimed: { untimed: true },
  timed: { untimed: false },
};

/** How one child's evenings differ from the class's: what is chosen carries a tick. */
export function ownWayScreen(classId: string, child: AdjustedChild, plan: WeekPlan | null): Screen {
  const { number, adjustment } = child;
  const { steps, fewer, untimed } = adjustment;
  const choice = (label: string, chosen: boolean, to: string): Button =>
    button(choiceButton(label, chosen), { kind: 'setOwnWay', classId, number, to });
  return {
    text: ownWay(child, plan),
    buttons: [
      [choice(BUTTONS.easier, steps < 0, 'easier'), choice(BUTTONS.harder, steps > 0, 'harder')],
      [choice(BUTTONS.classSteps, steps === 0, 'class')],
      [
        choice(BUTTONS.fewerCards, fewer, fewer ? 'all' : 'fewer'),
        choice(BUTTONS.untimed, untimed, untimed ? 'timed' : 'untimed'),
      ],
      [button(BUTTONS.back, { kind: 'child', classId, number })],
    ],
  };
}

/** The way to it from a child's page. */
export function ownWayButton(classId: string, number: number): Button {
  return button(BUTTONS.ownWay, { kind: 'ownWay', classId, number });
}
