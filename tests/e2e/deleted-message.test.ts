import { afterAll, beforeAll, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';

let stage: QuickStage;
const phoneOf = (helper: number) => {
  const id = stage.school.families[0]?.phones[helper];
  if (id === undefined) throw new Error(`there is no helper ${helper}`);
  return new Phone(stage.world, id);
};

beforeAll(async () => {
  stage = await openQuickStage({ families: 1, helpers: 2 });
  await stage.world.goTo(FRIDAY.evening);
});
afterAll(async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
  await stage.world.close();
});

it('a helper who deleted the message gets no new one when the other helper marks', async () => {
  const [mother, brother] = [phoneOf(0), phoneOf(1)];
  await stage.world.client.deleteMessage(brother.id, (await brother.last()).id);
  const before = (await brother.chat()).length;
  await mother.tap(BUTTONS.start);
  await mother.tap(BUTTONS.allRight);
  await mother.tap(BUTTONS.allSaid);
  expect((await mother.last()).text).toContain('5 of 5');
  expect(await brother.chat()).toHaveLength(before);
});

it('and finds today’s drill again with /today', async () => {
  const brother = phoneOf(1);
  await brother.say('/today');
  expect((await brother.last()).text).toContain('5 of 5');
});
