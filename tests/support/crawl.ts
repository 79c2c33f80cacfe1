import type { Phone } from '../../bot/roots/phone.ts';
import { labelsOf } from './phones.ts';
import type { World } from './world.ts';

/** What a crawl may leave out, and how many buttons of one kind it tries. */
export interface CrawlOptions {
  /** Buttons that are not tapped. */
  readonly except?: readonly string[];
  readonly ofAKind?: number;
}

/**
 * Taps every button that can be reached from a phone's newest message, each twice before the bot has answered once. Of
 * buttons that ask for the same with other values only some are tried. Returns the buttons tapped, and the taps that were
 * never answered.
 */
export async function tapEverythingTwice(
  world: World,
  phone: Phone,
  { except = [], ofAKind = 3 }: CrawlOptions = {},
): Promise<{ tapped: readonly string[]; unanswered: readonly string[] }> {
  const { id: messageId } = await phone.last();
  const seen = new Map<string, string>();
  const tapped: string[] = [];
  const unanswered: string[] = [];
  for (;;) {
    for (const { text, data } of await buttonsOn(phone)) seen.set(data, text);
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

async function buttonsOn(phone: Phone): Promise<readonly { text: string; data: string }[]> {
  const messages = (await phone.chat()).filter((message) => labelsOf(message).length > 0);
  return messages.flatMap(({ buttons }) =>
    buttons.flat().flatMap(({ text, data }) => (data === undefined ? [] : [{ text, data }])),
  );
}
