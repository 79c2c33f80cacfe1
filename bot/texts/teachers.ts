import type { ClassTeacher, OpenInvite, SchoolClass, TeacherRole } from '../../db/index.ts';
import { INVITE_DAYS, LEFT_DAYS, localTimeAt } from '../../db/index.ts';
import { bold, count, lines, name, shortDate, type Text } from './words.ts';

/** Who teaches a class. No account name is stored, so the others are numbers. */
export function teacherList(
  schoolClass: SchoolClass,
  teachers: readonly ClassTeacher[],
  open: readonly OpenInvite[],
): Text {
  const you = teachers.find(({ isYou }) => isYou);
  const others = teachers.length - 1;
  return lines(
    bold(`${name(schoolClass.title)}: teachers`),
    others > 0
      ? `You and ${others} more. You are ${you?.role === 'lead' ? 'the lead teacher' : 'a co-teacher'}.`
      : 'You alone.',
    ...open.map((invite) => openLine(schoolClass, invite)),
    you?.role === 'lead'
      ? 'Each teacher sees and does everything. Inviting, removing and archiving are for the lead.'
      : 'You see and do everything here. Inviting, removing and archiving are for the lead.',
    others > 0 ? 'No names are kept: co-teachers are told apart by the day they came.' : null,
  );
}

function openLine({ zone }: SchoolClass, { role, expiresAt }: OpenInvite): string {
  const until = shortDate(localTimeAt(expiresAt, zone).day);
  return role === 'lead'
    ? `A link to hand the class over is open until ${until}.`
    : `A link for a co-teacher is open until ${until}.`;
}

/** The link itself, shown once. */
export function teacherLink(schoolClass: SchoolClass, role: TeacherRole, link: string): Text {
  const title = name(schoolClass.title);
  return lines(
    bold(role === 'lead' ? `To hand over ${title}` : `For a co-teacher of ${title}`),
    link,
    `For one person, once, within ${INVITE_DAYS} days. I show it only now.`,
    role === 'lead'
      ? 'Whoever opens it becomes the lead teacher. You stay as a co-teacher until you leave.'
      : 'Whoever opens it sees the children’s nicknames and results: pass it on with care.',
  );
}

/** For a second tap on a button that makes a link. */
export const LINK_MADE =
  'A link was made since this was shown; it is further down. If none came, tap once more.';

/** A co-teacher's button, which takes them out. `number` counts from 1. */
export function removeTeacherButton(
  { zone }: SchoolClass,
  { since }: ClassTeacher,
  number: number,
): string {
  return `✗ Co-teacher ${number}, since ${shortDate(localTimeAt(since, zone).day)}`;
}

/** After a co-teacher was taken out. */
export function teacherRemoved(): string {
  return 'Removed. They see nothing of this class any more.';
}

/** Before leaving. */
export function askToLeaveClass({ title }: SchoolClass): Text {
  return lines(
    bold(`Leave ${name(title)}?`),
    'You no longer see it and get no digest. The class goes on. To come back you need a new link from its lead teacher.',
  );
}

/** After leaving. */
export function classLeft(): string {
  return 'You have left the class.';
}

/** After a class is archived. */
export function classArchived({ title }: Pick<SchoolClass, 'title'>): Text {
  return lines(
    bold(`${name(title)} is archived.`),
    'Nothing is sent any more, tonight’s drills included. In an hour each family is told once that practice stops.',
    `Undo brings everything back, for a day. Before the hour is over nobody hears of it. After ${LEFT_DAYS} days the children’s data is deleted.`,
  );
}

/** After a link for a class is opened. */
export function joinedClass({ title }: SchoolClass, role: TeacherRole): Text {
  return lines(
    bold(
      `You teach ${name(title)} now, as ${role === 'lead' ? 'its lead teacher' : 'a co-teacher'}.`,
    ),
    role === 'lead'
      ? 'If somebody handed it to you, they stay as a co-teacher until they leave.'
      : 'You can do everything here but invite, remove and archive. The digest comes to you too.',
  );
}

/** The classes of a teacher, to choose one. */
export function classList(classes: number, page: number, pages: number): Text {
  return lines(
    bold('Your classes'),
    classes === 0 ? 'None at the moment. Make one, or open a colleague’s link.' : null,
    pages > 1 ? `${count(classes, 'class', 'classes')}. Page ${page + 1} of ${pages}.` : null,
  );
}

/** `/teach` where it takes an invitation. */
export function byInvitation(): Text {
  return lines(
    'Here a teacher needs an invitation. Ask the person who runs this bot for one, or a colleague for a link to their class.',
  );
}
