import { z } from 'zod';
import { dropExpectation, type Expectation, expectText, readExpectation } from '../../db/index.ts';
import type { BotDeps } from '../deps.ts';
import type { AwaitedAnswer } from '../texts/help.ts';

/** What a teacher can be asked to type about a class. */
export const CLASS_QUESTIONS = [
  'title',
  'zone',
  'roster',
  'evening',
  'nudge',
  'digest',
  'break',
  'greeting',
] as const;

/** One of {@link CLASS_QUESTIONS}. */
export type ClassQuestion = (typeof CLASS_QUESTIONS)[number];

/** What a teacher can be asked to type about workbooks; `childId` is the one child it is about, null for the class. */
const bookQuestion = z.object({
  classId: z.uuid(),
  what: z.enum(['new', 'change', 'page']),
  bookId: z.uuid().nullable(),
  childId: z.uuid().nullable(),
});

/** A question about workbooks. */
export type BookQuestion = z.infer<typeof bookQuestion>;

const wishes = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('new_title'), data: z.object({}) }),
  z.object({ kind: z.literal('new_zone'), data: z.object({ title: z.string() }) }),
  z.object({
    kind: z.literal('class'),
    data: z.object({ classId: z.uuid(), question: z.enum(CLASS_QUESTIONS) }),
  }),
  z.object({ kind: z.literal('book'), data: bookQuestion }),
  // A recording that waits until its teacher has said what it is for.
  z.object({
    kind: z.literal('recording'),
    data: z.object({ kind: z.enum(['voice', 'video']), fileId: z.string(), messageId: z.int() }),
  }),
  // The day on which the drill shall come again.
  z.object({ kind: z.literal('pause'), data: z.object({}) }),
  z.object({ kind: z.literal('file'), data: z.object({ fileId: z.string() }) }),
  // A class list read off a file, until it is confirmed.
  z.object({
    kind: z.literal('file_list'),
    data: z.object({
      fileId: z.string(),
      classId: z.uuid(),
      heading: z.union([z.literal(0), z.literal(1)]),
      stamp: z.string(),
      nicknames: z.array(z.string()),
    }),
  }),
  z.object({
    kind: z.literal('nickname'),
    data: z.object({ classId: z.uuid(), number: z.int() }),
  }),
]);

/** What the bot waits for a person to type: a new class's title, its zone, or an answer about a class. */
export type Wish = z.infer<typeof wishes>;

/** A wish of one kind. */
export type WishOf<K extends Wish['kind']> = Extract<Wish, { kind: K }>;

/** What a wish waits for, as a text names it. */
export function waitingFor(wish: Wish): AwaitedAnswer {
  switch (wish.kind) {
    case 'class':
      return wish.data.question;
    case 'book':
      return `book_${wish.data.what}`;
    default:
      return wish.kind;
  }
}

/** Notes what a person is expected to type next. */
export async function expect(deps: BotDeps, chatId: number, wish: Wish): Promise<void> {
  const expectation: Expectation = wish;
  await expectText(deps.store, { chatId, expectation, now: deps.clock.now() });
}

/** What is expected of a chat; null when nothing is, or when an older release expected something we no longer know. */
export async function expected(deps: BotDeps, chatId: number): Promise<Wish | null> {
  const found = await readExpectation(deps.store, chatId);
  const parsed = wishes.safeParse(found);
  return parsed.success ? parsed.data : null;
}

/** Nothing is expected any more. */
export async function fulfilled(deps: BotDeps, chatId: number): Promise<void> {
  await dropExpectation(deps.store, chatId);
}
