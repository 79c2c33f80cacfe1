import type { ErasingChild, OwnChild } from '../../db/index.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** To another helper of a child that is being erased. */
export function erasingForHelper({ nickname }: ErasingChild): Text {
  return lines(
    bold(`Everything kept about ${name(nickname)} is being erased.`),
    'Another of the child’s helpers asked for it. No more drills come.',
    'For a day it can be taken back by whoever asked. Until then /mydata sends you a copy.',
  );
}

/** To another helper, when the wish was taken back. */
export function keptForHelper({ nickname }: ErasingChild): Text {
  return lines(
    bold(`${name(nickname)} is not erased after all.`),
    'Whoever asked for it took it back. The drills come as before.',
  );
}

/** To a teacher of a child that is being erased. By its number alone, and without reasons. */
export function erasingForTeacher({ number, classTitle }: ErasingChild): Text {
  return lines(
    bold(`No. ${number} of ${name(classTitle)} is being erased, as the family wishes.`),
    'The child is off the list now. In a day everything kept about it is gone; you need to do nothing.',
  );
}

/** To a teacher, when the wish was taken back. */
export function keptForTeacher({ number, classTitle }: ErasingChild): Text {
  return lines(
    bold(`No. ${number} of ${name(classTitle)} is back on the list.`),
    'The family took its wish back. Nothing was lost.',
  );
}

/** Beside the two files of a child. */
export function dataOf(nickname: string): Text {
  return lines(
    bold(`Everything kept about ${name(nickname)}`),
    'The table opens in a spreadsheet; the other file is the same for programs (JSON).',
    'Messages in this chat are yours; deleting them is up to you.',
  );
}

/** Which child is to be erased, when there are several. */
export function chooseToErase(children: readonly OwnChild[]): Text {
  return lines(
    bold('Erase what is kept about a child'),
    `Whose? You help ${listOf(children.map(({ nickname }) => name(nickname)))}.`,
  );
}

/** Asking once before a child is erased. */
export function askToErase(nickname: string): Text {
  return lines(
    bold(`Erase everything about ${name(nickname)}?`),
    'At once: no more drills, to any helper. The child is off the class’s list.',
    'After a day: nickname, marks, pages, agreements and your account here are deleted for good.',
    'Other helpers and the teacher are told, without reasons. Paper and chat messages are not deleted.',
    'Want a copy first? Send /mydata.',
  );
}

/** After the wish. */
export function erasing(nickname: string): Text {
  return lines(
    bold(`${name(nickname)} is being erased.`),
    'Nothing is sent any more. In a day everything is gone.',
    'Until then Undo brings all of it back, and /mydata sends a copy.',
  );
}

/** When another helper's wish is running. */
export function erasingByAnother(nickname: string): Text {
  return lines(
    bold(`${name(nickname)} is being erased already.`),
    'Another helper asked for it. Only they can take it back, for a day.',
    '/mydata sends you a copy until then.',
  );
}

/** After the wish was taken back. */
export function keptAfterAll(nickname: string): Text {
  return lines(bold(`${name(nickname)} stays.`), 'Nothing was lost. The drills come as before.');
}

/** After deciding against it. */
export function notErased(): Text {
  return lines('Nothing was changed.');
}

/** For somebody about whom nothing is kept as a helper. */
export function nothingHeld(): Text {
  return lines(
    'Nothing about a child is kept for you here. If you help a child, open your join link first.',
  );
}

/** For the operator, after `npm run erase`. */
export function erasedByOperator(done: boolean, childId: string): string {
  return done
    ? `Erased the child ${childId} and every helper without another child.`
    : `There is no child ${childId}. Nothing was changed.`;
}
