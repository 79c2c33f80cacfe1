import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { movableClock, realPace } from '../../bot/roots/clocks.ts';
import { createApp } from '../../bot/roots/create-app.ts';
import { openClips } from '../../bot/roots/open-clips.ts';
import { rehearsalControl } from '../../bot/roots/rehearsal-control.ts';
import { countOutstanding, type Log } from '../../db/index.ts';
import { RehearsalClient } from '../../rehearsal/client.ts';
import { startRehearsal } from '../../rehearsal/server.ts';
import { server } from './stores.ts';
import type { LogLine, World } from './world.ts';

const TOKEN = '0:rehearsal-browser';
const LOOK_MS = 20;

/** A world that is looked at in a browser: prepared by hand first, then running by itself. */
export interface BrowserWorld extends World {
  /** From now on the app receives and sends by itself, and the page's clock bar moves the time. */
  run(): Promise<void>;
}

/**
 * Opens a world at an instant, with clips. Its clock stands still until it is moved. Before `run`, use it like any world; after
 * it, leave `settle` and `goTo` alone.
 */
export async function openBrowserWorld(start: string, timeZone: string): Promise<BrowserWorld> {
  const began = new Date(start);
  const clock = movableClock(began, { now: () => began });
  const store = await server.open();
  const folder = await mkdtemp(join(tmpdir(), 'suppersums-browser-'));
  const logged: LogLine[] = [];
  const log = recordingLog(logged);
  const clips = openClips(folder, log);
  const work = async () => {
    await app.engine.tick();
    await app.engine.drain();
    while ((await countOutstanding(store, clock.now())) > 0) await delay(LOOK_MS);
    await app.ahead.look();
  };
  const control = rehearsalControl(store, clock, work, async () => {});
  const rehearsal = await startRehearsal({
    ...{ port: 0, token: TOKEN, botUsername: 'harbour_lane_bot', botName: 'Suppersums' },
    ...{ control, timeZone },
  });
  const open = () =>
    createApp({
      ...{ store, clock, log, clips, pace: realPace },
      ...{ tokens: [TOKEN], apiRoot: rehearsal.apiRoot, sendsASecondInChat: 1_000 },
    });
  const app = await open();
  let isRunning = false;
  return {
    ...{ store, app, rehearsal, logged, now: clock.now, settle: app.settle, restart: open },
    client: new RehearsalClient(rehearsal.url),
    goTo: async (target) => {
      clock.moveTo(new Date(target));
      await app.engine.tick();
      await app.settle();
    },
    run: async () => {
      isRunning = true;
      await app.start((error) => log.error({ error }, 'fatal'));
    },
    close: async () => {
      if (isRunning) await app.stop();
      await clips.close();
      await store.close();
      await rehearsal.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

function recordingLog(lines: LogLine[]): Log {
  const at = (level: LogLine['level']) => (fields: LogLine['fields'], event: string) => {
    lines.push({ level, event, fields });
  };
  return { info: at('info'), warn: at('warn'), error: at('error') };
}
