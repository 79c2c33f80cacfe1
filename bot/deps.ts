import type { ChatDeps } from './chat/chat.ts';
import type { Download } from './chat/download.ts';
import type { Clips } from './clip/index.ts';
import type { Painter } from './media/index.ts';

/** Who may become a teacher: the operator's choice. */
export type TeachersWanted = 'invite' | 'open';

/** What the bot is made of. `linkOf` turns a start code into a link that opens this bot. */
export interface BotDeps extends ChatDeps {
  readonly painter: Painter;
  /** Absent where nobody makes clips: families see picture sheets then. */
  readonly clips?: Clips | undefined;
  /** Fetches a file that somebody sent. */
  readonly download: Download;
  /** Whether anybody may become a teacher, or only who is invited. */
  readonly teachers: TeachersWanted;
  linkOf(payload: string): string;
}
