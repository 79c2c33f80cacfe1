import type { Clips } from '../../bot/clip/index.ts';
import type { Painter } from '../../bot/media/index.ts';
import { Phone } from '../../bot/roots/phone.ts';
import type { Gate } from '../../rehearsal/server.ts';
import { makeQuickSchool, type QuickSchool } from './quick-school.ts';
import { readTable } from './raw-rows.ts';
import { openWorld, type World } from './world.ts';

/** Instants of Friday 18 September 2026, British Summer Time: 17:30 in London is 16:30 UTC. */
export const FRIDAY = {
  morning: '2026-09-18T09:00:00Z',
  evening: '2026-09-18T16:30:00Z',
  minuteLater: '2026-09-18T16:31:00Z',
  nudge: '2026-09-18T18:00:00Z',
  digest: '2026-09-18T18:30:00Z',
} as const;

/** A world with a quick school in it on a Friday morning, and short ways to look at both. */
export interface QuickStage {
  readonly world: World;
  readonly school: QuickSchool;
  /** The first phone of a family, counted from 0. */
  family(place: number): Phone;
  /** How many messages of the bot lie on each family's first phone. */
  received(): Promise<number[]>;
  /** Where the messages of a kind stand in the ledger. */
  ledger(kind: string): Promise<string[]>;
  /** How many calls of a method ended with an HTTP status; 0 is a connection cut. */
  calls(method: string, status: number): Promise<number>;
  /** The events logged so far. */
  events(): string[];
}

/** How a stage differs from one with three families of one helper each. */
export interface QuickStageOptions {
  readonly families?: number;
  readonly helpers?: number;
  readonly painter?: Painter;
  readonly clips?: Clips;
  readonly gate?: Gate;
}

/** Opens a stage. Close its world at the end. */
export async function openQuickStage(options: QuickStageOptions = {}): Promise<QuickStage> {
  const { families = 3, helpers = 1, painter, clips, gate } = options;
  const own = {
    ...(painter ? { painter } : {}),
    ...(clips ? { clips } : {}),
    ...(gate ? { gate } : {}),
  };
  const world = await openWorld({ start: FRIDAY.morning, ...own });
  const school = await makeQuickSchool(world, { families, helpers });
  return {
    world,
    school,
    family: (place) => {
      const phone = school.families[place]?.phones[0];
      if (phone === undefined) throw new Error(`there is no family ${place}`);
      return new Phone(world, phone);
    },
    received: () =>
      Promise.all(
        school.families.map(async ({ phones }) => {
          const chat = await world.client.chat(phones[0]);
          return chat.filter((message) => message.from === 'bot').length;
        }),
      ),
    ledger: async (kind) => {
      const rows = await readTable(world.store, 'ledger');
      return rows.filter((row) => row.kind === kind).map((row) => String(row.status));
    },
    calls: async (method, status) => {
      const calls = await world.client.log();
      return calls.filter((call) => call.method === method && call.status === status).length;
    },
    events: () => world.logged.map((line) => line.event),
  };
}
