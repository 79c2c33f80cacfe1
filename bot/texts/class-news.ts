import type { ClassNewsView } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** To a family whose class is put away. */
export function classStopped({ title, nicknames }: ClassNewsView): Text {
  return lines(
    bold(say('class-news-ended', { class: name(title) })),
    say('class-news-no-more', { children: listOf(nicknames.map(name)) }),
    say('class-news-thanks'),
  );
}

/** To a family that was told that practice ends, when it goes on after all. */
export function classResumed({ title, nicknames }: ClassNewsView): Text {
  return lines(
    bold(say('class-news-resumed', { class: name(title) })),
    say('class-news-as-before', { children: listOf(nicknames.map(name)) }),
  );
}

/** To a class's other teachers, when it is put away. */
export function classStoppedForTeacher({ title }: ClassNewsView): Text {
  return lines(
    bold(say('class-news-archived', { class: name(title) })),
    say('class-news-archived-undo'),
  );
}

/** To a class's other teachers, when it is back. */
export function classResumedForTeacher({ title }: ClassNewsView): Text {
  return lines(bold(say('class-news-back', { class: name(title) })), say('class-news-goes-on'));
}

/** To the lead whose class somebody took over. */
export function handedOver({ title }: ClassNewsView): Text {
  return lines(
    bold(say('class-news-new-lead', { class: name(title) })),
    say('class-news-link-used', { teachers: BUTTONS.teachers }),
  );
}
