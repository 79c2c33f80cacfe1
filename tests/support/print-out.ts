import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { openPdf, type PrintedPage } from '../bot/paper/open-pdf.ts';
import type { World } from './world.ts';

/** Opens a fresh class home and goes to what can be printed; returns the message that all further screens are on. */
export async function toPrint(teacher: Phone): Promise<number> {
  await teacher.say('/class');
  await teacher.tap(BUTTONS.print);
  return (await teacher.last()).id;
}

/** The PDF files a phone was sent, the newest last. */
export async function papersOn(phone: Phone): Promise<readonly ChatMessage[]> {
  return (await phone.chat()).filter((message) => message.document?.fileName?.endsWith('.pdf'));
}

/** A PDF file as it came: its name, the words with it, and what is printed. */
export interface PrintOut {
  readonly name: string;
  readonly caption: string;
  readonly pages: readonly PrintedPage[];
  readonly first: PrintedPage;
}

/** The newest PDF file on a phone. */
export async function newestPaper(world: World, phone: Phone): Promise<PrintOut> {
  const message = (await papersOn(phone)).at(-1);
  const { fileId = '', fileName = '' } = message?.document ?? {};
  const pages = await openPdf(await world.client.file(fileId));
  const [first] = pages;
  if (!first) throw new Error('a document has a page');
  return { name: fileName, caption: message?.text ?? '', pages, first };
}

/** The join codes on a page, as a family would type them. */
export function codesOn(page: PrintedPage): string[] {
  return page.texts.map(({ text }) => text).filter((text) => /^(?:\w{4} ){6}\w{4}$/.test(text));
}
