import type { ChatDeps } from './chat/chat.ts';
import type { Clips } from './clip/index.ts';
import type { Painter } from './media/index.ts';

/** What the bot is made of. `linkOf` turns a start code into a link that opens this bot. */
export interface BotDeps extends ChatDeps {
  readonly painter: Painter;
  /** Absent where nobody makes clips: families see picture sheets then. */
  readonly clips?: Clips | undefined;
  linkOf(payload: string): string;
}
