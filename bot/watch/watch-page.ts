import { Hono } from 'hono';
import { isMigrated, type Pace, type Store } from '../../db/index.ts';
import type { Metrics } from './metrics.ts';
import type { Pulse } from './pulse.ts';

/** After this long without an answer the database counts as away. */
const LONGEST_LOOK_MS = 2_000;

/** What can be asked of a process from outside. */
export interface WatchDeps {
  readonly store: Store;
  readonly pace: Pace;
  readonly pulse: Pulse;
  readonly metrics: Metrics;
  /** Whether everything that the process is to do has been started, and it is not stopping. */
  isRunning(): boolean;
}

/** What `/ready` looks at, and how each stands. */
export interface Readiness {
  readonly database: 'ok' | 'away';
  readonly migrations: 'ok' | 'missing' | 'not known';
  /** `stuck`: some part of the process has given no sign of life for too long. */
  readonly loops: 'ok' | 'starting' | 'stuck';
}

/**
 * For whoever keeps the bot running: `GET /live` says 200 while the process answers at all, `GET /ready` 200 or 503 and what
 * stands how, `GET /metrics` counts for Prometheus (text exposition format 0.0.4). No answer holds a name, a text or a number of
 * anybody. For a network of one's own: nothing here asks who calls.
 */
export function createWatchPage(deps: WatchDeps): Hono {
  const app = new Hono();
  app.get('/live', (context) => context.json({ status: 'ok' }));
  app.get('/ready', async (context) => {
    const readiness = await look(deps);
    const isReady = Object.values(readiness).every((each) => each === 'ok');
    return context.json(
      { status: isReady ? 'ok' : 'not ready', ...readiness },
      isReady ? 200 : 503,
    );
  });
  app.get('/metrics', async (context) => {
    const { metrics } = deps;
    return context.body(await metrics.text(), 200, { 'content-type': metrics.contentType });
  });
  return app;
}

async function look({ store, pace, pulse, isRunning }: WatchDeps): Promise<Readiness> {
  const migrated = await inTime(pace, isMigrated(store));
  const isStuck = pulse.silent().length > 0;
  return {
    database: migrated === null ? 'away' : 'ok',
    migrations: migrated === null ? 'not known' : migrated ? 'ok' : 'missing',
    loops: isRunning() ? (isStuck ? 'stuck' : 'ok') : 'starting',
  };
}

/** What the work comes to; null when it fails or takes too long. */
async function inTime<T>(pace: Pace, work: Promise<T>): Promise<T | null> {
  const waiting = new AbortController();
  try {
    const late = pace.sleep(LONGEST_LOOK_MS, waiting.signal).then(() => null);
    return await Promise.race([work, late]);
  } catch {
    return null;
  } finally {
    waiting.abort();
  }
}
