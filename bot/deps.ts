import type { Api } from 'grammy';
import type { ChatDeps } from './chat/chat.ts';
import type { Download } from './chat/download.ts';
import type { Clips } from './clip/index.ts';
import type { Painter } from './media/index.ts';

/** Who may become a teacher: the operator's choice. */
export type TeachersWanted = 'invite' | 'open';

/** What one bot is made of. */
export interface BotDeps extends ChatDeps {
  readonly painter: Painter;
  /** Absent where nobody makes clips: families see picture sheets then. */
  readonly clips?: Clips | undefined;
  /** Fetches a file that somebody sent. */
  readonly download: Download;
  /** Whether anybody may become a teacher, or only who is invited. */
  readonly teachers: TeachersWanted;
  /** Turns a start code into a link that opens this bot. */
  linkOf(payload: string): string;
  /** The same for the bot that a class belongs to. */
  linksOf(classId: string): Promise<(payload: string) => string>;
  /** How another bot of this process calls the service; null when this process does not run it. */
  apiOf(botId: number): Api | null;
}
