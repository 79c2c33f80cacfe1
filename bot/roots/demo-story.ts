import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ChatMessage, RehearsalClient } from '../../rehearsal/client.ts';

/** Writes down what each phone saw, step by step, with its pictures and files beside it. */
export interface Story {
  /** Notes one step on one phone. */
  note(phone: string, did: string, sees: ChatMessage | undefined): Promise<void>;
  /** Writes one Markdown file a phone and returns how many. */
  write(): Promise<number>;
}

/** A story kept in `folder`. `time` says what the clock shows, in the class's own zone. */
export function tellStory(folder: string, client: RehearsalClient, time: () => string): Story {
  const pages = new Map<string, string[]>();
  const known = new Set<string>();
  return {
    note: async (phone, did, sees) => {
      const page = pages.get(phone) ?? [`# ${phone}\n`];
      pages.set(phone, page);
      page.push(`## ${time()}: ${did}\n`);
      if (sees) page.push(await shownAs(folder, client, known, sees));
    },
    write: async () => {
      await mkdir(join(folder, 'phones'), { recursive: true });
      for (const [phone, page] of pages) {
        await writeFile(join(folder, 'phones', `${fileName(phone)}.md`), page.join('\n'));
      }
      return pages.size;
    },
  };
}

async function shownAs(
  folder: string,
  client: RehearsalClient,
  known: Set<string>,
  message: ChatMessage,
): Promise<string> {
  const lines = message.text.split('\n').map((line) => `> ${line}  `);
  const file = message.photo ?? message.document;
  const picture = file ? await keep(folder, client, known, file) : '';
  const buttons = message.buttons
    .map((row) => row.map((button) => `\`${button.text}\``).join(' '))
    .map((row) => `> ${row}  `);
  return [picture, ...lines, '>', ...buttons, '']
    .filter((line) => line !== '')
    .join('\n')
    .concat('\n');
}

/** Saves a picture or file once and returns a link to it. */
async function keep(
  folder: string,
  client: RehearsalClient,
  known: Set<string>,
  file: NonNullable<ChatMessage['photo']>,
): Promise<string> {
  const name = file.fileName ?? `${fileName(file.fileId)}.png`;
  if (!known.has(name)) {
    known.add(name);
    await mkdir(join(folder, 'pictures'), { recursive: true });
    await writeFile(join(folder, 'pictures', name), await client.file(file.fileId));
  }
  const label = file.fileName ? name : 'picture';
  return name.endsWith('.png')
    ? `![${label}](../pictures/${name})\n`
    : `[${name}](../pictures/${name})\n`;
}

function fileName(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(-60);
}
