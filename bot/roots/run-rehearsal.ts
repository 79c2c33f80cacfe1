import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import {
  claimStore,
  countOutstanding,
  hasTeachers,
  type Log,
  problemOf,
  REHEARSAL_BOT,
  type Store,
} from '../../db/index.ts';
import { RehearsalClient } from '../../rehearsal/client.ts';
import { startRehearsal } from '../../rehearsal/server.ts';
import { machineClock, movableClock, realPace } from './clocks.ts';
import type { Config } from './config.ts';
import { openControl } from './control-socket.ts';
import { type App, createApp } from './create-app.ts';
import { loadDemoClass } from './demo-class.ts';
import { clearHalfLoaded, noteDemoLoaded } from './demo-marker.ts';
import { prepareDoors } from './doors.ts';
import { openClips } from './open-clips.ts';
import { openStore } from './open-store.ts';
import { readLead, rehearsalControl, saveLead } from './rehearsal-control.ts';
import type { Service } from './service.ts';

/** The rehearsal's own token; the stand-in takes no other kind. */
const TOKEN = '0:rehearsal';

/** Runs everything on this computer: embedded database, stand-in of the chat service, demo class, page. */
export async function runRehearsal(
  config: Config & { mode: 'rehearsal' },
  log: Log,
  zone: string,
): Promise<Service> {
  const folder = join(config.dataDir, 'rehearsal');
  await mkdir(folder, { recursive: true });
  const leadFile = join(folder, 'clock.json');
  const machineNow = machineClock.now().getTime();
  const start = config.clockStart?.getTime() ?? machineNow + (await readLead(leadFile));
  const clock = movableClock(new Date(start));
  const save = () => saveLead(leadFile, clock.now().getTime() - machineClock.now().getTime());
  const store = await openStore({ ...config, dataDir: folder }, log, clearHalfLoaded);
  const socket = config.databaseUrl ? null : await openControl({ folder, store, clock, log });
  const watching = prepareDoors(config, { store, clock, log });
  const { meter, pulse } = watching;
  const { ffmpeg } = config;
  const clips = openClips(join(config.dataDir, 'clips'), log, { ffmpeg, meter });
  let app: App | undefined;
  const work = async () => {
    await app?.engine.tick();
    await app?.engine.drain();
    await untilSent(store, clock.now());
    // The clock may have jumped over the afternoon: tonight's clips are drawn while the first family reads its message.
    app?.ahead.look().catch((error) => log.warn({ problem: problemOf(error) }, 'not_drawn_ahead'));
  };
  const control = rehearsalControl(store, clock, work, save);
  try {
    await claimStore(store, REHEARSAL_BOT);
    const rehearsal = await startRehearsal({
      port: config.port,
      token: TOKEN,
      botUsername: 'harbour_lane_bot',
      botName: 'Suppersums',
      control,
      dataFile: join(folder, 'chats.json'),
      timeZone: zone,
      settings: process.env,
    });
    app = await createApp({
      ...{ store, clock, log, pace: realPace, clips, meter, pulse },
      ...{ tokens: [TOKEN], apiRoot: rehearsal.apiRoot, teachers: config.teachers },
      // School days pass in seconds here, and so do the messages of a chat.
      sendsASecondInChat: 1_000,
    });
    if (!(await hasTeachers(store))) {
      const client = new RehearsalClient(rehearsal.url);
      const { settle } = app;
      await loadDemoClass({ store, clock, client, zone, settle });
    }
    if (!config.databaseUrl) await noteDemoLoaded(folder);
    const running = app;
    const doors = await watching.open(app);
    const watched = doors.told === '' ? '' : `\n${doors.told}`;
    return {
      app: running,
      welcome: `Suppersums is rehearsing. Open ${rehearsal.url} and pick a phone.\nNothing leaves this computer. Stop with Ctrl-C.${watched}`,
      stop: async () => {
        await socket?.close();
        await doors.close();
        await control.halt();
        await running.stop();
        await clips.close();
        await save();
        // The senders stop before the service they send to, or their last calls would end as `unknown`.
        await store.close();
        await rehearsal.close();
      },
    };
  } catch (error) {
    await socket?.close();
    await clips.close();
    await store.close();
    throw error;
  }
}

/** Long enough for any call that is answered; a message that is refused for longer does not hold up the clock. */
const PATIENCE_MS = 25_000;
const LOOK_MS = 20;

/**
 * Waits until what is due at an instant has left. The senders work beside us: a clock that stepped on while they hold a
 * message would deliver it on another day.
 */
async function untilSent(store: Store, now: Date): Promise<void> {
  const end = realPace.now().getTime() + PATIENCE_MS;
  while (realPace.now().getTime() < end && (await countOutstanding(store, now)) > 0) {
    await realPace.sleep(LOOK_MS);
  }
}
