import { join } from 'node:path';
import { hasTeachers, issueTeacherInvite, type Log } from '../../db/index.ts';
import { INVITE_PREFIX } from '../features/start-command.ts';
import { machineClock, movableClock, realPace } from './clocks.ts';
import type { Config } from './config.ts';
import { openControl } from './control-socket.ts';
import { createApp } from './create-app.ts';
import { prepareDoors } from './doors.ts';
import { openClips } from './open-clips.ts';
import { openStore } from './open-store.ts';
import type { Service } from './service.ts';

/** Talks to the real chat service by long polling: all of it, or the roles that this process was given. */
export async function runLive(config: Config & { mode: 'live' }, log: Log): Promise<Service> {
  const clock = config.clockStart ? movableClock(config.clockStart) : machineClock;
  const { tokens, apiRoot, roles, sendsASecond, teachers } = config;
  const folder = join(config.dataDir, 'live');
  const store = await openStore({ ...config, dataDir: folder }, log);
  const control = config.databaseUrl ? null : await openControl({ folder, store, clock, log });
  const watching = prepareDoors(config, { store, clock, log });
  const { meter, pulse } = watching;
  const { ffmpeg, webhook } = config;
  const clips = openClips(join(config.dataDir, 'clips'), log, { ffmpeg, meter });
  try {
    const app = await createApp({
      ...{ store, clock, log, pace: realPace, tokens, apiRoot, clips },
      ...{ roles, sendsASecond, teachers, meter, pulse, webhookUrl: webhook?.url },
    });
    const isFirst = roles.has('receive') && !(await hasTeachers(store));
    const invite = isFirst ? await issueTeacherInvite(store, clock.now()) : null;
    const doors = await watching.open(app);
    return {
      app,
      welcome: welcome(config, app, doors.told, invite && app.linkOf(INVITE_PREFIX + invite)),
      stop: async () => {
        await control?.close();
        // Whoever calls from now on finds nobody there, and comes again. What is still stored waits in the inbox.
        await Promise.all([doors.close(), app.stop()]);
        await clips.close();
        await store.close();
      },
    };
  } catch (error) {
    await control?.close();
    await clips.close();
    await store.close();
    throw error;
  }
}

function welcome(
  { roles, isPart }: Config & { mode: 'live' },
  { usernames }: { readonly usernames: readonly string[] },
  watched: string,
  invitation: string | null,
): string {
  const names = usernames.map((name) => `@${name}`).join(', ');
  const what = isPart ? `Suppersums does ${[...roles].join(', ')}` : 'Suppersums runs';
  const who = names === '' ? what : `${what} as ${names}`;
  return [
    invitation
      ? `${who}. It has no teacher yet. Open this link, once, within a week:\n${invitation}`
      : `${who}. Stop with Ctrl-C.`,
    ...(watched === '' ? [] : [watched]),
  ].join('\n');
}
