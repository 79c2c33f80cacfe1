import type { Way } from '../../db/index.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

const LABELS: Readonly<Record<Way, string>> = {
  clip: 'Clip',
  pictures: 'Pictures',
  words: 'Words only',
};

/** What the button of a way says. */
export function wayLabel(way: Way): string {
  return LABELS[way];
}

/** Choosing how the evening is shown, and what each way costs in data. `untimed` are the children who get no clip. */
export function chooseWay(untimed: readonly string[] = []): Text {
  return lines(
    bold('How shall the cards be shown?'),
    `${LABELS.clip}: a short video, card after card, about 250 kB an evening.`,
    `${LABELS.pictures}: all cards of a part at once, about 100 kB an evening.`,
    `${LABELS.words}: cards as text, pictures of clocks only, under 60 kB an evening.`,
    untimed.length > 0
      ? `For ${listOf(untimed.map(name))} without timing: pictures instead of a clip.`
      : null,
    '',
    'Your choice counts from the next screen, on this phone only.',
  );
}

/** The line that answers a choice. */
export function wayChosen(way: Way): string {
  return `${LABELS[way]}, from the next screen.`;
}
