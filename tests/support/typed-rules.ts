import {
  CLASS_QUESTIONS,
  type ClassQuestion,
  type Wish,
  type WishOf,
} from '../../bot/features/expectations.ts';
import type { CommandName } from '../../bot/features/typed-commands.ts';
import type { RightThings } from './action-rules.ts';

/** What is typed behind each command. The compiler asks for an entry when a command is added. */
export const COMMAND_TRIES: Readonly<
  Record<CommandName, (wrongCode: string) => readonly string[]>
> = {
  start: (code) => ['', code, `t-${code}`],
  today: () => [''],
  time: () => ['18:15', '', '25:99'],
  show: () => [''],
  language: () => [''],
  settings: () => [''],
  share: () => [''],
  stop: () => [''],
  pause: () => ['', '12 October', 'soon'],
  days: () => [''],
  newclass: () => [''],
  class: () => [''],
  undo: () => [''],
  teach: () => [''],
  help: () => [''],
  erase: () => [''],
  mydata: () => [''],
};

/** A question that is open, and a good answer to it. */
export interface OpenQuestion {
  readonly wish: Wish;
  readonly answer: string;
}

const ANSWERS: Readonly<Record<ClassQuestion, string>> = {
  title: 'Swift class',
  zone: 'Europe/Paris',
  roster: 'Bramble\nJuniper',
  evening: '18:15',
  nudge: '19:15',
  digest: '19:45',
  break: '2026-11-02 to 2026-11-03 Fair',
  greeting: 'Hello from nobody.',
};

type Questions = {
  readonly [K in Wish['kind']]: (
    things: RightThings,
  ) => readonly { wish: WishOf<K>; answer: string }[];
};

/** Each question the bot can have open, about the right one's things. The compiler asks for an entry for each kind. */
const QUESTIONS: Questions = {
  new_title: () => [],
  new_zone: () => [],
  class: ({ classId }) =>
    CLASS_QUESTIONS.map((question) => ({
      wish: { kind: 'class', data: { classId, question } },
      answer: ANSWERS[question],
    })),
  book: ({ classId, book, childId }) => [
    {
      wish: { kind: 'book', data: { classId, what: 'new', bookId: null, childId: null } },
      answer: 'Pebble Path 3 1-40 2',
    },
    {
      wish: { kind: 'book', data: { classId, what: 'change', bookId: book, childId: null } },
      answer: 'Pebble Path 4 1-40 2',
    },
    { wish: { kind: 'book', data: { classId, what: 'page', bookId: book, childId } }, answer: '7' },
  ],
  recording: () => [],
  pause: () => [],
  file: () => [],
  file_list: () => [],
  nickname: ({ classId }) => [
    { wish: { kind: 'nickname', data: { classId, number: 1 } }, answer: 'Tansy' },
  ],
};

/** Every open question about the right one's things. */
export function openQuestions(things: RightThings): OpenQuestion[] {
  return Object.values(QUESTIONS).flatMap((questions): readonly OpenQuestion[] =>
    questions(things),
  );
}
