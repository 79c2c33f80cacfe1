import { BUTTONS } from '../../bot/texts/buttons.ts';
import { STOP_BUTTONS } from '../../bot/texts/stop-today.ts';
import type { Random } from '../../drills/index.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { labelsOf } from './phones.ts';

/** When a family answers an evening, if it does. */
export type Habit = 'plays' | 'plays after the nudge' | 'not today' | 'is silent';

/** What a family is going to do on one evening, decided before it sees a screen. */
export interface Intention {
  readonly habit: Habit;
  /** For each part of cards: which are missed, counted from 1. */
  readonly missed: readonly (readonly number[])[];
  /** How many numbers of the run are said. */
  readonly said: number;
  readonly pages: number;
}

/** Draws what a family does: two evenings in three it plays. `sizes` are the cards of each part; the run comes last. */
export function drawIntention(random: Random, sizes: readonly number[], run: number): Intention {
  const lot = random.int(12);
  const habit =
    lot < 6 ? 'plays' : lot < 8 ? 'plays after the nudge' : lot < 10 ? 'not today' : 'is silent';
  return {
    habit,
    missed: sizes.map((size) =>
      Array.from({ length: size }, (_, card) => card + 1).filter(() => random.int(4) === 0),
    ),
    said: random.int(run + 1),
    pages: random.int(4),
  };
}

/** What a person who means this taps on the screen before them; null when there is nothing left to do. */
export function nextTap(screen: ChatMessage, intention: Intention): string | null {
  const labels = labelsOf(screen);
  const has = (label: string) => labels.includes(label);
  if (has(BUTTONS.start)) return intention.habit === 'not today' ? BUTTONS.notToday : BUTTONS.start;
  if (has(BUTTONS.allRight)) {
    const part = Number(/Part (\d)/.exec(screen.text)?.[1]);
    return (intention.missed[part - 1] ?? []).length === 0 ? BUTTONS.allRight : BUTTONS.someMissed;
  }
  if (has(BUTTONS.done)) return tapWhileMarking(screen, intention);
  const numbers = labels.filter((label) => /^\d+$/.test(label));
  if (has(BUTTONS.allSaid)) return BUTTONS.stoppedEarlier;
  if (has(BUTTONS.noneSaid)) return numbers[intention.said - 1] ?? BUTTONS.noneSaid;
  if (screen.text.includes('How many pages')) return numbers[intention.pages - 1] ?? 'None';
  return null;
}

/** Which part is being marked is not on the screen by number; its size tells, since no two parts have the same. */
function tapWhileMarking(screen: ChatMessage, { missed }: Intention): string {
  const cards = labelsOf(screen).filter(
    (label) => label !== BUTTONS.done && label !== STOP_BUTTONS.stop,
  );
  const own = missed[sizeOrder(cards.length)] ?? [];
  const open = own.find((card) => cards.some((label) => label.startsWith(`${card}. `)));
  return open === undefined ? BUTTONS.done : `${open}. `;
}

/** Parts get one card fewer each: the first has six, the second five. */
function sizeOrder(cards: number): number {
  return 6 - cards;
}
