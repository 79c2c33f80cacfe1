import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { loadSchool, Phone } from '../support/demo-school.ts';
import { openWorld, type World } from '../support/world.ts';

// Monday 14 September 2026, British Summer Time: 17:30 in London is 16:30 UTC.
describe('an evening of Kingfisher class', () => {
  let world: World;
  beforeAll(async () => {
    world = await openWorld({ start: '2026-09-14T09:00:00Z' });
    await loadSchool(world);
  });
  afterAll(() => world.close());

  it('sends nothing before the evening time', async () => {
    await world.goTo('2026-09-14T16:29:00Z');
    expect(await new Phone(world, 2005).messagesWith('Monday')).toHaveLength(0);
  });

  it('sends one message per child to each of its helpers', async () => {
    await world.goTo('2026-09-14T16:30:00Z');
    await world.goTo('2026-09-14T16:31:00Z');
    expect(await new Phone(world, 2001).messagesWith('Monday')).toHaveLength(2);
    expect(await new Phone(world, 2003).messagesWith('Monday')).toHaveLength(1);
    expect(await new Phone(world, 2004).messagesWith('Monday')).toHaveLength(1);
    const pip = await new Phone(world, 2005).last();
    expect(pip.text).toContain('Pip · Monday');
    expect(pip.text).toContain('Pebble Path, pages 1 and 2');
  });

  it('goes from Start to a result in the same message', async () => {
    const pip = new Phone(world, 2005);
    const before = (await pip.chat()).length;
    await pip.playEvening((part) => ({ 1: [2, 5], 5: [4] })[part] ?? []);
    const result = await pip.last();
    expect((await pip.chat()).length).toBe(before);
    expect(result.text).toContain('8 of 10');
    expect(result.text).toContain('4 of 10');
    expect(result.text).toContain('Pebble Path: 2 pages done');
    expect(await pip.buttons()).toEqual([BUTTONS.fix]);
  });
});
