import type { Phone } from '../../bot/roots/phone.ts';
import type { ChatMessage, FileToSend } from '../../rehearsal/client.ts';
import type { World } from './world.ts';

/** Sends a file from a phone and lets the bot answer. Returns it as the chat shows it. */
export async function sendFile(world: World, phone: Phone, file: FileToSend): Promise<ChatMessage> {
  const sent = await world.client.sendFile(phone.id, file);
  await world.settle();
  return sent;
}

/** How many messages the bot has written to a phone. */
export async function countOf(phone: Phone): Promise<number> {
  return (await phone.chat()).filter((message) => message.from === 'bot').length;
}

/** What came to a phone after so many messages: `voice`, the child whose evening it is, or `text`. */
export async function since(phone: Phone, messages: number): Promise<string[]> {
  const came = (await phone.chat()).filter((message) => message.from === 'bot');
  return came.slice(messages).map((message) => {
    if (message.voice) return 'voice';
    return message.text.includes(' · ') ? (message.text.split(' · ')[0] ?? '') : 'text';
  });
}
