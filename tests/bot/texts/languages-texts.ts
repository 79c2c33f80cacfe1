import * as languages from '../../../bot/texts/languages.ts';

/** The texts about languages, and the module they are in. */
export const LANGUAGES_MODULES = [languages];
export const languagesTexts = () => ({
  whichLanguage: [languages.whichLanguage()],
  whichClassLanguage: [languages.whichClassLanguage()],
  cardLanguageButton: [languages.cardLanguageButton('fr')],
});
