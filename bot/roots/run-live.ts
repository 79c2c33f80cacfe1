import { join } from 'node:path';
import { claimStore, hasTeachers, issueTeacherInvite, type Log } from '../../db/index.ts';
import { INVITE_PREFIX } from '../features/start-command.ts';
import { machineClock, movableClock, realPace } from './clocks.ts';
import type { Config } from './config.ts';
import { createApp } from './create-app.ts';
import { openClips } from './open-clips.ts';
import { openStore } from './open-store.ts';
import type { Service } from './service.ts';

/** Talks to the real chat service by long polling. */
export async function runLive(config: Config & { mode: 'live' }, log: Log): Promise<Service> {
  const clock = config.clockStart ? movableClock(config.clockStart) : machineClock;
  const { token, apiRoot } = config;
  const store = await openStore({ ...config, dataDir: join(config.dataDir, 'live') }, log);
  const clips = openClips(join(config.dataDir, 'clips'), log, config.ffmpeg);
  try {
    const app = await createApp({
      ...{ store, clock, log, pace: realPace, token, apiRoot, clips },
      teachers: config.teachers,
    });
    await claimStore(store, Number(token.split(':')[0]));
    const invite = (await hasTeachers(store)) ? null : await issueTeacherInvite(store, clock.now());
    return {
      app,
      welcome: invite
        ? `Suppersums runs as @${app.username}. It has no teacher yet. Open this link, once, within a week:\n${app.linkOf(INVITE_PREFIX + invite)}`
        : `Suppersums runs as @${app.username}. Stop with Ctrl-C.`,
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
