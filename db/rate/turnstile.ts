import type { Store } from '../connection/db.ts';
import type { BotChat } from '../helpers/reachability.ts';
import type { Clock } from '../ports.ts';
import { bookChatSlot, SENDS_A_SECOND_IN_CHAT } from './chat-slot.ts';
import { type Haste, pauseSending, SENDS_A_SECOND, takeSendSlot } from './send-slot.ts';

/** Real time, for the rate at which messages leave: moving the school's clock does not make the network faster. */
export interface Pace extends Clock {
  /** Ends after this long, or once the signal says so. */
  sleep(milliseconds: number, signal?: AbortSignal): Promise<void>;
}

/** Through which every new message of one bot in this process leaves. */
export interface Turnstile {
  /**
   * Waits for a turn to send a new message, in the chat and in the line that all processes share, answers before bulk. Returns
   * 0 once it may leave, or how many milliseconds it would still have to wait when that is more than `most`.
   */
  pass(message: { chatId: number; haste: Haste; most: number }): Promise<number>;
  /** Waits while the bot is paused, as far as this process has heard, for what is no new message. Returns as `pass` does. */
  passPause(most: number): Promise<number>;
  /** The service has said "too many": nobody sends for so long. */
  pause(seconds: number): Promise<void>;
  /** Takes up what another process told of a pause. */
  hear(news: string): void;
}

/** What a turnstile needs. The rates are for bots that are allowed others than most. */
export interface TurnstileDeps {
  readonly store: Store;
  readonly botId: number;
  readonly pace: Pace;
  readonly perSecond?: number | undefined;
  readonly perSecondInChat?: number | undefined;
}

interface Waiting {
  readonly most: number;
  readonly go: (wait: number) => void;
  readonly fail: (error: unknown) => void;
}

/** Opens a turnstile. One message at a time asks for its turn, so that waiting costs the database next to nothing. */
export function createTurnstile(deps: TurnstileDeps): Turnstile {
  const { store, botId, pace, perSecond = SENDS_A_SECOND } = deps;
  const { perSecondInChat = SENDS_A_SECOND_IN_CHAT } = deps;
  const line: Record<Haste, Waiting[]> = { answer: [], bulk: [] };
  let pausedUntil = 0;
  let isRunning = false;
  let nap = new AbortController();
  const next = (): Haste | null =>
    line.answer.length > 0 ? 'answer' : line.bulk.length > 0 ? 'bulk' : null;
  const run = async () => {
    isRunning = true;
    for (let haste = next(); haste; haste = next()) {
      const waiting = line[haste];
      const [first] = waiting;
      if (!first) break;
      const leave = () => waiting.splice(waiting.indexOf(first), 1);
      try {
        const wait = await takeSendSlot(store, { botId, haste, at: pace.now(), perSecond });
        if (wait === 0 || wait > first.most) {
          leave();
          first.go(wait);
        } else {
          nap = new AbortController();
          await pace.sleep(wait, nap.signal);
        }
      } catch (error) {
        leave();
        first.fail(error);
      }
    }
    isRunning = false;
  };
  const inLine = (haste: Haste, most: number) =>
    new Promise<number>((go, fail) => {
      line[haste].push({ most, go, fail });
      // Bulk may be napping until its own turn; an answer's may be now.
      if (haste === 'answer') nap.abort();
      if (!isRunning) void run();
    });
  return {
    pass: async ({ chatId, haste, most }) => {
      const chat: BotChat = { botId, chatId };
      const booking = { haste, at: pace.now(), perSecond: perSecondInChat };
      const wait = await bookChatSlot(store, chat, booking);
      if (wait > most) return wait;
      if (wait > 0) await pace.sleep(wait);
      return inLine(haste, most);
    },
    passPause: async (most) => {
      const wait = pausedUntil - pace.now().getTime();
      if (wait > most) return wait;
      if (wait > 0) await pace.sleep(wait);
      return 0;
    },
    pause: async (seconds) => {
      const until = new Date(pace.now().getTime() + seconds * 1_000);
      pausedUntil = Math.max(pausedUntil, until.getTime());
      await pauseSending(store, botId, until);
    },
    hear: (news) => {
      const [bot, until] = news.split(' ').map(Number);
      if (bot === botId && until) pausedUntil = Math.max(pausedUntil, until);
    },
  };
}
