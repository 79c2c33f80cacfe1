import type { ChatMessage, RehearsalClient } from '../../rehearsal/client.ts';
import { BUTTONS } from '../texts/buttons.ts';

/** Where a phone lives: the rehearsal, and a way to let the bot answer. */
export interface PhoneWorld {
  readonly client: RehearsalClient;
  settle(): Promise<void>;
}

/** Called after everything a person does, with what they did and the bot's newest message. */
export type Watcher = (did: string, sees: ChatMessage | undefined) => Promise<void>;

/**
 * What goes wrong in part `part` (from 1): the numbers of the cards missed, those beyond the part's size left out; for a run
 * one entry, how many numbers were said. Empty when all is right.
 */
export type Player = (part: number, isRun: boolean) => readonly number[];

/** A person with a phone in a rehearsal: what they see and what they tap. For demos and tests. */
export class Phone {
  readonly world: PhoneWorld;
  readonly id: number;
  readonly #watch: Watcher | undefined;

  constructor(world: PhoneWorld, id: number, watch?: Watcher) {
    this.world = world;
    this.id = id;
    this.#watch = watch;
  }

  /** Taps the newest button with this text, or the one on a given message, and lets the bot answer. */
  async tap(label: string, messageId?: number): Promise<void> {
    await this.world.client.tapLabel(this.id, label, messageId);
    await this.#answered(`taps “${label}”`);
  }

  /** Types something and lets the bot answer. */
  async say(text: string): Promise<void> {
    await this.world.client.say(this.id, text);
    await this.#answered(`types “${text}”`);
  }

  /** Opens a link and lets the bot answer. */
  async open(link: string): Promise<void> {
    await this.world.client.openLink(this.id, link);
    await this.#answered('opens a link');
  }

  /** Everything in the chat. */
  async chat(): Promise<readonly ChatMessage[]> {
    return this.world.client.chat(this.id);
  }

  /** The bot's newest message. */
  async last(): Promise<ChatMessage> {
    const message = await this.#newest();
    if (!message) throw new Error('the bot has not written to this phone yet');
    return message;
  }

  /** What the newest message's buttons say. */
  async buttons(): Promise<string[]> {
    return (await this.last()).buttons.flat().map((button) => button.text);
  }

  /** The bot's messages whose text contains `part`. */
  async messagesWith(part: string): Promise<readonly ChatMessage[]> {
    return (await this.chat()).filter((each) => each.from === 'bot' && each.text.includes(part));
  }

  /**
   * Plays an evening from Start to the result. `offer` is the message to start from, when it is not the newest. Every card is
   * right unless the player says otherwise.
   */
  async playEvening(player: Player = () => [], offer?: number): Promise<void> {
    await this.tap(BUTTONS.start, offer);
    const shows = async () => (offer === undefined ? this.last() : this.message(offer));
    for (let part = 1; (await shows()).text.includes(`Part ${part} of`); part += 1) {
      await this.#markPart(part, player, offer);
    }
    if ((await shows()).text.includes('How many pages')) await this.tap('2', offer);
  }

  /** One message of the chat by its id. */
  async message(id: number): Promise<ChatMessage> {
    const found = (await this.chat()).find((each) => each.id === id);
    if (!found) throw new Error(`no message ${id} on this phone`);
    return found;
  }

  async #markPart(part: number, player: Player, offer?: number): Promise<void> {
    const labels = async () => {
      const message = offer === undefined ? await this.last() : await this.message(offer);
      return message.buttons.flat().map((button) => button.text);
    };
    const isRun = (await labels()).includes(BUTTONS.allSaid);
    const wrong = player(part, isRun);
    if (wrong.length === 0) return this.tap(isRun ? BUTTONS.allSaid : BUTTONS.allRight, offer);
    await this.tap(isRun ? BUTTONS.stoppedEarlier : BUTTONS.someMissed, offer);
    const choices = (await labels()).filter((label) =>
      isRun ? /^\d+$/.test(label) : /^\d+\. /.test(label),
    );
    if (isRun) return this.tap(choices[(wrong[0] ?? 0) - 1] ?? BUTTONS.noneSaid, offer);
    for (const card of wrong) {
      const choice = choices[card - 1];
      if (choice) await this.tap(choice, offer);
    }
    await this.tap(BUTTONS.done, offer);
  }

  async #newest(): Promise<ChatMessage | undefined> {
    return (await this.chat()).findLast((each) => each.from === 'bot');
  }

  async #answered(did: string): Promise<void> {
    await this.world.settle();
    if (this.#watch) await this.#watch(did, await this.#newest());
  }
}
