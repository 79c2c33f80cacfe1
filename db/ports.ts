/** What time it is, for everything that means a school's day. In rehearsal it can be moved. */
export interface Clock {
  now(): Date;
}

/** Counts, ids and codes for the operator. Never a name, never a message text. */
export interface Log {
  info(fields: Readonly<Record<string, unknown>>, event: string): void;
  warn(fields: Readonly<Record<string, unknown>>, event: string): void;
  error(fields: Readonly<Record<string, unknown>>, event: string): void;
}
