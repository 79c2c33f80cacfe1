/** How many breaks can be added in one go: a year of public holidays, with room to spare. */
export const MOST_BREAKS_AT_ONCE = 40;

/** Allowed ranges of a class's settings. Quiet hours are ours: nothing is ever sent to a family outside them. */
export const CLASS_LIMITS = {
  titleLength: 60,
  /** Earliest and latest evening time a class or a family may choose. */
  eveningFrom: '06:00',
  eveningTo: '20:00',
  /** A nudge comes at least this long after the evening. */
  nudgeGapMinutes: 45,
  nudgeTo: '20:45',
  /** From here on families are left in peace until the next day. */
  quietFrom: '21:00',
  /** How long after its time an evening may still go out when the service was down. */
  eveningLateMinutes: 180,
} as const;
