import type { Way } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** What the button of a way says. */
export function wayLabel(way: Way): string {
  return say(`way-${way}`);
}

/** Choosing how the evening is shown, and what each way costs in data. `untimed` are the children who get no clip. */
export function chooseWay(untimed: readonly string[] = []): Text {
  return lines(
    bold(say('way-which')),
    say('way-about-clip', { way: wayLabel('clip') }),
    say('way-about-pictures', { way: wayLabel('pictures') }),
    say('way-about-single', { way: wayLabel('single') }),
    say('way-about-words', { way: wayLabel('words') }),
    untimed.length > 0 ? say('way-untimed', { children: listOf(untimed.map(name)) }) : null,
    '',
    say('way-from-next'),
  );
}

/** The line that answers a choice. */
export function wayChosen(way: Way): string {
  return say('way-chosen', { way: wayLabel(way) });
}
