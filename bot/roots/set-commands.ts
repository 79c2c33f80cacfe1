import type { Api } from 'grammy';
import { LANGUAGES, type Language } from '../../drills/index.ts';
import { languageOfTag, readIn } from '../language/index.ts';
import { commands } from '../texts/commands.ts';

/** Puts the commands into the chat's menu: for a phone in one of our languages in that, for all others in English. */
export async function setCommands(api: Pick<Api, 'setMyCommands'>): Promise<void> {
  await api.setMyCommands(commands());
  const others: readonly Language[] = Object.keys(LANGUAGES).flatMap(
    (tag) => languageOfTag(tag) ?? [],
  );
  for (const language of others) {
    if (language === 'en') continue;
    const written = readIn(language, commands);
    await api.setMyCommands(written, { language_code: language });
  }
}
