import { type EveningView, localTimeAt, type Way } from '../../db/index.ts';
import { askedOf, runNumbers, type SchoolDay } from '../../drills/index.ts';
import type { Clips } from '../clip/index.ts';
import type { Painter } from '../media/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/evening.ts';
import { partTitle } from '../texts/part-title.ts';
import { lines, name } from '../texts/words.ts';
import { partClip } from './clips.ts';
import { eveningStep } from './evening-step.ts';
import { partPicture, resultPicture, titlePicture } from './pictures.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** Why an evening is on a screen: as it arrives, as the nudge, as the reminder, or after a tap. */
export type Occasion = 'evening' | 'nudge' | 'reminder' | 'tap';

/** What an evening is shown with. Without `clips` there are pictures; without `way` the family has not chosen: clips. */
export interface Means {
  readonly painter: Painter;
  readonly clips?: Clips | undefined;
  readonly way?: Way | undefined;
}

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
        buttons: [[button(BUTTONS.afterAll, { kind: 'start', evening: view.id })]],
      };
    case 'offer':
      return offerScreen(view, occasion);
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

function offerScreen(view: EveningView, occasion: Occasion): Screen {
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
  return { text: texts.offer(view), buttons: [[start], [later, notToday]] };
}

function partScreen(view: EveningView, index: number, means: Means): Screen {
  const part = view.drill.parts[index];
  const at = { evening: view.id, part: index };
  const isRun = part?.kind === 'run';
  const untouched = view.results.every((result) => result === null);
  return {
    ...shown(texts.partTask(view, index), view, index, means),
    buttons: [
      [
        button(isRun ? BUTTONS.allSaid : BUTTONS.allRight, { kind: 'allRight', ...at }),
        button(isRun ? BUTTONS.stoppedEarlier : BUTTONS.someMissed, { kind: 'mark', ...at }),
      ],
      ...(untouched ? [[button(BUTTONS.notToday, { kind: 'notToday', evening: view.id })]] : []),
    ],
  };
}

function markingScreen(view: EveningView, index: number, means: Means): Screen {
  const part = view.drill.parts[index];
  const buttons = part?.kind === 'run' ? saidButtons(view, index) : missedButtons(view, index);
  return { ...shown(texts.marking(view, index), view, index, means), buttons };
}

function missedButtons(view: EveningView, index: number): Button[][] {
  const part = view.drill.parts[index];
  if (!part) return [];
  const cards = Array.from({ length: askedOf(part) }, (_, card) => {
    const missed = view.marking?.missed.includes(card) ?? false;
    const at = { evening: view.id, part: index, card };
    return button(texts.cardLabel(part, card, missed), {
      kind: 'toggle',
      ...at,
      missed: missed ? 1 : 0,
    });
  });
  return [
    ...rows(cards, part.strand === 'clock' ? 1 : 2),
    [button(BUTTONS.done, { kind: 'done', evening: view.id, part: index })],
  ];
}

function saidButtons(view: EveningView, index: number): Button[][] {
  const part = view.drill.parts[index];
  if (part?.kind !== 'run') return [];
  const at = { evening: view.id, part: index };
  const numbers = runNumbers(part).map((number, place) =>
    button(String(number), { kind: 'said', ...at, said: place + 1 }),
  );
  return [...rows(numbers, 5), [button(BUTTONS.noneSaid, { kind: 'said', ...at, said: 0 })]];
}

/** A text with the part it is about, in the family's way: a clip, a picture, or words. A clock is always a picture. */
function shown(
  text: Screen['text'],
  view: EveningView,
  index: number,
  { painter, clips, way }: Means,
): Pick<Screen, 'text' | 'clip' | 'picture' | 'words'> {
  const part = view.drill.parts[index];
  if (!part) return { text };
  const untimed = view.drill.adjusted?.untimed === true;
  const afterClock = view.drill.parts.slice(0, index).some(({ strand }) => strand === 'clock');
  const words = texts.partInWords(part);
  if (way === 'words' && part.strand !== 'clock') {
    // A message cannot lose its picture: over what follows a clock, a small picture of the title takes the clocks' place.
    const picture = afterClock ? titlePicture(painter, part, untimed) : undefined;
    return { text: lines(text, '', words), picture };
  }
  const picture = partPicture(painter, part);
  // A clip goes from card to card at a pace; without one there is the sheet.
  const wantsClip = !untimed && (way === undefined || way === 'clip');
  const clip = wantsClip ? partClip(clips, part) : undefined;
  return { text, clip, picture, words };
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

function resultScreen(view: EveningView, { painter, way }: Means): Screen {
  return {
    text: texts.result(view),
    buttons: [[button(BUTTONS.fix, { kind: 'fix', evening: view.id })]],
    picture: way === 'words' && !hasClock(view) ? undefined : resultPicture(painter, view),
  };
}

function hasClock({ drill }: EveningView): boolean {
  return drill.parts.some(({ strand }) => strand === 'clock');
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
    buttons: [...parts, ...pages, [button(BUTTONS.back, { kind: 'start', evening: view.id })]],
  };
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
  return {
    text: texts.elsewhere(view, finished),
    buttons: finished ? [] : goOn(BUTTONS.openHere),
  };
}
