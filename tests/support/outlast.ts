import type { World } from './world.ts';

/** Seconds from a failed try of an update to the next one, five tries in all. */
export const WAITS = [5, 30, 120, 120] as const;

/** Moves the clock on by some seconds and lets everything that follows happen. */
export async function wait(world: World, seconds: number): Promise<void> {
  await world.goTo(new Date(world.now().getTime() + seconds * 1_000).toISOString());
}

/** Lets an update that fails use up its tries. */
export async function outlast(world: World): Promise<void> {
  for (const seconds of WAITS) await wait(world, seconds);
}
