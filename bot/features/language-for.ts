import { readLanguage } from '../../db/index.ts';
import type { Language } from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { languageOfTag } from '../language/index.ts';

/**
 * The language to speak with a person: what they chose; for somebody we do not know, what their phone is set to, if we have
 * it; English otherwise.
 */
export async function languageFor(
  { store }: Pick<BotDeps, 'store'>,
  person: { readonly id: number; readonly language_code?: string | undefined } | undefined,
): Promise<Language> {
  if (!person) return 'en';
  return (await readLanguage(store, person.id)) ?? languageOfTag(person.language_code) ?? 'en';
}
