import { AppError, chooseLanguage, getClass, readLanguage, updateClass } from '../../db/index.ts';
import { isLanguage } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { readIn } from '../language/index.ts';
import { timesScreen } from '../screens/class-screens.ts';
import { classLanguageScreen, languageScreen } from '../screens/language-screens.ts';
import { help } from './help.ts';
import type { Typed } from './say.ts';
import type { TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** Choosing the language the bot speaks, and the one a class's cards are worded in. */
export const languageTaps: TapHandlers<'chooseLanguage' | 'classLanguages' | 'classLanguage'> = {
  chooseLanguage: async (tap, { language: tag }) => {
    const language = await chooseLanguage(tap.deps.store, { chatId: tap.userId, language: tag });
    await tap.answer();
    await readIn(language, () => tap.show(languageScreen()));
  },
  classLanguages: (tap, { classId }) =>
    turn(tap, classId, async (scope) => classLanguageScreen(await getClass(tap.deps.store, scope))),
  classLanguage: (tap, { classId, language }) =>
    turn(tap, classId, async (scope) => {
      if (!isLanguage(language)) throw new AppError('invalid', 'language');
      const now = tap.deps.clock.now();
      return timesScreen(await updateClass(tap.deps.store, scope, { changes: { language }, now }));
    }),
};

/** `/language`: for helpers and teachers. Of anybody else nothing is kept, so there is nothing to choose yet. */
export async function languageCommand(message: Typed): Promise<void> {
  const { deps, userId } = message;
  if (!(await readLanguage(deps.store, userId))) return help(message, true);
  await sendScreen(deps, userId, languageScreen());
}
