import fc from 'fast-check';
import type { CallbackQuery, Message, Update } from 'grammy/types';

/** An update without its number, as it is put into the service's queue. */
export type HostileUpdate = Readonly<Record<string, unknown>>;

/** Who sends, and what they know. */
export interface Hostility {
  /** Accounts that belong to nobody in the school, chats open. */
  readonly strangers: readonly number[];
  /** Accounts of the school. Only what cannot be an honest tap or text is sent in their name. */
  readonly known: readonly number[];
  /** What the right ones' buttons carry. */
  readonly buttons: readonly string[];
}

const person = (id: number) => ({ id, is_bot: false, first_name: 'Somebody' });
const privateChat = (id: number) => ({ id, type: 'private' as const, first_name: 'Somebody' });

// The shapes are the chat framework's own types of the service's updates: the compiler checks them.
const messageOf = (id: number, text: string) =>
  ({
    message_id: 90_000,
    date: 0,
    from: person(id),
    chat: privateChat(id),
    text,
  }) satisfies Message.TextMessage;

const tapOf = (id: number, chatId: number, query: { id: string; data: string }) =>
  ({
    id: query.id,
    from: person(id),
    chat_instance: '1',
    data: query.data,
    message: { message_id: 1, date: 0 as const, chat: privateChat(chatId) },
  }) satisfies CallbackQuery;

const PIECES = [
  '/start',
  '/start t-',
  '/time',
  '/erase',
  '/today@x',
  ' ',
  '\n',
  '\u0000',
  '\ud800',
  '\udfff',
];
const ODD = [
  '\u202e',
  '\u2066',
  '\ufeff',
  '👩‍👩‍👧‍👦',
  'e\u0301'.repeat(9),
  '%00',
  "'; drop table child; --",
  '{{x}}',
  '<b>',
];

/** Texts that people do not write: nought bytes, half characters, turned writing, commands with strange words, huge ones. */
export const hostileText: fc.Arbitrary<string> = fc.oneof(
  fc
    .array(fc.constantFrom(...PIECES, ...ODD, 'A'.repeat(22)), { maxLength: 6 })
    .map((all) => all.join('')),
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc
    .tuple(fc.constantFrom('x', '\u0000', '0123 ', '/', '👍'), fc.integer({ min: 1, max: 5_000 }))
    .map(([unit, times]) => unit.repeat(times)),
);

/** A button's data, almost: a letter more, less, or another one; a field too many; another version or tag; or as it is. */
function nearButton(buttons: readonly string[]): fc.Arbitrary<string> {
  const place = fc.nat({ max: 63 });
  const letter = fc.constantFrom(...':0123456789aZ_-.!\u0000é');
  return fc
    .tuple(fc.constantFrom(...buttons), place, letter, fc.nat({ max: 6 }))
    .map(([data, at, put, how]) => {
      const cut = at % (data.length + 1);
      const [start, end] = [data.slice(0, cut), data.slice(cut)];
      const changes = [data, start, start + put + end, start + put + end.slice(1)];
      return (
        [...changes, `${data}:${put}`, `2${data.slice(1)}`, `1:${put}${data.slice(3)}`][how] ?? data
      );
    });
}

/** Values of a wrong kind, for any place in an update. */
const junk: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(null, true, -1, 0.5, 2 ** 53, 1e300, '', 'x', '\u0000', 'x'.repeat(9_000)),
  fc.constantFrom<unknown>([], {}, [[]], [null], { id: {} }, { type: 'private' }),
  fc.object({ maxDepth: 2, maxKeys: 3 }),
);

/** An update with one thing in it left out or of a wrong kind, somewhere. */
function broken(whole: fc.Arbitrary<HostileUpdate>): fc.Arbitrary<HostileUpdate> {
  return fc
    .tuple(whole, fc.nat(), fc.option(junk, { nil: undefined }))
    .map(([update, at, value]) => {
      const places = pathsIn(update);
      return changedAt(update, places[at % places.length] ?? [], value) as HostileUpdate;
    });
}

function pathsIn(value: unknown, path: readonly string[] = []): string[][] {
  const own = path.length === 0 ? [] : [[...path]];
  if (typeof value !== 'object' || value === null) return own;
  return [
    ...own,
    ...Object.entries(value).flatMap(([key, inner]) => pathsIn(inner, [...path, key])),
  ];
}

function changedAt(value: unknown, [key, ...rest]: readonly string[], put: unknown): unknown {
  if (key === undefined) return put;
  return Object.fromEntries(
    Object.entries(Object(value)).map(([name, inner]) => [
      name,
      name === key ? changedAt(inner, rest, put) : inner,
    ]),
  );
}

/** Updates that no honest phone sends, of every kind there is. Each tap has a query of its own. */
export function hostileUpdate({
  strangers,
  known,
  buttons,
}: Hostility): fc.Arbitrary<HostileUpdate> {
  const stranger = fc.constantFrom(...strangers);
  const anybody = fc.constantFrom(...strangers, ...known);
  const query = fc.record({
    id: fc.bigInt({ min: 1n, max: 2n ** 62n }).map(String),
    data: nearButton(buttons),
  });
  const text = fc
    .tuple(stranger, hostileText)
    .map(([id, words]) => ({ message: messageOf(id, words) }));
  const tap = fc.tuple(stranger, query).map(([id, it]) => ({ callback_query: tapOf(id, id, it) }));
  const forged = fc
    .tuple(anybody, anybody, query)
    .filter(([id, chat]) => id !== chat)
    .map(([id, chat, it]) => ({ callback_query: tapOf(id, chat, it) }));
  const kinds = fc.constantFrom(...OTHER_KINDS);
  const other = fc
    .tuple(kinds, stranger, hostileText)
    .map(([kind, id, words]) => ({ [kind]: { ...messageOf(id, words), id: '1', query: words } }));
  const group = fc
    .tuple(anybody, hostileText, fc.constantFrom('group', 'supergroup', 'channel'))
    .map(([id, words, type]) => ({
      message: { ...messageOf(id, words), chat: { id: -id, type, title: words } },
    }));
  const whole: fc.Arbitrary<HostileUpdate> = fc.oneof(text, tap, forged);
  return fc.oneof(
    { arbitrary: text, weight: 3 },
    { arbitrary: tap, weight: 5 },
    { arbitrary: forged, weight: 3 },
    { arbitrary: other, weight: 1 },
    { arbitrary: group, weight: 1 },
    { arbitrary: broken(whole), weight: 4 },
  );
}

const OTHER_KINDS = [
  'edited_message',
  'channel_post',
  'edited_channel_post',
  'inline_query',
  'chosen_inline_result',
  'my_chat_member',
  'chat_member',
  'chat_join_request',
  'message_reaction',
  'poll',
  'poll_answer',
  'shipping_query',
  'pre_checkout_query',
  'business_message',
] as const satisfies readonly (keyof Update)[];
