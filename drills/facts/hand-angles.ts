/**
 * Where the hands of an analogue clock point, in degrees clockwise from 12: the hour hand at 30 (h mod 12) + m / 2,
 * so that it moves with the minutes, the minute hand at 6 m (the usual formula of clock arithmetic).
 * `hour` is 1 to 12, `minute` 0 to 59.
 *
 * @example
 * handAngles(3, 30); // { hour: 105, minute: 180 }
 */
export function handAngles(hour: number, minute: number): { hour: number; minute: number } {
  return { hour: 30 * (hour % 12) + minute / 2, minute: 6 * minute };
}
