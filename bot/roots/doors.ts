import type { Hono } from 'hono';
import { type Clock, type Log, type Meter, noMeter, type Store } from '../../db/index.ts';
import { createMetrics } from '../watch/metrics.ts';
import { createPulse, type Pulse } from '../watch/pulse.ts';
import { createWatchPage } from '../watch/watch-page.ts';
import { machineClock, realPace } from './clocks.ts';
import type { Config } from './config.ts';
import type { App } from './create-app.ts';
import { type Listening, listen } from './listen.ts';

/** The ports at which a process can be reached from outside. */
export interface Doors {
  /** One line for the person at the keyboard; empty when no port is open. */
  readonly told: string;
  /** Takes no more calls; resolves once those under way are answered. */
  close(): Promise<void>;
}

/** What an app is given so that it can be watched, and its ports. */
export interface Watching {
  /** Counts nothing when nobody can ask. */
  readonly meter: Meter;
  readonly pulse: Pulse;
  /** Opens the ports that the settings ask for, before the app starts: it says that it is not ready yet. */
  open(app: App): Promise<Doors>;
}

/** Prepares what the settings ask for; opens nothing yet. */
export function prepareDoors(
  config: Config,
  deps: { readonly store: Store; readonly clock: Clock; readonly log: Log },
): Watching {
  const pulse = createPulse(machineClock);
  const metrics = config.healthPort === undefined ? undefined : createMetrics(deps);
  return {
    meter: metrics ?? noMeter,
    pulse,
    open: ({ webhook, isRunning }) => {
      const { store } = deps;
      const watch =
        metrics && createWatchPage({ store, pace: realPace, pulse, metrics, isRunning });
      return openDoors(config, { webhook, watch });
    },
  };
}

/** What there is to be reached. */
interface Pages {
  readonly webhook: Hono;
  readonly watch: Hono | undefined;
}

/** The webhook's port, the port for watching, or one port for both. */
async function openDoors(config: Config, { webhook, watch }: Pages): Promise<Doors> {
  const { listenOn: host, healthPort } = config;
  const receives = config.mode === 'live' && config.roles.has('receive');
  const webhookPort = receives ? config.webhook?.port : undefined;
  const open: Listening[] = [];
  let watched: Listening | undefined;
  const close = async () => void (await Promise.all(open.map((each) => each.close())));
  try {
    if (webhookPort !== undefined) {
      const isShared = watch !== undefined && webhookPort === healthPort;
      const pages = isShared ? [webhook, watch] : [webhook];
      const listening = await listen({ host, port: webhookPort }, pages);
      open.push(listening);
      if (isShared) watched = listening;
    }
    if (watch && healthPort !== undefined && !watched) {
      watched = await listen({ host, port: healthPort }, [watch]);
      open.push(watched);
    }
  } catch (error) {
    await close();
    throw error;
  }
  const shown = host.includes(':') ? `[${host}]` : host;
  return {
    told: watched ? `It can be watched at http://${shown}:${watched.port}/ready.` : '',
    close,
  };
}
