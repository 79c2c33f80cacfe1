import {
  acceptSlip,
  acceptTeacherInvite,
  addChildren,
  type BotChat,
  type ClassSettings,
  createClass,
  findHelperByChat,
  type Helper,
  issueSlips,
  issueTeacherInvite,
  REHEARSAL_BOT,
  type RosterChild,
  type SchoolClass,
  type Store,
  type Teacher,
  type TeacherScope,
} from '../../db/index.ts';
import { MORNING, time, ZONE } from './term.ts';

let lastChat = 1_000;

/** A chat account that nobody in this file has used yet. */
export function aChat(): number {
  lastChat += 1;
  return lastChat;
}

/** An account's chat with the bot that all classes of these tests belong to. */
export const onBot = (chatId: number): BotChat => ({ botId: REHEARSAL_BOT, chatId });

/** Settings of Kingfisher class, which practises on weekdays at half past five. */
export const SETTINGS: ClassSettings = {
  title: 'Kingfisher class',
  zone: ZONE,
  weekdays: [1, 2, 3, 4, 5],
  eveningTime: time('17:30'),
  nudgeTime: time('18:45'),
  digestWeekday: 5,
  digestTime: time('19:00'),
};

/** The agreement every family of these tests gives. */
export const AGREEMENT = { textVersion: '1', language: 'en', messageId: 77 } as const;

/** A class, its teacher, and the scope in which that teacher asks. */
export interface Classroom {
  readonly teacher: Teacher;
  readonly schoolClass: SchoolClass;
  readonly scope: TeacherScope;
}

/** A child, its slip's code and the helpers who joined with it. */
export interface Family {
  readonly child: RosterChild;
  readonly code: string;
  readonly helpers: readonly Helper[];
  /** The first of `helpers`. */
  readonly helper: Helper;
}

/** A teacher with a chat account of their own. */
export async function aTeacher(store: Store): Promise<Teacher> {
  const code = await issueTeacherInvite(store, MORNING);
  return acceptTeacherInvite(store, { code, chatId: aChat(), now: MORNING });
}

/** A class with a teacher of its own. */
export async function aClass(
  store: Store,
  settings: Partial<ClassSettings> = {},
): Promise<Classroom> {
  const teacher = await aTeacher(store);
  const schoolClass = await createClass(store, {
    teacherId: teacher.id,
    settings: { ...SETTINGS, ...settings },
    now: MORNING,
  });
  return { teacher, schoolClass, scope: { teacherId: teacher.id, classId: schoolClass.id } };
}

/** A second class of the same teacher. */
export async function aSecondClass(store: Store, { teacher }: Classroom): Promise<Classroom> {
  const schoolClass = await createClass(store, {
    teacherId: teacher.id,
    settings: { ...SETTINGS, title: 'Heron class' },
    now: MORNING,
  });
  return { teacher, schoolClass, scope: { teacherId: teacher.id, classId: schoolClass.id } };
}

/** A child of the class without a helper. */
export async function aChild(
  store: Store,
  { scope }: Classroom,
  nickname = 'Wren',
): Promise<RosterChild> {
  const [child] = await addChildren(store, scope, { nicknames: [nickname], now: MORNING });
  if (!child) throw new Error('no child was added');
  return child;
}

/** A fresh slip for a child. */
export async function aSlip(
  store: Store,
  { scope }: Classroom,
  childId: string,
  now = MORNING,
): Promise<string> {
  const [slip] = await issueSlips(store, scope, { childIds: [childId], now });
  if (!slip) throw new Error('no slip was issued');
  return slip.code;
}

/** Joins an account to the slip's child. */
export async function aHelper(store: Store, code: string, chatId = aChat()): Promise<Helper> {
  await acceptSlip(store, { code, chatId, agreement: AGREEMENT, now: MORNING });
  const helper = await findHelperByChat(store, chatId);
  if (!helper) throw new Error('the helper is not known after joining');
  return helper;
}

/** A child with helpers who have joined, one unless said otherwise. */
export async function aFamily(
  store: Store,
  classroom: Classroom,
  { nickname = 'Wren', helpers: count = 1 } = {},
): Promise<Family> {
  const child = await aChild(store, classroom, nickname);
  const code = await aSlip(store, classroom, child.id);
  const helper = await aHelper(store, code);
  const helpers = [helper];
  while (helpers.length < count) helpers.push(await aHelper(store, code));
  return { child, code, helpers, helper };
}
