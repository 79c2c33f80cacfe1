import { loadDemoClass } from '../../bot/roots/demo-class.ts';
import type { TeacherScope } from '../../db/index.ts';
import type { World } from './world.ts';

export { DEMO_FAMILIES, DEMO_TEACHER } from '../../bot/roots/demo-class.ts';
export { Phone } from '../../bot/roots/phone.ts';

/** Loads the demo class into a world. */
export async function loadSchool(world: World, zone = 'Europe/London'): Promise<TeacherScope> {
  const { store, client, settle } = world;
  return loadDemoClass({ store, client, settle, zone, clock: { now: world.now } });
}
