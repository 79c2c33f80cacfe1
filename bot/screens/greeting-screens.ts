import type { Greeting, SchoolClass } from '../../db/index.ts';
import type { GreetingChoices, GreetingDays } from '../../drills/index.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import * as texts from '../texts/greeting.ts';
import { lines, name } from '../texts/words.ts';
import { back } from './class-screens.ts';
import { type Button, button, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** What a greeting's screen is made from. `actId` takes back what was done last, and `news` says what that was. */
export interface GreetingView {
  readonly schoolClass: SchoolClass;
  readonly greeting: Greeting | null;
  readonly choices: GreetingChoices;
  readonly botId: number;
  readonly actId?: string | null;
  readonly news?: string;
}

/** A class's greeting, when it goes out, and the way to another one. */
export function greetingScreen(view: GreetingView): Screen {
  const { schoolClass, greeting, actId, news } = view;
  const { id: classId } = schoolClass;
  const undo = actId ? [[undoButton(actId)]] : [];
  const text = greeting ? homeText(view, greeting) : texts.noGreeting(schoolClass);
  const send = greeting ? BUTTONS.otherGreeting : BUTTONS.sendGreeting;
  return {
    text: news === undefined ? text : lines(news, '', text),
    buttons: [
      [button(send, { kind: 'askFor', classId, what: 'greeting' })],
      ...(greeting ? choicesOf(view, greeting) : []),
      ...undo,
      [back(classId)],
    ],
  };
}

function homeText({ schoolClass, choices, botId }: GreetingView, greeting: Greeting) {
  const { words } = greeting;
  return texts.greetingHome(schoolClass, greeting, {
    isOver: greeting.last < choices.thisWeek.first,
    isOurs: words.kind === 'text' || words.botId === botId,
  });
}

/** The buttons carry the greeting they are about and what it shall be, so that a late or second tap does no harm. */
function choicesOf({ schoolClass, choices }: GreetingView, greeting: Greeting): Button[][] {
  const at = { classId: schoolClass.id, greeting: greeting.id };
  const { thisWeek, nextWeek, kept } = choices;
  const evenings = (to: Greeting['evenings'], label: string) =>
    button(choiceButton(label, greeting.evenings === to), { kind: 'timeGreeting', ...at, to });
  const days = ({ last }: GreetingDays, label: string) =>
    button(choiceButton(label, greeting.last === last), { kind: 'timeGreeting', ...at, to: last });
  return [
    [evenings('first', BUTTONS.firstEvening), evenings('every', BUTTONS.everyEvening)],
    [
      days(thisWeek, texts.weekLabel(thisWeek.first)),
      ...(nextWeek ? [days(nextWeek, texts.weekLabel(nextWeek.first))] : []),
    ],
    [days(kept, BUTTONS.untilRemoved)],
    [
      button(BUTTONS.showGreeting, { kind: 'showGreeting', ...at }),
      button(BUTTONS.removeGreeting, { kind: 'removeGreeting', ...at }),
    ],
  ];
}

/** The days a button's `to` stands for; null when the button is about evenings, or about a week that is not offered any more. */
export function daysOf(
  to: string,
  { thisWeek, nextWeek, kept }: GreetingChoices,
): GreetingDays | null {
  return [thisWeek, nextWeek, kept].find((days) => days?.last === to) ?? null;
}

/** Asks what a recording is for that nobody asked for; `messageId` is the message it came in. */
export function askToUseScreen(
  kind: 'voice' | 'video',
  classes: readonly SchoolClass[],
  messageId: number,
): Screen {
  const message = String(messageId);
  const label = (each: SchoolClass) => (classes.length === 1 ? BUTTONS.useIt : name(each.title));
  return {
    text: texts.askToUse(kind, classes),
    buttons: [
      ...classes.map((each) => [
        button(label(each), { kind: 'useRecording', classId: each.id, message }),
      ]),
      [button(BUTTONS.dontUse, { kind: 'dropRecording', message })],
    ],
  };
}
