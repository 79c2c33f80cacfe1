import { RELATIONS, storedTime, type Tie, WAYS, type Way } from '../../db/index.ts';
import { minutesOf, type TimeOfDay } from '../../drills/index.ts';
import type { Action } from '../callback/actions.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import * as texts from '../texts/joining.ts';
import { chooseWay, wayLabel } from '../texts/way.ts';
import { lines, type Text } from '../texts/words.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** Usual evening times (our choice, no source); the class's own stands among them. */
const USUAL_TIMES = ['17:00', '18:00', '19:00'].map(storedTime);

/** The first choice after agreeing: who the helper is to the child, below what agreeing has led to. */
export function relationScreen(joined: Text, tie: Tie): Screen {
  const { childId: child, siblingAge } = tie;
  return {
    text: lines(joined, '', texts.askRelation(tie)),
    buttons: [
      ...RELATIONS.map((relation) => [
        button(choiceButton(texts.relationLabel(relation, siblingAge), relation === tie.relation), {
          kind: 'joinAs',
          child,
          to: relation,
        }),
      ]),
      [button(texts.ratherNot(), { kind: 'joinNext', child, to: 'time' })],
    ],
  };
}

/** The second choice: when the drill comes. */
export function joinTimeScreen(tie: Tie): Screen {
  const { childId: child } = tie;
  return {
    text: texts.askTime(tie.eveningTime),
    buttons: [
      ...rows(
        timeButtons(tie, (to) => ({ kind: 'joinTime', child, to })),
        2,
      ),
      [button(texts.keepIt(), { kind: 'joinNext', child, to: 'way' })],
    ],
  };
}

/** The third choice: how cards are shown. */
export function joinWayScreen(
  { childId: child }: Tie,
  chosen: Way,
  untimed: readonly string[],
): Screen {
  return {
    text: chooseWay(untimed),
    buttons: [
      ...wayButtons(chosen, (way) => ({ kind: 'joinWay', child, way })),
      [button(texts.keepIt(), { kind: 'joinNext', child, to: 'end' })],
    ],
  };
}

/** After the last choice. */
export function allSetScreen(tie: Tie): Screen {
  return { text: texts.allSet(tie), buttons: [] };
}

/** A button for each usual time and the class's, the one in use ticked. A dot stands for the colon in what it carries. */
export function timeButtons(
  { eveningTime, schoolClass }: Pick<Tie, 'eveningTime' | 'schoolClass'>,
  action: (to: string) => Action,
): Button[] {
  const times: TimeOfDay[] = [...new Set([...USUAL_TIMES, schoolClass.eveningTime])];
  return times
    .sort((one, other) => minutesOf(one) - minutesOf(other))
    .map((time) =>
      button(choiceButton(time, time === eveningTime), action(time.replace(':', '.'))),
    );
}

/** A button for each way, the one in use ticked. */
export function wayButtons(chosen: Way, action: (way: Way) => Action): Button[][] {
  return WAYS.map((way) => [button(choiceButton(wayLabel(way), way === chosen), action(way))]);
}

/** To the helper of several children who wants to stop: for whom. */
export function leaveWhomScreen(
  children: readonly { readonly id: string; readonly nickname: string }[],
): Screen {
  return {
    text: texts.askWhomToLeave(children.map(({ nickname }) => nickname)),
    buttons: [
      ...children
        .slice(0, MOST_CHILDREN)
        .map(({ id: child, nickname }) => [
          button(texts.leaveLabel(nickname), { kind: 'leaveChild', child }),
        ]),
      [button(texts.leaveAllLabel(), { kind: 'leave' })],
      [button(BUTTONS.stay, { kind: 'stay' })],
    ],
  };
}

/** Children with a button of their own; a helper of more leaves the first ones first. */
const MOST_CHILDREN = 8;
