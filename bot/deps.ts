import type { ChatDeps } from './chat/chat.ts';
import type { Painter } from './media/index.ts';

/** What the bot is made of. `linkOf` turns a start code into a link that opens this bot. */
export interface BotDeps extends ChatDeps {
  readonly painter: Painter;
  linkOf(payload: string): string;
}
