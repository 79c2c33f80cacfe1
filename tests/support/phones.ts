import { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import type { World } from './world.ts';

/** Hands a new person a phone. The chat with the bot is not open yet. */
export async function newPhone(world: World, id: number): Promise<Phone> {
  await world.client.addAccount({ id, name: `Phone ${id}` });
  return new Phone(world, id);
}

/** Types something and returns the bot's newest message. */
export async function ask(phone: Phone, text: string): Promise<string> {
  await phone.say(text);
  return (await phone.last()).text;
}

/** Opens a link and returns the bot's newest message. */
export async function openAndRead(phone: Phone, link: string): Promise<string> {
  await phone.open(link);
  return (await phone.last()).text;
}

/** Taps and returns the text of the answer that pops up; empty when nothing does. */
export async function tapAndHear(phone: Phone, label: string, messageId?: number): Promise<string> {
  await phone.tap(label, messageId);
  return (await phone.world.client.answers(phone.id)).at(-1)?.text ?? '';
}

/** What a message's buttons say. */
export function labelsOf(message: ChatMessage): string[] {
  return message.buttons.flat().map((button) => button.text);
}

/** The messages about a child that offer Start. */
export async function offersOf(phone: Phone, nickname: string): Promise<readonly ChatMessage[]> {
  const messages = await phone.messagesWith(`${nickname} · `);
  return messages.filter((message) => labelsOf(message).includes(BUTTONS.start));
}

/** The newest message about a child that offers Start. */
export async function offerOf(phone: Phone, nickname: string): Promise<ChatMessage> {
  const offer = (await offersOf(phone, nickname)).at(-1);
  if (!offer) throw new Error(`nothing about ${nickname} offers Start on phone ${phone.id}`);
  return offer;
}

/** Join links as the bot listed them to a teacher, by nickname; a newer link stands for an older one. */
export async function linksOn(phone: Phone): Promise<ReadonlyMap<string, string>> {
  const text = (await phone.chat()).map((message) => message.text).join('\n');
  const listed = text.matchAll(/^\d+\. (?<name>.+)\n(?<link>\S+\?start=\S+)$/gm);
  return new Map(
    [...listed].map(({ groups }) => [withoutIsolates(groups?.name ?? ''), groups?.link ?? '']),
  );
}

/** A text without the marks that keep right-to-left names from turning round what stands beside them. */
export function withoutIsolates(text: string): string {
  return text.replace(/[\u2068\u2069]/gu, '');
}
