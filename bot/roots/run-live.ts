import { join } from 'node:path';
import { hasTeachers, issueTeacherInvite, type Log } from '../../db/index.ts';
import { INVITE_PREFIX } from '../features/start-command.ts';
import { machineClock, movableClock, realPace } from './clocks.ts';
import type { Config } from './config.ts';
import { createApp } from './create-app.ts';
import { openClips } from './open-clips.ts';
import { openStore } from './open-store.ts';
import type { Service } from './service.ts';

/** Talks to the real chat service by long polling: all of it, or the roles that this process was given. */
export async function runLive(config: Config & { mode: 'live' }, log: Log): Promise<Service> {
  const clock = config.clockStart ? movableClock(config.clockStart) : machineClock;
  const { tokens, apiRoot, roles, sendsASecond, teachers } = config;
  const store = await openStore({ ...config, dataDir: join(config.dataDir, 'live') }, log);
  const clips = openClips(join(config.dataDir, 'clips'), log, config.ffmpeg);
  try {
    const app = await createApp({
      ...{ store, clock, log, pace: realPace, tokens, apiRoot, clips },
      ...{ roles, sendsASecond, teachers },
    });
    const isFirst = roles.has('receive') && !(await hasTeachers(store));
    const invite = isFirst ? await issueTeacherInvite(store, clock.now()) : null;
    return {
      app,
      welcome: welcome(config, app, invite && app.linkOf(INVITE_PREFIX + invite)),
      stop: async () => {
        await app.stop();
        await clips.close();
        await store.close();
      },
    };
  } catch (error) {
    await clips.close();
    await store.close();
    throw error;
  }
}

function welcome(
  { roles, isPart }: Config & { mode: 'live' },
  { usernames }: { readonly usernames: readonly string[] },
  invitation: string | null,
): string {
  const names = usernames.map((name) => `@${name}`).join(', ');
  const what = isPart ? `Suppersums does ${[...roles].join(', ')}` : 'Suppersums runs';
  const who = names === '' ? what : `${what} as ${names}`;
  return invitation
    ? `${who}. It has no teacher yet. Open this link, once, within a week:\n${invitation}`
    : `${who}. Stop with Ctrl-C.`;
}
