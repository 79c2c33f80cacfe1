import type { ClassNewsView } from '../../db/index.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** To a family whose class is put away. */
export function classStopped({ title, nicknames }: ClassNewsView): Text {
  return lines(
    bold(`Practice in ${name(title)} has ended.`),
    `No more drills come for ${listOf(nicknames.map(name))}. You need to do nothing.`,
    'Thank you for every evening. Questions? Please ask the class teacher.',
  );
}

/** To a family that was told that practice ends, when it goes on after all. */
export function classResumed({ title, nicknames }: ClassNewsView): Text {
  return lines(
    bold(`Practice in ${name(title)} goes on after all.`),
    `The drills for ${listOf(nicknames.map(name))} come as before. The earlier message was a mistake.`,
  );
}

/** To a class's other teachers, when it is put away. */
export function classStoppedForTeacher({ title }: ClassNewsView): Text {
  return lines(
    bold(`${name(title)} was archived by its lead teacher.`),
    'Nothing is sent to families any more. For a day any teacher of the class can take it back: /undo.',
  );
}

/** To a class's other teachers, when it is back. */
export function classResumedForTeacher({ title }: ClassNewsView): Text {
  return lines(bold(`${name(title)} is back: it was archived by mistake.`), 'Everything goes on.');
}

/** To the lead whose class somebody took over. */
export function handedOver({ title }: ClassNewsView): Text {
  return lines(
    bold(`${name(title)} has a new lead teacher.`),
    'Your link was used. You stay as a co-teacher; to leave, send /class and tap Teachers.',
  );
}
