import { setTimeout as delay } from 'node:timers/promises';
import { BotProcess } from '../support/bot-process.ts';

/** Who does what: each is a process of its own. One receives, since the service refuses a second poller. */
export const POSTS = {
  receiver: 'receive',
  'worker 1': 'work',
  'worker 2': 'work',
  'sender 1': 'send',
  'sender 2': 'send',
  'planner 1': 'tick',
  'planner 2': 'tick',
} as const;

export type Post = keyof typeof POSTS;

export const ALL_POSTS: readonly Post[] = [
  ...(['receiver', 'worker 1', 'worker 2', 'sender 1', 'sender 2'] as const),
  ...(['planner 1', 'planner 2'] as const),
];
export const SENDERS: readonly Post[] = ['sender 1', 'sender 2'];
export const PLANNERS: readonly Post[] = ['planner 1', 'planner 2'];

/** A process that ended although nobody had struck it. */
export interface Fall {
  readonly post: Post;
  readonly code: number | null;
  /** It had been at work. One that had not refused to start, for want of the database or of the service. */
  readonly hadRun: boolean;
  readonly said: string;
}

/** The processes of the bot, with somebody who starts again what has ended, as any server has. */
export interface Crew {
  /** Starts those that do not run; resolves when all of them say that they run. */
  start(posts: readonly Post[]): Promise<void>;
  /** Ends a process as a power cut would. It stays down until it is started. */
  strike(post: Post): Promise<void>;
  strikes(): number;
  falls(): readonly Fall[];
  /** How often each event was logged, by all processes that have ended. */
  logged(): ReadonlyMap<string, number>;
  /** Ends all of them. */
  end(): Promise<void>;
}

/** After a fall, so long until the next start. */
const RESTART_MS = 500;
const SAID_LENGTH = 900;
/** Then nothing is started any more: nobody can work like this. */
const MOST_FALLS = 1_000;

/** How processes are started: with which settings, and which module before the bot. `tell` hears what happens. */
export interface CrewDeps {
  readonly settings: Readonly<Record<string, string>>;
  readonly preload: string;
  tell(line: string): void;
}

/** A crew of which nobody runs yet. */
export function createCrew({ settings, preload, tell }: CrewDeps): Crew {
  const running = new Map<Post, BotProcess>();
  const struck = new Set<BotProcess>();
  const ran = new Set<BotProcess>();
  const falls: Fall[] = [];
  const logged = new Map<string, number>();
  let strikes = 0;
  let isOver = false;
  const startOne = async (post: Post): Promise<void> => {
    if (running.has(post) || isOver) return;
    const process = new BotProcess(settings, [`--role=${POSTS[post]}`], preload);
    running.set(post, process);
    void process.ended.then(({ code, stderr }) => {
      count(logged, stderr);
      if (running.get(post) === process) running.delete(post);
      if (struck.has(process) || isOver) return;
      const said = lastWords(stderr);
      tell(`${post} ended with ${code}: ${said}`);
      falls.push({ post, code, hadRun: ran.has(process), said });
      if (falls.length > MOST_FALLS) isOver = true;
      void delay(RESTART_MS).then(() => startOne(post));
    });
    tell(`${post} starts`);
    await process.running.then(
      () => {
        ran.add(process);
        tell(`${post} runs`);
      },
      () => {},
    );
  };
  return {
    start: async (posts) => {
      await Promise.all(posts.map(startOne));
    },
    strike: async (post) => {
      const process = running.get(post);
      if (!process) return;
      struck.add(process);
      strikes += 1;
      tell(`${post} is killed`);
      await process.end('SIGKILL');
    },
    strikes: () => strikes,
    falls: () => falls,
    logged: () => logged,
    end: async () => {
      isOver = true;
      await Promise.all([...running.values()].map((process) => process.end('SIGKILL')));
    },
  };
}

/** What was said outside the log: why it ended. */
function lastWords(stderr: string): string {
  const lines = stderr.split('\n').filter((line) => line !== '' && !line.startsWith('{'));
  return lines.join(' ').slice(0, SAID_LENGTH);
}

/** Counts the events in lines of a log. */
function count(events: Map<string, number>, stderr: string): void {
  for (const [, event = ''] of stderr.matchAll(/"msg":"(\w+)"/g)) {
    events.set(event, (events.get(event) ?? 0) + 1);
  }
}
