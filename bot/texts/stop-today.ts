import type { EveningView } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { heading } from './evening.ts';
import { partInList } from './part-title.ts';
import { lines, listOf, type Text } from './words.ts';

/** The buttons for a day that is too much, and for going on all the same. */
export const STOP_BUTTONS = {
  get stop() {
    return say('stop-today-stop');
  },
  get goOn() {
    return say('stop-today-go-on');
  },
};

/** What stands on the small picture that takes the cards' place. */
export function stoppedTitle(): string {
  return say('stop-today-fine');
}

/**
 * After "Stop for today". It names what was practised, and no score: nobody is compared with a better day now. Nobody is asked
 * why either.
 */
export function stopped(view: EveningView): Text {
  const done = view.drill.parts.flatMap((part, index) =>
    view.results[index] ? [partInList(part)] : [],
  );
  return lines(
    heading(view),
    say('stop-today-fine'),
    done.length > 0 ? say('stop-today-done', { parts: listOf([...new Set(done)]) }) : null,
    say('stop-today-until'),
  );
}
