import { type Field, id, int, word } from './fields.ts';

/**
 * Everything a button can ask for: a two-letter tag and its fields, in the order they are written. Cards stay on phones for
 * days and across releases, so a tag never changes its meaning: retire it and take a new one.
 */
export const ACTIONS = {
  // A helper joining.
  agree: { tag: 'ag', fields: { code: word } },
  disagree: { tag: 'dg', fields: {} },
  leave: { tag: 'lv', fields: {} },
  stay: { tag: 'sy', fields: {} },
  /** `way` is how the evening is shown from now on. */
  chooseWay: { tag: 'wy', fields: { way: word } },
  // An evening.
  start: { tag: 'st', fields: { evening: id } },
  later: { tag: 'lt', fields: { evening: id } },
  notToday: { tag: 'nt', fields: { evening: id } },
  allRight: { tag: 'ar', fields: { evening: id, part: int } },
  mark: { tag: 'mk', fields: { evening: id, part: int } },
  /** `missed` is what the button shows, 0 or 1, so that a tap that comes twice turns the card once. */
  toggle: { tag: 'tg', fields: { evening: id, part: int, card: int, missed: int } },
  done: { tag: 'dn', fields: { evening: id, part: int } },
  said: { tag: 'sd', fields: { evening: id, part: int, said: int } },
  pages: { tag: 'pg', fields: { evening: id, pages: int } },
  fix: { tag: 'fx', fields: { evening: id } },
  fixPages: { tag: 'fp', fields: { evening: id } },
  // A class.
  openClass: { tag: 'oc', fields: { classId: id } },
  times: { tag: 'tm', fields: { classId: id } },
  /** `on` is what the day shall be, 0 or 1, so that a tap that comes twice turns the day once. */
  schoolDay: { tag: 'sc', fields: { classId: id, weekday: int, on: int } },
  digestDay: { tag: 'dd', fields: { classId: id, weekday: int } },
  askFor: { tag: 'as', fields: { classId: id, what: word } },
  children: { tag: 'ch', fields: { classId: id } },
  askLinks: { tag: 'la', fields: { classId: id } },
  /** `slips` is how many the class was ever given, so that a tap that comes twice makes one list. */
  makeLinks: { tag: 'lm', fields: { classId: id, slips: word } },
  pickChild: { tag: 'pc', fields: { classId: id } },
  childLink: { tag: 'ln', fields: { classId: id, number: int, slips: word } },
  breaks: { tag: 'br', fields: { classId: id } },
  removeBreak: { tag: 'rb', fields: { classId: id, index: int, first: word } },
  book: { tag: 'bk', fields: { classId: id } },
  retireBook: { tag: 'xb', fields: { classId: id } },
  digestNow: { tag: 'di', fields: { classId: id } },
  /** `paper` is a place in the list of papers. */
  print: { tag: 'wp', fields: { classId: id, paper: int } },
  printSlips: { tag: 'wj', fields: { classId: id, paper: int, slips: word } },
  printCards: { tag: 'wc', fields: { classId: id, paper: int } },
  printSheets: { tag: 'ws', fields: { classId: id, paper: int } },
  printSquares: { tag: 'wq', fields: { classId: id, paper: int } },
  // A week plan.
  plan: { tag: 'pl', fields: { classId: id } },
  planPart: { tag: 'pp', fields: { classId: id, part: int } },
  planAdd: { tag: 'pa', fields: { classId: id } },
  planStrand: { tag: 'ps', fields: { classId: id, part: int, strand: word } },
  /** `of` is which of the strand's steps: `usual`, `all`, or a group of counting runs. */
  planSteps: { tag: 'pz', fields: { classId: id, part: int, strand: word, of: word, page: int } },
  planRung: { tag: 'pr', fields: { classId: id, part: int, rung: word } },
  planCards: { tag: 'pn', fields: { classId: id, part: int, cards: int } },
  planSeconds: { tag: 'pt', fields: { classId: id, part: int, seconds: int } },
  planRemove: { tag: 'px', fields: { classId: id, part: int, rung: word } },
  planUse: { tag: 'pu', fields: { classId: id } },
  // The curriculum and grade that steps are sorted by.
  curriculum: { tag: 'cu', fields: { classId: id } },
  grades: { tag: 'gr', fields: { classId: id, curriculum: word } },
  chooseGrade: { tag: 'cg', fields: { classId: id, curriculum: word, grade: word } },
} as const satisfies Record<
  string,
  { tag: string; fields: Record<string, Field<string> | Field<number>> }
>;

/** Tags that buttons of earlier releases carry. They are never used again. */
export const RETIRED_TAGS: readonly string[] = ['cl', 'ml', 'wd'];

type Actions = typeof ACTIONS;
type ValueOf<F> = F extends Field<infer T> ? T : never;

/** The kinds of action there are. */
export type ActionKind = keyof Actions;

/** One kind of action with its values. */
export type ActionOf<K extends ActionKind> = { readonly kind: K } & {
  readonly [F in keyof Actions[K]['fields']]: ValueOf<Actions[K]['fields'][F]>;
};

/** What a button asks for. */
export type Action = { [K in ActionKind]: ActionOf<K> }[ActionKind];
