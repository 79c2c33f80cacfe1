import { cancelButton } from '../screens/set-up-screens.ts';
import type { Typed } from './say.ts';

/**
 * A typed message that answers an open question. What is replied without buttons says that the answer could not be taken: it
 * gets a way to leave the question.
 */
export function withCancel(message: Typed): Typed {
  return {
    ...message,
    reply: (text, buttons = []) =>
      message.reply(text, buttons.length > 0 ? buttons : [[cancelButton()]]),
  };
}
