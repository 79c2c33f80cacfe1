import type { ClassTeacher, OpenInvite, SchoolClass, TeacherRole } from '../../db/index.ts';
import { INVITE_DAYS, LEFT_DAYS, localTimeAt } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { bold, lines, name, shortDate, type Text } from './words.ts';

/** Who teaches a class. No account name is stored, so the others are numbers. */
export function teacherList(
  schoolClass: SchoolClass,
  teachers: readonly ClassTeacher[],
  open: readonly OpenInvite[],
): Text {
  const you = teachers.find(({ isYou }) => isYou);
  const role = you?.role === 'lead' ? 'lead' : 'co';
  const others = teachers.length - 1;
  return lines(
    bold(say('teachers-title', { class: name(schoolClass.title) })),
    others > 0 ? say(`teachers-you-${role}`, { others }) : say('teachers-alone'),
    ...open.map((invite) => openLine(schoolClass, invite)),
    say(`teachers-${role}-can`),
    others > 0 ? say('teachers-no-names') : null,
  );
}

function openLine({ zone }: SchoolClass, { role, expiresAt }: OpenInvite): string {
  return say(`teachers-open-${role}`, { day: shortDate(localTimeAt(expiresAt, zone).day) });
}

/** The link itself, shown once. */
export function teacherLink(schoolClass: SchoolClass, role: TeacherRole, link: string): Text {
  return lines(
    bold(say(`teachers-link-${role}`, { class: name(schoolClass.title) })),
    link,
    say('teachers-link-once', { days: INVITE_DAYS }),
    say(`teachers-link-note-${role}`),
  );
}

/** For a second tap on a button that makes a link. */
export function linkMade(): string {
  return say('teachers-link-made');
}

/** A co-teacher's button, which takes them out. `number` counts from 1. */
export function removeTeacherButton(
  { zone }: SchoolClass,
  { since }: ClassTeacher,
  number: number,
): string {
  return say('teachers-remove', { number, day: shortDate(localTimeAt(since, zone).day) });
}

/** After a co-teacher was taken out. */
export function teacherRemoved(): string {
  return say('teachers-removed');
}

/** Before leaving. */
export function askToLeaveClass({ title }: SchoolClass): Text {
  return lines(bold(say('teachers-leave', { class: name(title) })), say('teachers-leave-note'));
}

/** After leaving. */
export function classLeft(): string {
  return say('teachers-left');
}

/** After a class is archived. */
export function classArchived({ title }: Pick<SchoolClass, 'title'>): Text {
  return lines(
    bold(say('teachers-archived', { class: name(title) })),
    say('teachers-archived-now'),
    say('teachers-archived-undo', { undo: BUTTONS.undo, days: LEFT_DAYS }),
  );
}

/** After a link for a class is opened. */
export function joinedClass({ title }: SchoolClass, role: TeacherRole): Text {
  return lines(
    bold(say(`teachers-joined-${role}`, { class: name(title) })),
    say(`teachers-joined-note-${role}`),
  );
}

/** The classes of a teacher, to choose one. */
export function classList(classes: number, page: number, pages: number): Text {
  return lines(
    bold(say('teachers-classes')),
    classes === 0 ? say('teachers-classes-none') : null,
    pages > 1 ? say('teachers-classes-page', { classes, page: page + 1, pages }) : null,
  );
}

/** `/teach` where it takes an invitation. */
export function byInvitation(): Text {
  return lines(say('teachers-by-invitation'));
}
