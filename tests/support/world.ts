import type { Clips } from '../../bot/clip/index.ts';
import { createPainter, type Painter } from '../../bot/media/index.ts';
import { type App, createApp } from '../../bot/roots/create-app.ts';
import type { Log, OpenStore } from '../../db/index.ts';
import { RehearsalClient } from '../../rehearsal/client.ts';
import { type Gate, type Rehearsal, startRehearsal } from '../../rehearsal/server.ts';
import { type Backend, server } from './stores.ts';

/** A line the bot logged. */
export interface LogLine {
  readonly level: 'info' | 'warn' | 'error';
  readonly event: string;
  readonly fields: Readonly<Record<string, unknown>>;
}

/** A whole rehearsal in this process: real database, real HTTP, real chat client, and a clock that only we move. */
export interface World {
  readonly store: OpenStore;
  readonly app: App;
  readonly client: RehearsalClient;
  readonly rehearsal: Rehearsal;
  readonly logged: readonly LogLine[];
  now(): Date;
  /** Moves the clock to an instant, looks at it once, and lets everything that follows happen. */
  goTo(instant: string): Promise<void>;
  /** Lets the bot receive, answer and send until nothing is left. */
  settle(): Promise<void>;
  /** A second app on the same store and chat service, as after a restart. */
  restart(): Promise<App>;
  close(): Promise<void>;
}

/** How a world differs from the usual. */
export interface WorldOptions {
  readonly start: string;
  /** The real server, unless said otherwise. */
  readonly backend?: Backend;
  readonly gate?: Gate;
  /** One that draws drills small, unless said otherwise. */
  readonly painter?: Painter;
  /** Who may become a teacher. */
  readonly teachers?: 'invite' | 'open';
  /** Closing them is the test's. */
  readonly clips?: Clips;
}

const TOKEN = '0:rehearsal-test';

/** Opens a world at an instant. */
export async function openWorld(options: WorldOptions): Promise<World> {
  let instant = new Date(options.start);
  const clock = { now: () => instant };
  const store = await (options.backend ?? server).open();
  const pace = impatientPace();
  const logged: LogLine[] = [];
  const rehearsal = await startRehearsal({
    port: 0,
    token: TOKEN,
    botUsername: 'harbour_lane_bot',
    botName: 'Suppersums',
    control: {
      now: clock.now,
      moveTo: async (target) => {
        instant = target;
      },
      stops: async () => [],
    },
    ...(options.gate ? { gate: options.gate } : {}),
  });
  const open = () =>
    createApp({
      store,
      clock,
      pace,
      log: recordingLog(logged),
      tokens: [TOKEN],
      apiRoot: rehearsal.apiRoot,
      painter: options.painter ?? smallPainter(),
      ...(options.teachers ? { teachers: options.teachers } : {}),
      ...(options.clips ? { clips: options.clips } : {}),
    });
  const app = await open();
  return {
    store,
    app,
    client: new RehearsalClient(rehearsal.url),
    rehearsal,
    logged,
    now: clock.now,
    goTo: async (target) => {
      const before = instant;
      instant = new Date(target);
      // Real time passes as well.
      await pace.sleep(Math.max(0, instant.getTime() - before.getTime()));
      await app.engine.tick();
      await app.settle();
    },
    settle: app.settle,
    restart: open,
    close: async () => {
      await rehearsal.close();
      await store.close();
    },
  };
}

/** The width of a drill's sheet in pixels. */
const SHEET_WIDTH = 720;

/** Draws the sheets of drills at a third of their width: drawing them in full is most of what a played evening costs. */
export function smallPainter(): Painter {
  const painter = createPainter();
  return {
    paint: (drawing, width) => painter.paint(drawing, width === SHEET_WIDTH ? width / 3 : width),
  };
}

/** Time for the sending rate: waiting moves it on at once, so that nobody waits. */
export function impatientPace() {
  let now = Date.UTC(2026, 0, 1);
  const sleep = async (milliseconds: number) => {
    now += milliseconds;
  };
  return { now: () => new Date(now), sleep };
}

function recordingLog(lines: LogLine[]): Log {
  const at = (level: LogLine['level']) => (fields: LogLine['fields'], event: string) => {
    lines.push({ level, event, fields });
  };
  return { info: at('info'), warn: at('warn'), error: at('error') };
}
