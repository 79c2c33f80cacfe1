import type { Intention } from './intention.ts';

/** Right of asked, counted by the test from what it tapped. */
export interface Count {
  right: number;
  asked: number;
}

/** One child's week, counted by the test from what it tapped. */
export interface ChildCount {
  readonly nickname: string;
  /** The word of each day, as the table should say it. */
  readonly days: string[];
  readonly parts: Count[];
  pages: number;
}

/** A child of whom nothing is known yet. `parts` is how many parts a plan has. */
export function emptyCount(nickname: string, parts: number): ChildCount {
  return {
    nickname,
    days: [],
    parts: Array.from({ length: parts }, () => ({ right: 0, asked: 0 })),
    pages: 0,
  };
}

/** Adds an evening to a child's week. `sizes` are the cards of each part, the run's numbers last. */
export function countEvening(child: ChildCount, meant: Intention, sizes: readonly number[]): void {
  const isPractised = meant.habit === 'plays' || meant.habit === 'plays after the nudge';
  const otherwise = meant.habit === 'not today' ? 'not today' : 'no answer';
  child.days.push(isPractised ? 'practised' : otherwise);
  if (!isPractised) return;
  for (const [index, asked] of sizes.entries()) {
    const count = child.parts[index];
    if (!count) continue;
    count.asked += asked;
    const missed = meant.missed[index];
    count.right += missed ? asked - missed.length : meant.said;
  }
  child.pages += meant.pages;
}

/** The sum of counts. */
export function sumOf(counts: readonly Count[]): Count {
  return counts.reduce<Count>(
    (sum, each) => ({ right: sum.right + each.right, asked: sum.asked + each.asked }),
    { right: 0, asked: 0 },
  );
}
