import type { Phone } from '../../bot/roots/phone.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { labelsOf } from './phones.ts';
import type { World } from './world.ts';

/** What a crawl may leave out, and how many buttons of one kind it tries. */
export interface CrawlOptions {
  /** Buttons that are not tapped. */
  readonly except?: readonly string[];
  readonly ofAKind?: number;
  /** Sees the whole chat whenever something was tapped. */
  readonly look?: (messages: readonly ChatMessage[]) => void;
}

/**
 * Taps every button that can be reached from a phone's newest message, each twice before the bot has answered once. Of
 * buttons that ask for the same with other values only some are tried. Returns the buttons tapped, and the taps that were
 * never answered.
 */
export async function tapEverythingTwice(
  world: World,
  phone: Phone,
  { except = [], ofAKind = 3, look }: CrawlOptions = {},
): Promise<{ tapped: readonly string[]; unanswered: readonly string[] }> {
  const { id: messageId } = await phone.last();
  const seen = new Map<string, string>();
  const tapped: string[] = [];
  const unanswered: string[] = [];
  for (;;) {
    const chat = await phone.chat();
    look?.(chat);
    for (const { text, data } of buttonsOn(chat)) seen.set(data, text);
    const next = [...seen].find(
      ([data, text]) =>
        !except.includes(text) &&
        !tapped.includes(data) &&
        tapped.filter((other) => kindOf(other) === kindOf(data)).length < ofAKind,
    );
    if (!next) return { tapped, unanswered };
    const [data, text] = next;
    tapped.push(data);
    const first = await world.client.rawCallback(phone.id, messageId, data);
    const second = await world.client.rawCallback(phone.id, messageId, data);
    await world.settle();
    const answered = (await world.client.answers(phone.id)).map(({ queryId }) => queryId);
    for (const { queryId } of [first, second]) {
      if (!answered.includes(queryId)) unanswered.push(text);
    }
  }
}

/** The version and tag of a button, which say what it asks for. */
function kindOf(data: string): string {
  return data.split(':').slice(0, 2).join(':');
}

function buttonsOn(chat: readonly ChatMessage[]): readonly { text: string; data: string }[] {
  const messages = chat.filter((message) => labelsOf(message).length > 0);
  return messages.flatMap(({ buttons }) =>
    buttons.flat().flatMap(({ text, data }) => (data === undefined ? [] : [{ text, data }])),
  );
}
