import { type OpenStore, openEmbedded } from '../../db/index.ts';
import { RehearsalClient } from '../../rehearsal/client.ts';
import { startRehearsal } from '../../rehearsal/server.ts';
import { realPace } from './clocks.ts';
import { type App, createApp } from './create-app.ts';
import { createLog } from './log.ts';

/** The whole service in memory, with a clock that stands still until it is moved. For scripts that play a story. */
export interface Stage {
  readonly store: OpenStore;
  readonly client: RehearsalClient;
  /** The page of phones. */
  readonly url: string;
  readonly clock: { now(): Date };
  readonly app: App;
  settle(): Promise<void>;
  /** Moves the clock, looks at it once, and lets everything that follows happen. */
  goTo(instant: Date): Promise<void>;
  close(): Promise<void>;
}

const TOKEN = '0:rehearsal-stage';

/** Opens a stage at an instant. */
export async function openStage(start: Date): Promise<Stage> {
  let instant = start;
  const clock = { now: () => instant };
  const log = createLog('warn');
  const store = await openEmbedded(undefined, (error) => {
    log.error({ problem: error.name }, 'engine_error');
  });
  const rehearsal = await startRehearsal({
    port: 0,
    token: TOKEN,
    botUsername: 'harbour_lane_bot',
    botName: 'Suppersums',
    control: { now: clock.now, moveTo: async () => {}, stops: async () => [] },
  });
  const { apiRoot, url } = rehearsal;
  const app = await createApp({
    store,
    clock,
    log,
    pace: realPace,
    tokens: [TOKEN],
    apiRoot,
    sendsASecondInChat: 1_000,
  });
  return {
    store,
    client: new RehearsalClient(url),
    url,
    clock,
    app,
    settle: app.settle,
    goTo: async (target) => {
      instant = target;
      await app.engine.tick();
      await app.settle();
    },
    close: async () => {
      await rehearsal.close();
      await store.close();
    },
  };
}
