import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flow, type Group } from '../../../bot/paper/flow.ts';

const PAGE = { top: 20, bottom: 120, gap: 4 };

/** A strip that writes its name, height and place. */
const strip = (name: string, height: number) => ({
  height,
  draw: (y: number) => `${name}@${y}+${height};`,
});

function placed(pages: readonly string[]) {
  return pages.flatMap((body, page) =>
    [...body.matchAll(/(\w+)@([\d.]+)\+([\d.]+);/g)].map(([, name, y, height]) => ({
      name,
      page,
      y: Number(y),
      height: Number(height),
    })),
  );
}

const anyGroups = fc.array(
  fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 8 }),
  {
    minLength: 1,
    maxLength: 8,
  },
);

const groupsOf = (heights: readonly (readonly number[])[]): Group[] =>
  heights.map((group, g) => group.map((height, i) => strip(`g${g}i${i}`, height)));

describe('flow', () => {
  it('draws every strip once, in order, inside the column and over no other', () => {
    fc.assert(
      fc.property(anyGroups, (heights) => {
        const found = placed(flow(groupsOf(heights), PAGE));
        expect(found.map(({ name }) => name)).toEqual(
          heights.flatMap((group, g) => group.map((_, i) => `g${g}i${i}`)),
        );
        for (const [i, { page, y, height }] of found.entries()) {
          expect(y).toBeGreaterThanOrEqual(PAGE.top);
          expect(y + height).toBeLessThanOrEqual(PAGE.bottom);
          const before = found[i - 1];
          if (before?.page === page) expect(y).toBeGreaterThanOrEqual(before.y + before.height);
        }
      }),
    );
  });

  it('keeps a group that fits a page on one page', () => {
    fc.assert(
      fc.property(anyGroups, (heights) => {
        const found = placed(flow(groupsOf(heights), PAGE));
        for (const [g, group] of heights.entries()) {
          const total = group.reduce((sum, height) => sum + height, 0);
          const pages = new Set(
            found.filter(({ name }) => name?.startsWith(`g${g}i`)).map(({ page }) => page),
          );
          if (total <= PAGE.bottom - PAGE.top) expect(pages.size).toBe(1);
        }
      }),
    );
  });

  it('never leaves a heading alone at the foot of a page', () => {
    fc.assert(
      fc.property(anyGroups, (heights) => {
        const found = placed(flow(groupsOf(heights), PAGE));
        for (const [g, group] of heights.entries()) {
          if (group.length < 2) continue;
          const pageOf = (i: number) => found.find(({ name }) => name === `g${g}i${i}`)?.page;
          expect(pageOf(0)).toBe(pageOf(1));
        }
      }),
    );
  });

  it('makes no empty page', () => {
    fc.assert(
      fc.property(anyGroups, (heights) => {
        expect(flow(groupsOf(heights), PAGE).every((body) => body !== '')).toBe(true);
      }),
    );
  });

  it('sets two strips that do not fit together on two pages', () => {
    const groups = [[strip('a', 8)], [strip('b', 8)]];
    expect(flow(groups, { top: 0, bottom: 10, gap: 0 })).toHaveLength(2);
  });
});
