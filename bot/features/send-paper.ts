import { InputFile } from 'grammy';
import type { Language } from '../../drills/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import type { BotDeps } from '../deps.ts';
import { classFileName } from '../digest/file-name.ts';
import { type Page, toPdf } from '../paper/index.ts';
import type { Text } from '../texts/words.ts';
import type { PaperOrder } from './print-papers.ts';

/** A document to be sent: the start of its file's name, its pages, and what to say with it. */
export interface Paper {
  readonly what: string;
  readonly pages: readonly Page[];
  readonly say: Text;
  /** What its pages are written in: the class's language, unless said otherwise. */
  readonly language?: Language;
}

/**
 * Sends a PDF to somebody who has just asked for it. When no answer comes the file may have arrived: that is logged, and what
 * follows goes on, as with a screen.
 */
export async function sendPaper(
  deps: BotDeps,
  chatId: number,
  { schoolClass, today }: PaperOrder,
  { what, pages, say, language = schoolClass.language }: Paper,
): Promise<void> {
  const name = classFileName(what, schoolClass, today, 'pdf');
  const madeAt = deps.clock.now();
  const bytes = await toPdf(pages, { title: name, language, madeAt });
  const { caption, caption_entities } = say;
  try {
    await deps.api.sendDocument(chatId, new InputFile(bytes, name), { caption, caption_entities });
  } catch (error) {
    const { kind } = apiProblem(error);
    if (kind !== 'unknown') throw error;
    deps.log.warn({ problem: kind }, 'reply_lost');
  }
}
