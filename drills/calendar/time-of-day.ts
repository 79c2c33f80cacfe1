declare const timeOfDayBrand: unique symbol;

/** A wall-clock time in a class's own time zone, `HH:MM` on the 24-hour clock. */
export type TimeOfDay = string & { readonly [timeOfDayBrand]: true };
