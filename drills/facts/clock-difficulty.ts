import type { Difficulty } from './difficulty-scale.ts';

/**
 * How hard a clock face is by its minutes, 0 to 5 (our rule, no source; the order is that in which curricula ask for them):
 * 1 on the hour, 2 half past, 3 quarter past and to, 4 other five-minute marks past, 5 those to the hour and any between.
 *
 * @example
 * clockDifficulty(25); // 4
 */
export function clockDifficulty(minute: number): Difficulty {
  if (minute === 0) return 1;
  if (minute === 30) return 2;
  if (minute === 15 || minute === 45) return 3;
  return minute % 5 === 0 && minute < 30 ? 4 : 5;
}
