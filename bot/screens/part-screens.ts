import type { EveningView } from '../../db/index.ts';
import { askedOf, type DrillPart, runNumbers } from '../../drills/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { cardLabel, partInWords } from '../texts/cards.ts';
import * as texts from '../texts/evening.ts';
import { meaningLine } from '../texts/gloss.ts';
import { STOP_BUTTONS } from '../texts/stop-today.ts';
import { lines } from '../texts/words.ts';
import { aidSheet } from './card-pictures.ts';
import { cardScreen } from './card-screen.ts';
import { partClip } from './clips.ts';
import {
  asShown,
  hasClocks,
  isPicturedBefore,
  isUntimed,
  type Means,
  type Showing,
  showingOf,
} from './means.ts';
import { partPicture, titlePicture } from './pictures.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** A part that is to be practised: all its cards, or the first of them. */
export function partScreen(view: EveningView, index: number, means: Means): Screen {
  const part = view.drill.parts[index];
  if (!part) return { text: texts.heading(view), buttons: [] };
  const showing = showingOf(view, part, means);
  if (showing === 'single') return cardScreen(view, index, { card: 0, shown: false }, means);
  const at = { evening: view.id, part: index };
  const isRun = part.kind === 'run';
  return {
    ...shown(texts.partTask(asShown(view, means), index), { view, index, part }, showing, means),
    buttons: [
      [
        button(isRun ? BUTTONS.allSaid : BUTTONS.allRight, { kind: 'allRight', ...at }),
        button(isRun ? BUTTONS.stoppedEarlier : BUTTONS.someMissed, { kind: 'mark', ...at }),
      ],
      stopRow(view),
    ],
  };
}

/** A part that is being marked: the next of its cards where they are asked one by one, and else all of them. */
export function markingScreen(view: EveningView, index: number, means: Means): Screen {
  const part = view.drill.parts[index];
  if (!part) return { text: texts.heading(view), buttons: [] };
  const showing = showingOf(view, part, means);
  const single = view.marking?.single;
  if (single && showing === 'single') return cardScreen(view, index, single, means);
  const isOpen = view.results.some((result) => result === null);
  return {
    ...shown(
      texts.marking(view, index),
      { view, index, part },
      listed(showing, part, means),
      means,
    ),
    ...explained(view, part, means),
    buttons: [
      ...(part.kind === 'run' ? saidButtons(view, index) : missedButtons(view, index)),
      ...(isOpen ? [stopRow(view)] : []),
    ],
  };
}

/** Cards that were asked one by one are listed with their answers on the buttons: a sheet says nothing more, but of clocks. */
function listed(showing: Showing, part: DrillPart, { bigger = false }: Means): Showing {
  if (showing !== 'single') return showing;
  return hasClocks(part) || bigger ? 'sheet' : 'words';
}

/** With the clock aid, clocks are marked from a drawing that explains them. */
function explained(
  view: EveningView,
  part: DrillPart,
  { painter, clockAid = false }: Means,
): Pick<Screen, 'clip' | 'picture'> {
  const picture = clockAid ? aidSheet(painter, part, view.language) : null;
  return picture ? { clip: undefined, picture } : {};
}

/** Stops for the day: one tap, and no question. */
function stopRow({ id }: EveningView): Button[] {
  return [button(STOP_BUTTONS.stop, { kind: 'stopToday', evening: id })];
}

function missedButtons(view: EveningView, index: number): Button[][] {
  const part = view.drill.parts[index];
  if (!part) return [];
  const cards = Array.from({ length: askedOf(part) }, (_, card) => {
    const missed = view.marking?.missed.includes(card) ?? false;
    const at = { evening: view.id, part: index, card };
    return button(cardLabel(part, card, missed, view.language), {
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

interface At {
  readonly view: EveningView;
  readonly index: number;
  readonly part: DrillPart;
}

/** A text with the part it is about: a clip, a picture, or words. */
function shown(
  text: Screen['text'],
  { view, index, part }: At,
  showing: Showing,
  means: Means,
): Pick<Screen, 'text' | 'clip' | 'picture' | 'words'> {
  const { painter, clips } = means;
  const words = partInWords(part, view.language);
  if (showing === 'words') {
    // A message cannot lose its picture: over what follows a clock, a small picture of the title takes the clocks' place.
    const picture = isPicturedBefore(view, index, means)
      ? titlePicture(painter, part, isUntimed(view, means))
      : undefined;
    return { text: lines(text, '', words), picture };
  }
  // A clip goes from card to card at a pace; without one there is the sheet.
  const clip = showing === 'clip' ? partClip(clips, part, view.language) : undefined;
  return {
    text: lines(text, meaningLine(part, view.language)),
    clip,
    picture: partPicture(painter, part, view.language),
    words,
  };
}
