/*
 * What a helper gets without having asked, beside the drill itself: nudges. A reminder after "Later" was asked for and does not
 * count. Three prompting messages a week did better than one or five in the trial of Cortes, Fricke, Loeb, Song and York (2021),
 * Education Finance and Policy 16(2). A helper of several children is one person: all their nudges count together.
 */

/** At most this many nudges an evening to one helper. */
const MOST_AN_EVENING = 1;
/** At most this many from Monday to Sunday. */
const MOST_A_WEEK = 3;

/** How many prompting messages a helper had, or will have: on this day, and in its week from Monday on, the day included. */
export interface PromptsHad {
  readonly today: number;
  readonly thisWeek: number;
}

/**
 * Whether a helper may get one more.
 *
 * @example
 * mayPrompt({ today: 0, thisWeek: 3 }); // false
 */
export function mayPrompt({ today, thisWeek }: PromptsHad): boolean {
  return today < MOST_AN_EVENING && thisWeek < MOST_A_WEEK;
}
