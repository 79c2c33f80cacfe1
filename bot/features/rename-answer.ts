import { AppError, renameChild } from '../../db/index.ts';
import { cleanNickname, lengthOf, NICKNAME_LENGTH } from '../input/nickname.ts';
import { button } from '../screens/screen.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { badNickname, renamed } from '../texts/children.ts';
import { errorText } from '../texts/errors.ts';
import { quote } from '../texts/quote.ts';
import { lines } from '../texts/words.ts';
import { fulfilled } from './expectations.ts';
import type { Typed } from './say.ts';
import { teacherScope } from './teacher-scope.ts';

/** Takes the nickname a teacher typed for a child. One that cannot be used leaves the question open. */
export async function renameAnswer(
  message: Typed,
  { classId, number }: { classId: string; number: number },
): Promise<void> {
  const { deps, userId, text, reply } = message;
  const scope = await teacherScope(deps.store, userId, classId);
  const nickname = cleanNickname(text);
  const length = lengthOf(nickname);
  if (length === 0 || length > NICKNAME_LENGTH) return reply(badNickname(text, length));
  let before: string;
  try {
    before = await renameChild(deps.store, scope, { number, nickname });
  } catch (error) {
    if (!(error instanceof AppError) || error.code !== 'conflict') throw error;
    return reply(lines(quote(nickname), errorText(error)));
  }
  await fulfilled(deps, userId);
  await reply(renamed(before, nickname), [
    [button(BUTTONS.back, { kind: 'child', classId, number })],
  ]);
}
