import { setTimeout as delay } from 'node:timers/promises';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { Random } from '../../drills/index.ts';
import type { ChatMessage, RehearsalClient } from '../../rehearsal/client.ts';
import { drawIntention, type Intention, nextTap } from '../support/intention.ts';
import { labelsOf } from '../support/phones.ts';
import type { FamilyEvening, SeenPart } from './facts.ts';
import { CARDS, type Household, RUN } from './school.ts';
import type { Traffic } from './traffic.ts';

/** What all families have to do with. */
export interface Street {
  readonly client: RehearsalClient;
  readonly traffic: Traffic;
  /** The mean time until a family looks at its phone, and between two taps, in milliseconds. */
  readonly lagMs: number;
  readonly tapMs: number;
}

/** After so long without any sign of the bot a person taps again. */
const PATIENCE_MS = 7_000;
/** And gives up for this evening after so many times in a row. */
const MOST_RETRIES = 25;
/** One tap in eight is a double tap. */
const DOUBLE_TAP_EVERY = 8;
/** One family in a hundred blocks the bot for the evening. */
const BLOCKS_EVERY = 100;

/** What came of the taps of all families, for the summary. */
export interface Tally {
  taps: number;
  again: number;
  gaveUp: number;
}

/** One family on one evening. */
export class Family {
  readonly household: Household;
  readonly blocks: boolean;
  readonly #street: Street;
  readonly #random: Random;
  readonly #intention: Intention;
  readonly #since: Date;
  readonly #tally: Tally;
  #closed = 0;
  #isBusy = false;
  #isDone = false;

  constructor(
    street: Street,
    household: Household,
    evening: { readonly random: Random; readonly since: Date; readonly tally: Tally },
  ) {
    this.household = household;
    this.#street = street;
    this.#random = evening.random;
    this.#since = evening.since;
    this.#tally = evening.tally;
    const intention = drawIntention(evening.random, [CARDS], RUN);
    // Whichever of its two ways it is looked up by, this is the one part of cards there is.
    this.#intention = { ...intention, missed: [...intention.missed, ...intention.missed] };
    this.blocks = evening.random.int(BLOCKS_EVERY) === 0;
  }

  /** Whether it is in the middle of its evening. */
  get isBusy(): boolean {
    return this.#isBusy;
  }

  /** Does what it means to, from when the first message has come until nothing is left to tap. Waits for it until the signal. */
  async live(time: 'evening' | 'nudge', over: AbortSignal): Promise<void> {
    const { habit } = this.#intention;
    const isSilent = habit === 'is silent' || this.blocks || this.#isDone;
    if (isSilent || (habit === 'plays after the nudge' && time === 'evening')) return;
    if (!(await this.#comes(over))) return;
    this.#isBusy = true;
    await this.#lag(this.#street.lagMs);
    await this.#tapThrough();
    this.#isBusy = false;
  }

  /** What it has done and seen. */
  get evening(): FamilyEvening {
    const { childId, phones } = this.household;
    const [missed = []] = this.#intention.missed;
    const seen: SeenPart[] = [];
    if (this.#closed > 0) {
      seen.push({ part: 0, missed: missed.map((card) => card - 1), right: CARDS - missed.length });
    }
    if (this.#closed > 1) seen.push({ part: 1, missed: null, right: this.#intention.said });
    const declined = this.#intention.habit === 'not today';
    return { childId, phones, reachable: !this.blocks, declined, seen };
  }

  get #phone(): number {
    return this.household.phones[0];
  }

  async #comes(over: AbortSignal): Promise<boolean> {
    const { traffic } = this.#street;
    while (!over.aborted) {
      const version = traffic.version(this.#phone);
      if (version > 0 && (await this.#screen())) return true;
      await traffic.news(this.#phone, version, 1_000);
    }
    return false;
  }

  async #tapThrough(): Promise<void> {
    let inVain = 0;
    while (inVain < MOST_RETRIES) {
      const version = this.#street.traffic.version(this.#phone);
      const screen = await this.#screen();
      if (screen) this.#closed = Math.max(this.#closed, closedParts(screen));
      const label = screen && nextTap(screen, this.#intention);
      if (!screen || label === null) {
        this.#isDone = true;
        return;
      }
      await this.#tap(screen, label ?? '');
      const came = await this.#street.traffic.news(this.#phone, version, PATIENCE_MS);
      inVain = came ? 0 : inVain + 1;
      if (!came) this.#tally.again += 1;
      await this.#lag(this.#street.tapMs);
    }
    this.#tally.gaveUp += 1;
  }

  async #tap(screen: ChatMessage, label: string): Promise<void> {
    const buttons = screen.buttons.flat();
    const { data } =
      buttons.find(({ text }) => text === label) ??
      buttons.find(({ text }) => text.startsWith(label)) ??
      {};
    if (data === undefined) return;
    const once = async () => {
      this.#tally.taps += 1;
      // The screen may have changed under the finger.
      await this.#street.client.tap(this.#phone, screen.id, data).catch(() => {});
    };
    await (this.#random.int(DOUBLE_TAP_EVERY) === 0 ? Promise.all([once(), once()]) : once());
  }

  /** Tonight's newest message with buttons. */
  async #screen(): Promise<ChatMessage | undefined> {
    const chat = await this.#street.client.chat(this.#phone);
    return chat.findLast(
      ({ from, date, buttons }) =>
        from === 'bot' && new Date(date) >= this.#since && buttons.length > 0,
    );
  }

  /** An exponential wait, as between independent events. */
  async #lag(meanMs: number): Promise<void> {
    await delay(-Math.log(1 - this.#random.next()) * meanMs);
  }
}

/** How many parts a screen shows to be closed. */
function closedParts(screen: ChatMessage): number {
  const labels = labelsOf(screen);
  if (labels.includes(BUTTONS.fix)) return 2;
  const isRun = labels.includes(BUTTONS.allSaid) || labels.includes(BUTTONS.noneSaid);
  return isRun ? 1 : 0;
}
