import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { wayScreen } from '../../../bot/screens/way-screen.ts';
import { wayLabel } from '../../../bot/texts/way.ts';
import { WAYS } from '../../../db/index.ts';

describe.each(WAYS)('the ways to show an evening while %s is chosen', (chosen) => {
  const { text, buttons } = wayScreen(chosen);

  it('stand under each other, and each button chooses its own', () => {
    expect(buttons.map((row) => row.map(({ data }) => unpack(data)))).toEqual(
      WAYS.map((way) => [{ kind: 'chooseWay', way }]),
    );
  });

  it('carry one tick, on what is chosen', () => {
    const ticked = buttons.flat().filter(({ label }) => label.includes('✓'));
    expect(ticked.map(({ label }) => label)).toEqual([`✓ ${wayLabel(chosen)}`]);
  });

  it('are told with one line each that ends in what they cost, dearest first', () => {
    const told = text.text.split('\n').filter((line) => line.includes('kB'));
    expect(told.map((line) => line.split(':')[0])).toEqual(WAYS.map(wayLabel));
    const costs = told.map((line) => Number(/ (\d+) kB an evening\.$/.exec(line)?.[1]));
    expect(costs).toEqual(costs.toSorted((a, b) => b - a));
    expect(new Set(costs).size).toBe(WAYS.length);
  });
});
