import type { Action, ActionKind } from '../callback/actions.ts';
import type { Place } from '../chat/chat.ts';
import type { BotDeps } from '../deps.ts';
import type { Screen } from '../screens/screen.ts';

/** One tap on a button. */
export interface Tap {
  readonly deps: BotDeps;
  /** The person who tapped; also their private chat with the bot. */
  readonly userId: number;
  /** The message the button is on. */
  readonly place: Place;
  /** Answers the tap: nothing, a line that fades, or one that has to be closed. Only the first answer counts. */
  answer(text?: string, kind?: 'line' | 'alert'): Promise<void>;
  /** Turns the message into a screen. */
  show(screen: Screen): Promise<void>;
}

/** What to do for each kind of action. */
export type TapHandlers<K extends ActionKind> = {
  readonly [Kind in K]: (tap: Tap, action: Extract<Action, { kind: Kind }>) => Promise<void>;
};
