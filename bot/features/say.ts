import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import type { Screen } from '../screens/screen.ts';
import type { Text } from '../texts/words.ts';

/** One message a person typed. `userId` is also their private chat with the bot. */
export interface Typed {
  readonly deps: BotDeps;
  readonly userId: number;
  readonly text: string;
  reply(text: Text, buttons?: Screen['buttons']): Promise<void>;
}

/** A typed message, with a way to reply. */
export function typed(deps: BotDeps, userId: number, text: string): Typed {
  return {
    deps,
    userId,
    text,
    reply: async (words, buttons = []) => {
      await sendScreen(deps, userId, { text: words, buttons });
    },
  };
}
