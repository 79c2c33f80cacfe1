import type { OpenSlip, SchoolClass } from '../../db/index.ts';
import { LANGUAGES, type Language } from '../../drills/index.ts';
import type { Action } from '../callback/actions.ts';
import { languageOfTag, readerLanguage } from '../language/index.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import { notice } from '../texts/family.ts';
import * as texts from '../texts/languages.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

/** What a helper reads before anything is stored, with a button for each language it could be read in as well. */
export function noticeScreen(slip: OpenSlip, code: string): Screen {
  const read = readerLanguage();
  return {
    text: notice(slip),
    buttons: [
      [button(BUTTONS.agree, { kind: 'agree', code, language: read })],
      [button(BUTTONS.disagree, { kind: 'disagree' })],
      ...rows(
        languages()
          .filter((language) => language !== read)
          .map((language) => button(LANGUAGES[language], { kind: 'noticeIn', code, language })),
        2,
      ),
    ],
  };
}

/** Which language the bot speaks with somebody; the one in use carries a tick. */
export function languageScreen(): Screen {
  return {
    text: texts.whichLanguage(),
    buttons: choices(readerLanguage(), (language) => ({ kind: 'chooseLanguage', language })),
  };
}

/** Which language a class's cards are worded in. */
export function classLanguageScreen({ id: classId, language: inUse }: SchoolClass): Screen {
  return {
    text: texts.whichClassLanguage(),
    buttons: [
      ...choices(inUse, (language) => ({ kind: 'classLanguage', classId, language })),
      [button(BUTTONS.back, { kind: 'times', classId })],
    ],
  };
}

/** Each language under its own name for itself, so that nobody has to read another one to find it. */
function choices(inUse: Language, action: (language: Language) => Action): Button[][] {
  return rows(
    languages().map((language) =>
      button(choiceButton(LANGUAGES[language], language === inUse), action(language)),
    ),
    2,
  );
}

function languages(): Language[] {
  return Object.keys(LANGUAGES).flatMap((tag) => languageOfTag(tag) ?? []);
}
