import { expect, test } from 'vitest';
import { neighbourRung, RUNGS, type RungId, rungById } from '../../../drills/index.ts';

function neighbour(id: RungId, direction: -1 | 1): RungId | null {
  const rung = rungById(id);
  if (!rung) throw new Error(`no rung ${id}`);
  return neighbourRung(rung, direction)?.id ?? null;
}

test('an easier step is the one of the same strand that is needed, whatever other strands are', () => {
  expect(neighbour('halves.to20', -1)).toBe('halves.to10');
  expect(neighbour('doubles.tens', -1)).toBe('doubles.to5');
});

test('a harder step is the first that needs this one', () => {
  expect(neighbour('halves.to10', 1)).toBe('halves.to20');
  expect(neighbour('doubles.to5', 1)).toBe('doubles.to10');
});

test('of several steps that are needed the hardest is the easier one', () => {
  expect(neighbour('times.mixed', -1)).toBe('times.fives');
  expect(neighbour('bonds.bridging', -1)).toBe('bonds.ties');
});

test('at the ends of a strand there is none, not even in the strand it builds on', () => {
  expect(neighbour('halves.to10', -1)).toBeNull();
  expect(neighbour('times.twos', -1)).toBeNull();
  expect(neighbour('doubles.to20', 1)).toBeNull();
});

test('every neighbour is of the same strand and kind, and lies on the side that was asked for', () => {
  const pairs = RUNGS.flatMap((rung) =>
    ([-1, 1] as const).flatMap((direction) => {
      const found = neighbourRung(rung, direction);
      return found ? [{ rung, found, direction }] : [];
    }),
  );
  expect(pairs.length).toBeGreaterThan(RUNGS.length);
  for (const { rung, found, direction } of pairs) {
    expect([found.strand, found.kind]).toEqual([rung.strand, rung.kind]);
    expect(Math.sign(RUNGS.indexOf(found) - RUNGS.indexOf(rung))).toBe(direction);
    expect((direction < 0 ? rung : found).needs).toContain((direction < 0 ? found : rung).id);
  }
});
