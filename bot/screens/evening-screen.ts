import { type EveningView, localTimeAt } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import type { Action } from '../callback/actions.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/evening.ts';
import { withPractised } from '../texts/months.ts';
import { fewerLine } from '../texts/pace.ts';
import { PACE_BUTTONS } from '../texts/pace-buttons.ts';
import { partTitle } from '../texts/part-title.ts';
import { STOP_BUTTONS, stopped } from '../texts/stop-today.ts';
import { nextChildButton, turnAfter } from '../texts/turns.ts';
import { lines, name } from '../texts/words.ts';
import { restPicture } from './card-pictures.ts';
import { eveningStep } from './evening-step.ts';
import { hasClocks, isPictured, type Means, type OtherChild } from './means.ts';
import { markingScreen, partScreen } from './part-screens.ts';
import { resultPicture } from './pictures.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

export type { Means } from './means.ts';

/** Why an evening is on a screen: as it arrives, as the nudge, as the reminder, or after a tap. */
export type Occasion = 'evening' | 'nudge' | 'reminder' | 'tap';

/** The screen of an evening as it stands now. One message moves through all of them. */
export function eveningScreen(
  view: EveningView,
  today: SchoolDay,
  means: Means,
  occasion: Occasion = 'tap',
): Screen {
  const at = eveningStep(view, today);
  switch (at.step) {
    case 'closed':
      return { text: texts.closed(view), buttons: [] };
    case 'declined':
      return {
        text: texts.notToday(view),
        buttons: [
          [button(BUTTONS.afterAll, { kind: 'start', evening: view.id })],
          ...nextRow(view, means),
        ],
      };
    case 'stopped':
      return stoppedScreen(view, means);
    case 'offer':
      return offerScreen(view, occasion, means.before);
    case 'part':
      return partScreen(view, at.part, means);
    case 'marking':
      return markingScreen(view, at.part, means);
    case 'pages':
      return pagesScreen(view);
    case 'result':
      return resultScreen(view, means);
  }
}

function offerScreen(view: EveningView, occasion: Occasion, before?: OtherChild): Screen {
  const start = button(BUTTONS.start, { kind: 'start', evening: view.id });
  const later = button(BUTTONS.later, { kind: 'later', evening: view.id });
  const notToday = button(BUTTONS.notToday, { kind: 'notToday', evening: view.id });
  if (occasion === 'nudge') return { text: texts.nudge(view), buttons: [[start], [notToday]] };
  if (occasion === 'reminder') {
    return { text: texts.reminder(view), buttons: [[start], [notToday]] };
  }
  if (view.remindAt) {
    const { time } = localTimeAt(view.remindAt, view.zone);
    return { text: texts.laterAt(view, time), buttons: [[start], [notToday]] };
  }
  const text = before
    ? lines(texts.offer(view), turnAfter(view.nickname, before.nickname))
    : texts.offer(view);
  if (!view.fewer) return { text, buttons: [[start], [later, notToday]] };
  const everyDay = button(PACE_BUTTONS.everyDay, { kind: 'everyDayNow', evening: view.id });
  return {
    text: lines(text, '', fewerLine(view.fewer)),
    buttons: [[start], [later, notToday], [everyDay]],
  };
}

/** Pages that may be told beyond the evening's target. */
const PAGES_BEYOND = 2;

/** Asks how many workbook pages were done: none, up to the target, and some more as far as the book goes. */
export function pagesScreen(view: EveningView): Screen {
  const { from, to, last } = view.book ?? { from: 1, to: 1, last: 1 };
  const most = Math.min(to + PAGES_BEYOND, last) - from + 1;
  const choices = Array.from({ length: most + 1 }, (_, pages) =>
    button(pages === 0 ? BUTTONS.noPages : String(pages), {
      kind: 'pages',
      evening: view.id,
      pages,
    }),
  );
  return { text: texts.askPages(view), buttons: rows(choices, 4) };
}

function resultScreen(view: EveningView, means: Means): Screen {
  const { painter, way, practised } = means;
  return {
    text: withPractised(texts.result(view), practised),
    buttons: [[button(BUTTONS.fix, { kind: 'fix', evening: view.id })], ...nextRow(view, means)],
    picture:
      way === 'words' && !view.drill.parts.some(hasClocks)
        ? undefined
        : resultPicture(painter, view),
  };
}

/** After "Stop for today". What was on the message gives way to a small, quiet picture. */
function stoppedScreen(view: EveningView, means: Means): Screen {
  const { parts } = view.drill;
  const isMarked = view.results.some((result) => result !== null);
  return {
    text: stopped(view),
    buttons: [
      [button(STOP_BUTTONS.goOn, { kind: 'start', evening: view.id })],
      ...(isMarked ? [[button(BUTTONS.fix, { kind: 'fix', evening: view.id })]] : []),
      ...nextRow(view, means),
    ],
    picture: parts.some((part) => isPictured(view, part, means))
      ? restPicture(means.painter)
      : undefined,
  };
}

/** Leads on to a brother or sister, once this child's evening is over. */
function nextRow({ id }: EveningView, { next }: Means): Button[][] {
  if (!next) return [];
  const action = { kind: 'nextChild', evening: id, next: next.evening } as const;
  return [[button(nextChildButton(next.nickname), action)]];
}

/** Which part's marks to change. */
export function fixScreen(view: EveningView): Screen {
  const parts = view.drill.parts.flatMap((part, index) =>
    view.results[index]
      ? [[button(partTitle(part), { kind: 'mark', evening: view.id, part: index })]]
      : [],
  );
  const pages = view.book
    ? [[button(name(view.book.title), { kind: 'fixPages', evening: view.id })]]
    : [];
  return {
    text: texts.askWhatToFix(view),
    buttons: [...parts, ...pages, [button(BUTTONS.back, backFromFixing(view))]],
  };
}

/** Whoever has stopped for the day has not begun again by changing a mark. */
function backFromFixing({ id, stopped: isStopped }: EveningView): Action {
  return isStopped ? { kind: 'stopToday', evening: id } : { kind: 'start', evening: id };
}

/** What the message in another helper's chat, or an earlier message of the same helper, says now. */
export function copyScreen(view: EveningView, today: SchoolDay, sameChat: boolean): Screen {
  const at = eveningStep(view, today);
  if (at.step === 'closed') return { text: texts.closed(view), buttons: [] };
  if (sameChat) return { text: texts.continuedElsewhere(view), buttons: [] };
  if (at.step === 'offer') return offerScreen(view, 'tap');
  const finished = at.step === 'result';
  const goOn = (label: string) => [[button(label, { kind: 'start', evening: view.id })]];
  if (at.step === 'declined') {
    return { text: texts.notToday(view), buttons: goOn(BUTTONS.afterAll) };
  }
  if (at.step === 'stopped') return { text: stopped(view), buttons: goOn(STOP_BUTTONS.goOn) };
  return {
    text: texts.elsewhere(view, finished),
    buttons: finished ? [] : goOn(BUTTONS.openHere),
  };
}
