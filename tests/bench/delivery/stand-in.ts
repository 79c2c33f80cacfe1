import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { pause } from './figures.ts';
import { FIRST_CHAT } from './school.ts';

/** Taps on each phone's newest message that has the button: so many at a time, or so many a second. */
export interface TapRun {
  readonly ids: readonly number[];
  readonly label: string;
  readonly atOnce: number;
  readonly perSecond?: number | undefined;
}

/** How long each tap waited for its answer, and how long all of them took, in milliseconds. */
export interface Tapped {
  readonly waits: readonly number[];
  readonly ms: number;
}

/** Calls by method, and when new messages were asked for, since the last count. A call that was refused counts too. */
export interface Counted {
  readonly calls: Readonly<Record<string, number>>;
  readonly sends: readonly number[];
}

export type Asked = { readonly do: 'count' } | ({ readonly do: 'taps' } & TapRun);

/** The chat service's stand-in, in a process of its own, with people who have opened a chat with the bot. */
export class StandIn {
  readonly apiRoot: string;
  readonly token: string;
  readonly ids: readonly number[];
  readonly #process: ChildProcess;
  #asked = 0;

  private constructor(
    process: ChildProcess,
    at: { apiRoot: string; token: string },
    people: number,
  ) {
    this.#process = process;
    this.apiRoot = at.apiRoot;
    this.token = at.token;
    this.ids = Array.from({ length: people }, (_, place) => FIRST_CHAT + place);
  }

  /** `limited` keeps the service's rate limits: thirty messages a second. */
  static async start(people: number, limited: boolean): Promise<StandIn> {
    const path = fileURLToPath(new URL('stand-in-process.ts', import.meta.url));
    const settings = JSON.stringify({ first: FIRST_CHAT, people, limited });
    const child = fork(path, [settings], { execArgv: ['--import', 'tsx'] });
    const [{ answer }] = await once(child, 'message');
    return new StandIn(child, answer, people);
  }

  async #ask<T>(asked: Asked): Promise<T> {
    this.#asked += 1;
    const key = this.#asked;
    const answered = new Promise<T>((resolve) => {
      const hear = (said: { key: number; answer: T }) => {
        if (said.key !== key) return;
        this.#process.off('message', hear);
        resolve(said.answer);
      };
      this.#process.on('message', hear);
    });
    this.#process.send({ ...asked, key });
    return answered;
  }

  count(): Promise<Counted> {
    return this.#ask({ do: 'count' });
  }

  tap(run: TapRun): Promise<Tapped> {
    return this.#ask({ do: 'taps', ...run });
  }

  /** Waits until so many new messages were asked for, or none for ten seconds; returns when each was, in milliseconds. */
  async sent(messages: number): Promise<number[]> {
    const all: number[] = [];
    for (let quiet = 0; all.length < messages && quiet < 40; ) {
      await pause(250);
      const { sends } = await this.count();
      all.push(...sends);
      quiet = sends.length > 0 || all.length === 0 ? 0 : quiet + 1;
    }
    return all;
  }

  async close(): Promise<void> {
    this.#process.kill();
    await once(this.#process, 'exit');
  }
}
