import { LANGUAGES, type Language } from '../../drills/index.ts';
import { readerLanguage, say } from '../language/index.ts';
import { bold, lines, type Text } from './words.ts';

/** Over the languages the bot speaks. */
export function whichLanguage(): Text {
  return lines(
    bold(say('languages-which')),
    say('languages-scope'),
    readerLanguage() === 'en' ? null : say('languages-unchecked'),
  );
}

/** Over the languages a class's cards can be worded in. */
export function whichClassLanguage(): Text {
  return lines(bold(say('languages-which-class')), say('languages-class-scope'));
}

/** Leads to the language of a class's cards: `Cards in English`. */
export function cardLanguageButton(language: Language): string {
  return say('languages-cards-in', { language: LANGUAGES[language] });
}
